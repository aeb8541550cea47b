package clutchwright.app.season;

import clutchwright.app.web.Choice;
import clutchwright.app.web.View;
import java.util.List;

/// What a field for an animal offers, as a piece of a page.
public record OptionsView(List<Choice> animals) implements View {

    public OptionsView {
        animals = List.copyOf(animals);
    }

    @Override
    public String template() {
        return "season/options.jte";
    }

    @Override
    public String title() {
        return "";
    }
}
