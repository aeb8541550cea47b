package clutchwright.records.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/// Makes one gene line of the cells in which a file spreads it.
final class GeneCells {

    private static final Set<String> NOTHING =
            Set.of("", "-", "--", "n/a", "na", "none", "no", "nil", "no hets", "?", "unknown");

    /// Words that say themselves that what follows is carried.
    private static final Pattern SAYS_HET =
            Pattern.compile(
                    "(?i).*\\b(?:het|hets|ph|poss|pos|possible|heterozygous|dh|th|qh)\\b.*");

    private static final Pattern STARTS_WITH_CHANCE =
            Pattern.compile("^(\\d{1,3}(?:[.,]\\d+)?\\s*%)\\s*(.*)$");

    private final List<String> parts = new ArrayList<>();

    void stated(String cell) {
        if (!isNothing(cell)) {
            parts.add(cell.strip());
        }
    }

    /// Puts `het` before genes that stand without it; a chance that stands before them is kept.
    void hets(String cell) {
        if (!isNothing(cell)) {
            pieces(cell).forEach(piece -> parts.add(withHet(piece, "het")));
        }
    }

    /// @param heading of the column; it may say the chance for all its cells
    void possibleHets(String cell, String heading) {
        if (isNothing(cell)) {
            return;
        }
        var start =
                Headings.chanceIn(heading).map(chance -> chance + " het").orElse("possible het");
        pieces(cell).forEach(piece -> parts.add(withHet(piece, start)));
    }

    String line() {
        return String.join(", ", parts);
    }

    static boolean isNothing(String cell) {
        return NOTHING.contains(cell.strip().toLowerCase(Locale.ROOT));
    }

    private static List<String> pieces(String cell) {
        return Pattern.compile("[,;/&+\\n]|\\band\\b")
                .splitAsStream(cell)
                .map(String::strip)
                .filter(piece -> !piece.isEmpty())
                .toList();
    }

    private static String withHet(String piece, String start) {
        if (SAYS_HET.matcher(piece).matches()) {
            return piece;
        }
        var chance = STARTS_WITH_CHANCE.matcher(piece);
        return chance.matches() ? chance.group(1) + " het " + chance.group(2) : start + " " + piece;
    }
}
