package clutchwright.app.labels;

import clutchwright.app.web.Choice;
import java.util.List;

/// Things of one kind to choose from.
public record ChoiceGroup(String title, List<Choice> choices) {

    public ChoiceGroup {
        choices = List.copyOf(choices);
    }
}
