package clutchwright.engine.pedigree;

/// A set of numbers that gives its greatest: ancestors that wait to be looked at, youngest first.
///
/// Bits in words, and a bit in a word above for every word that has any: some four look-ups to put
/// a number in or to take one out, whatever their count.
final class YoungestFirst {

    private static final int BITS = 6;

    /// The words of the numbers first, at the end a single word.
    private final long[][] levels;

    /// @param bound above every number
    YoungestFirst(int bound) {
        int depth = 1;
        for (long reach = 1L << BITS; reach < bound; reach <<= BITS) {
            depth++;
        }
        levels = new long[depth][];
        long words = bound;
        for (int level = 0; level < depth; level++) {
            words = Math.max(1, (words + (1L << BITS) - 1) >>> BITS);
            levels[level] = new long[Math.toIntExact(words)];
        }
    }

    boolean isEmpty() {
        return levels[levels.length - 1][0] == 0;
    }

    /// @param number may be in the set already
    void add(int number) {
        int at = number;
        for (var words : levels) {
            int word = at >>> BITS;
            long before = words[word];
            words[word] = before | 1L << at;
            if (before != 0) {
                return;
            }
            at = word;
        }
    }

    /// Takes the greatest number out; there must be one.
    int take() {
        int word = 0;
        for (int level = levels.length - 1; level >= 0; level--) {
            word = word << BITS | 63 - Long.numberOfLeadingZeros(levels[level][word]);
        }
        remove(word);
        return word;
    }

    private void remove(int number) {
        int at = number;
        for (var words : levels) {
            int word = at >>> BITS;
            words[word] &= ~(1L << at);
            if (words[word] != 0) {
                return;
            }
            at = word;
        }
    }
}
