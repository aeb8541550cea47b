package clutchwright.app.wording;

import clutchwright.engine.notation.Reading;
import java.util.List;

/// What the reader of gene lines found, as sentences.
public final class ReadingWords {

    private ReadingWords() {}

    /// One sentence that says what is wrong, and what would be right.
    public static String of(Reading.Fault fault) {
        var names = fault.names();
        return switch (fault.kind()) {
            case UNKNOWN_NAME ->
                    "“%s” is not a gene of this catalogue.%s"
                            .formatted(
                                    fault.found(),
                                    names.isEmpty() ? "" : " Near to it: " + list(names) + ".");
            case SEVERAL_MEANINGS ->
                    "“%s” is the name of several things: write %s."
                            .formatted(fault.found(), anyOf(names));
            case CHANCE_MISSING ->
                    "“%s” needs its chance: write 66%% het, 50%% het or het if it is certain."
                            .formatted(fault.found());
            case BAD_CHANCE ->
                    "“%s” is not a chance: write more than 0 and at most 100 %%."
                            .formatted(fault.found());
            case TOO_MANY_ALLELES ->
                    "%s are alleles of one locus, and an animal has only two copies: take one away."
                            .formatted(list(names));
            case NOTHING_FOLLOWS -> "No gene follows “%s”.".formatted(fault.found());
            case COUNT_DOES_NOT_FIT ->
                    "“%s” counts another number of genes than follow it.".formatted(fault.found());
            case CONTRADICTION ->
                    "“%s” cannot be true together with %s."
                            .formatted(
                                    fault.found(),
                                    names.isEmpty() ? "the rest of the line" : list(names));
            case IS_A_PAIRING ->
                    "“%s” makes this a pairing: write one animal here.".formatted(fault.found());
            case TOO_LONG -> "The line is too long to be a gene line: 2,000 characters at most.";
        };
    }

    public static String of(Reading.Note note) {
        var names = list(note.names());
        return switch (note.kind()) {
            case HET_OF_WHAT_SHOWS -> "It shows %s: het was left out.".formatted(names);
            case SUPER_OF_RECESSIVE -> "%s is recessive: read as visual.".formatted(names);
            case REPORTED_NOT_TO_LIVE ->
                    "%s is reported not to live: kept as what you say.".formatted(names);
            case HET_THAT_SHOWS -> "One copy of %s shows: read as visible.".formatted(names);
            case SAID_TWICE -> "%s says nothing more.".formatted(names);
            case PHASE_NOT_GIVEN ->
                    "Whether he is a male maker or a female maker of %s is not said: both count half."
                            .formatted(names);
            case CAUTION -> "Welfare: see the cautions for %s.".formatted(names);
            case SPELLING -> "Read as %s.".formatted(names);
            case WHICH_LINE ->
                    "Which %s? Until you write %s it counts as a line of its own."
                            .formatted(
                                    note.names().getFirst(),
                                    anyOf(note.names().subList(1, note.names().size())));
            case PROPOSAL -> "The note would make it %s: not set.".formatted(names);
        };
    }

    /// Names in a row, in quotation marks.
    public static String quoted(List<String> names) {
        return list(names.stream().map(name -> "“" + name + "”").toList());
    }

    static String list(List<String> names) {
        return joined(names, " and ");
    }

    static String anyOf(List<String> names) {
        return joined(names, " or ");
    }

    private static String joined(List<String> names, String last) {
        return switch (names.size()) {
            case 0 -> "nothing";
            case 1 -> names.getFirst();
            default ->
                    String.join(", ", names.subList(0, names.size() - 1)) + last + names.getLast();
        };
    }
}
