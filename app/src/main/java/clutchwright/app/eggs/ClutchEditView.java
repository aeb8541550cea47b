package clutchwright.app.eggs;

import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.records.clutches.Clutch;
import java.util.Optional;

/// What was written down of a clutch as a whole, to be changed.
///
/// @param asks what must be confirmed first; empty where nothing is asked
public record ClutchEditView(Clutch clutch, Couple couple, Form form, String asks) implements View {

    @Override
    public String template() {
        return "eggs/edit.jte";
    }

    @Override
    public String title() {
        return "Clutch " + clutch.number();
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.EGGS);
    }

    public String path() {
        return "/eggs/" + clutch.id().value();
    }
}
