package clutchwright.app.eggs;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// A new clutch.
///
/// @param females tags to complete from: those that were paired lately
/// @param males   what she was paired with, the value being the animal's id
/// @param next    the number it gets if none is typed
/// @param asks    what must be confirmed before it is written down; empty where nothing is asked
public record LayingView(
        Form form, List<Choice> females, List<Choice> males, String next, String asks)
        implements View {

    public LayingView {
        females = List.copyOf(females);
        males = List.copyOf(males);
    }

    @Override
    public String template() {
        return "eggs/laying.jte";
    }

    @Override
    public String title() {
        return "New clutch";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.EGGS);
    }
}
