package clutchwright.app.collection;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ProblemWords;
import clutchwright.records.checks.Problem;
import java.util.List;
import java.util.function.Function;

/// Why something was not written down, put beside the fields of a form.
record Problems(Holding holding, Preferring preferring) {

    /// @param fieldOf the id of the field that a problem is shown at
    Form beside(Form form, List<Problem> problems, Function<Problem, String> fieldOf) {
        var faulty = form;
        for (var problem : problems) {
            faulty = faulty.withFault(fieldOf.apply(problem), words().of(problem));
        }
        return faulty;
    }

    /// All of them in a row.
    String inOneLine(List<Problem> problems) {
        return String.join(" ", problems.stream().map(words()::of).toList());
    }

    private ProblemWords words() {
        var knowledge = holding.knowledge();
        return new ProblemWords(
                id -> knowledge.find(id).map(animal -> animal.tag().value()).orElse("this animal"),
                new Formats(preferring.preferences()));
    }
}
