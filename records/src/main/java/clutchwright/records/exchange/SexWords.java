package clutchwright.records.exchange;

import clutchwright.engine.genetics.Sex;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/// Reads how a sex is written.
final class SexWords {

    /// What is offered as the remedy.
    static final List<String> EXPECTED = List.of("female", "male", "0.1", "1.0");

    private static final Set<String> FEMALE =
            Set.of(
                    "f", "female", "fem", "0.1", "0,1", "0/1", "0-1", "♀", "hen", "w", "girl",
                    "0.1.0");
    private static final Set<String> MALE =
            Set.of("m", "male", "1.0", "1,0", "1/0", "1-0", "♂", "boy", "1.0.0");
    private static final Set<String> UNKNOWN =
            Set.of(
                    "",
                    "?",
                    "??",
                    "u",
                    "unk",
                    "unknown",
                    "unsexed",
                    "not sexed",
                    "n/a",
                    "na",
                    "-",
                    "0.0.1",
                    "0,0,1",
                    "tbd",
                    "tba",
                    "0");

    private SexWords() {}

    sealed interface Read {

        record Known(Sex sex) implements Read {}

        record Blank() implements Read {}

        /// A spreadsheet turns 1.0 into 1; whether it did is seen from the rest of the column.
        record One() implements Read {}

        record NotUnderstood() implements Read {}
    }

    static Read read(String written) {
        var text = written.strip().toLowerCase(Locale.ROOT).replace("\uFE0E", "");
        if (text.endsWith(".") || (text.endsWith("?") && text.length() > 1)) {
            text = text.substring(0, text.length() - 1).strip();
        }
        if (FEMALE.contains(text)) {
            return new Read.Known(Sex.FEMALE);
        }
        if (MALE.contains(text)) {
            return new Read.Known(Sex.MALE);
        }
        if (UNKNOWN.contains(text)) {
            return new Read.Blank();
        }
        return text.equals("1") ? new Read.One() : new Read.NotUnderstood();
    }
}
