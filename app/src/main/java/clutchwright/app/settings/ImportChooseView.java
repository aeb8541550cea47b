package clutchwright.app.settings;

import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.Optional;

/// A file is chosen.
///
/// @param form with what is wrong with the file that was sent
public record ImportChooseView(Form form) implements View {

    @Override
    public String template() {
        return "settings/importChoose.jte";
    }

    @Override
    public String title() {
        return "Import";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SETTINGS);
    }
}
