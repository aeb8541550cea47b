package clutchwright.app.collection;

import clutchwright.app.web.Choice;
import clutchwright.app.wording.AnimalWords;
import clutchwright.records.animals.Status;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/// What an animal can be to the collection, to choose from.
final class StatusChoices {

    private StatusChoices() {}

    static List<Choice> toFilter() {
        var choices = new ArrayList<Choice>();
        choices.add(new Choice("", "Any status"));
        choices.add(new Choice("here", "In the collection"));
        for (var status : Status.values()) {
            choices.add(
                    new Choice(status.name().toLowerCase(Locale.ROOT), AnimalWords.status(status)));
        }
        return choices;
    }

    static List<Choice> all() {
        return Arrays.stream(Status.values())
                .map(status -> Choice.of(status, AnimalWords.status(status)))
                .toList();
    }

    static List<Choice> orNone(String none) {
        var choices = new ArrayList<Choice>();
        choices.add(new Choice("", none));
        choices.addAll(all());
        return choices;
    }
}
