package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.notation.GeneLine.Completion;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;

/// What the words before the caret could grow into: status words that are
/// clearly begun, then names, those of several words first.
final class Completions {

    private static final List<String> STATUS_WORDS =
            List.of(
                    "het",
                    "super",
                    "visual",
                    "maybe",
                    "double het",
                    "triple het",
                    "male maker",
                    "female maker",
                    "Normal",
                    "100% het",
                    "66% het",
                    "50% het",
                    "33% het",
                    "25% het");
    private static final int LONGEST_BEGINNING = 60;

    /// So many letters of a status word show that it is meant; after one letter names go first.
    private static final int CLEARLY_BEGUN = 2;

    private final Catalogue catalogue;

    Completions(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    List<Completion> of(String line, int caret, int limit) {
        int at = Math.clamp(caret, 0, line.length());
        int end = wordEnd(line, at);
        var starts = starts(line, at);
        var found = new LinkedHashSet<Completion>();
        boolean begun = !starts.isEmpty() && at - starts.getLast() >= CLEARLY_BEGUN;
        if (begun) {
            found.addAll(statusWords(line, starts.getLast(), at, end));
        }
        for (int start : starts) {
            catalogue.beginning(line.substring(start, at), limit).stream()
                    .filter(name -> !name.equals(line.substring(start, end)))
                    .forEach(name -> found.add(new Completion(start, end, name)));
        }
        if (!begun && !starts.isEmpty()) {
            found.addAll(statusWords(line, starts.getLast(), at, end));
        }
        return found.stream().limit(limit).toList();
    }

    private static List<Completion> statusWords(String line, int start, int caret, int end) {
        var written = line.substring(start, caret).toLowerCase(Locale.ROOT);
        return STATUS_WORDS.stream()
                .filter(word -> word.toLowerCase(Locale.ROOT).startsWith(written))
                .filter(word -> !word.equals(line.substring(start, end)))
                .map(word -> new Completion(start, end, word))
                .toList();
    }

    /// Where the name that is being written may have begun, the longest first.
    private List<Integer> starts(String line, int caret) {
        var starts = new ArrayList<Integer>();
        int at = caret;
        while (at > 0
                && caret - at < LONGEST_BEGINNING
                && starts.size() < catalogue.longestNameWords()
                && isWithinName(line.charAt(at - 1))) {
            at--;
            boolean begins = at == 0 || !isWordPart(line.charAt(at - 1));
            if (begins && isWordPart(line.charAt(at))) {
                starts.add(at);
            }
        }
        boolean inWord = caret > 0 && isWordPart(line.charAt(caret - 1));
        return inWord ? starts.reversed() : List.of();
    }

    private static int wordEnd(String line, int caret) {
        int end = caret;
        while (end < line.length() && isWordPart(line.charAt(end))) {
            end++;
        }
        return end;
    }

    private static boolean isWithinName(char letter) {
        return isWordPart(letter) || letter == ' ' || letter == '-' || letter == '_';
    }

    private static boolean isWordPart(char letter) {
        return Character.isLetterOrDigit(letter) || letter == '\'' || letter == '+';
    }
}
