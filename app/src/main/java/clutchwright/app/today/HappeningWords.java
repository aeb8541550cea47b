package clutchwright.app.today;

import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ProblemWords;
import clutchwright.records.animals.Animal;
import clutchwright.records.checks.Problem;
import java.util.List;
import java.util.stream.Collectors;

/// Why a meal or a weight was not written down.
final class HappeningWords {

    private HappeningWords() {}

    static String of(Animal animal, List<Problem> problems, Formats formats) {
        var words = new ProblemWords(_ -> animal.tag().value(), formats);
        return problems.stream()
                .map(problem -> animal.tag() + ": " + words.of(problem))
                .collect(Collectors.joining(" "));
    }
}
