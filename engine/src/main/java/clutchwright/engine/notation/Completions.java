package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.notation.GeneLine.Completion;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;

/// What the words before the caret could grow into: names of several words first, status words
/// after the names that begin as they do.
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

    private final Catalogue catalogue;

    Completions(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    List<Completion> of(String line, int caret, int limit) {
        int at = Math.clamp(caret, 0, line.length());
        int end = wordEnd(line, at);
        var starts = starts(line, at);
        var found = new LinkedHashSet<Completion>();
        for (int start : starts) {
            var written = line.substring(start, at);
            catalogue.beginning(written, limit).stream()
                    .filter(name -> !name.equals(line.substring(start, end)))
                    .forEach(name -> found.add(new Completion(start, end, name)));
        }
        if (!starts.isEmpty()) {
            int start = starts.getLast();
            var written = line.substring(start, at).toLowerCase(Locale.ROOT);
            STATUS_WORDS.stream()
                    .filter(word -> word.toLowerCase(Locale.ROOT).startsWith(written))
                    .filter(word -> !word.equals(line.substring(start, end)))
                    .forEach(word -> found.add(new Completion(start, end, word)));
        }
        return found.stream().limit(limit).toList();
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
