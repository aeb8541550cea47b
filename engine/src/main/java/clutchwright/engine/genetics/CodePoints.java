package clutchwright.engine.genetics;

import java.util.Comparator;

/// The order of code points, which differs from that of `String` beyond the basic plane.
final class CodePoints {

    static final Comparator<String> ORDER = CodePoints::compare;

    private CodePoints() {}

    private static int compare(String a, String b) {
        var end = Math.min(a.length(), b.length());
        for (var i = 0; i < end; i++) {
            var x = a.charAt(i);
            var y = b.charAt(i);
            if (x != y) {
                // A surrogate stands for a code point above every other character.
                return Character.isSurrogate(x) == Character.isSurrogate(y)
                        ? Character.compare(x, y)
                        : Boolean.compare(Character.isSurrogate(x), Character.isSurrogate(y));
            }
        }
        return Integer.compare(a.length(), b.length());
    }
}
