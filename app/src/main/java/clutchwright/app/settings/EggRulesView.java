package clutchwright.app.settings;

import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.Optional;

/// @param form of the house's rules for eggs
public record EggRulesView(Form form) implements View {

    @Override
    public String template() {
        return "settings/eggs.jte";
    }

    @Override
    public String title() {
        return "Eggs and boxes";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SETTINGS);
    }
}
