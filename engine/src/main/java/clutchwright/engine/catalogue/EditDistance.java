package clutchwright.engine.catalogue;

import java.util.Arrays;
import java.util.Collection;
import java.util.Optional;

/// How many slips of the finger lie between two words: a letter more, a letter less, another
/// letter, or two neighbours swapped (restricted Damerau-Levenshtein distance).
final class EditDistance {

    private EditDistance() {}

    /// Slips that a word of that length may have and still be meant: none in an abbreviation of
    /// two letters, one in a short word, never more than three.
    static int tolerated(int length) {
        return Math.clamp((length + 1) / 3, length < 3 ? 0 : 1, length < 3 ? 0 : 3);
    }

    /// The distance if it is at most `limit`, else something above `limit`.
    static int between(String a, String b, int limit) {
        if (Math.abs(a.length() - b.length()) > limit) {
            return limit + 1;
        }
        var beforeLast = new int[b.length() + 1];
        var last = new int[b.length() + 1];
        var row = new int[b.length() + 1];
        Arrays.setAll(last, i -> i);
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            int smallest = i;
            for (int j = 1; j <= b.length(); j++) {
                int other = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int cost = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + other);
                if (i > 1
                        && j > 1
                        && a.charAt(i - 1) == b.charAt(j - 2)
                        && a.charAt(i - 2) == b.charAt(j - 1)) {
                    cost = Math.min(cost, beforeLast[j - 2] + 1);
                }
                row[j] = cost;
                smallest = Math.min(smallest, cost);
            }
            // A swap looks two rows back, so both must be past the limit.
            if (smallest > limit && Arrays.stream(last).min().orElse(0) > limit) {
                return limit + 1;
            }
            var free = beforeLast;
            beforeLast = last;
            last = row;
            row = free;
        }
        return last[b.length()];
    }

    /// The nearest of the words by their keys, if it is near enough to be meant.
    static Optional<String> nearest(String written, Collection<String> words) {
        var key = NameKey.of(written);
        int limit = tolerated(key.length());
        var best = Optional.<String>empty();
        for (var word : words) {
            int distance = between(key, NameKey.of(word), limit);
            if (distance <= limit) {
                best = Optional.of(word);
                limit = distance - 1;
            }
        }
        return best;
    }
}
