package clutchwright.records.exchange;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/// Finds which known words are close to what was written.
final class Nearest {

    private static final int MOST = 3;

    private Nearest() {}

    /// Nearest first; none that would need more than a third of its letters changed.
    static List<String> to(String written, Collection<String> known) {
        var text = written.strip().toLowerCase(Locale.ROOT);
        int limit = Math.max(1, text.length() / 3);
        record Near(String word, int steps) {}
        return known.stream()
                .filter(word -> Math.abs(word.length() - text.length()) <= limit)
                .map(word -> new Near(word, steps(text, word.toLowerCase(Locale.ROOT))))
                .filter(near -> near.steps() <= limit)
                .sorted(Comparator.comparingInt(Near::steps).thenComparing(Near::word))
                .limit(MOST)
                .map(Near::word)
                .toList();
    }

    /// How many letters must be added, dropped or changed (Levenshtein's distance).
    private static int steps(String from, String to) {
        var previous = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            previous[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            var current = new int[to.length() + 1];
            current[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int change = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
                current[j] =
                        Math.min(
                                previous[j - 1] + change,
                                1 + Math.min(previous[j], current[j - 1]));
            }
            previous = current;
        }
        return previous[to.length()];
    }
}
