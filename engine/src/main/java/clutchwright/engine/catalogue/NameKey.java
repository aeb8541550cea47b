package clutchwright.engine.catalogue;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/// What is left of a name when case, spaces, hyphens, underscores and apostrophes do not count.
final class NameKey {

    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]+");

    private NameKey() {}

    static String of(String name) {
        var plain = isAscii(name) ? name : Normalizer.normalize(name, Normalizer.Form.NFKC);
        var key = new StringBuilder(plain.length());
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            if (!doesNotCount(c)) {
                key.append(Character.toLowerCase(c));
            }
        }
        // T- is not T.
        return key.length() == 1 && plain.strip().endsWith("-") ? key + "-" : key.toString();
    }

    /// The words of a name, in lower case.
    static List<String> wordsOf(String name) {
        return Stream.of(BETWEEN_WORDS.split(name.toLowerCase(Locale.ROOT)))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private static boolean isAscii(String name) {
        for (int i = 0; i < name.length(); i++) {
            if (name.charAt(i) > '~') {
                return false;
            }
        }
        return true;
    }

    private static boolean doesNotCount(char c) {
        return Character.isWhitespace(c)
                || Character.isSpaceChar(c)
                || Character.getType(c) == Character.DASH_PUNCTUATION
                || "_'`\u2018\u2019\u02bc\u2212".indexOf(c) >= 0;
    }
}
