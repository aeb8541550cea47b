package clutchwright.engine.catalogue;

import java.util.stream.Collectors;

/// A meaning in one line, for comparing.
final class MeaningText {

    private MeaningText() {}

    static String of(Meaning meaning) {
        return switch (meaning) {
            case Meaning.OfAllele(var name, var _) -> "allele " + name;
            case Meaning.OfForm(var name, var form) -> "form " + name + " " + form.pairs();
            case Meaning.OfCombination(var name, var _) -> "combination " + name;
            case Meaning.OfRemark(var name, var _) -> "remark " + name;
            case Meaning.OneOf(var _, var choices) ->
                    choices.stream()
                            .map(MeaningText::of)
                            .collect(Collectors.joining(", ", "one of ", ""));
        };
    }
}
