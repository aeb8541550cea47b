package clutchwright.app.settings;

import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.Optional;

/// @param form what is taken of lay days, as typed
public record LayDaysView(Form form) implements View {

    @Override
    public String template() {
        return "settings/layDays.jte";
    }

    @Override
    public String title() {
        return "Lay days";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SETTINGS);
    }
}
