package clutchwright.app.today;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/// The order of names with numbers in them: `Rack 2` before `Rack 10`.
final class Numbered {

    static final Comparator<String> ORDER =
            (one, other) -> compare(parts(one), parts(other), one, other);

    private static final Pattern PART = Pattern.compile("[0-9]+|[^0-9]+");

    private Numbered() {}

    private static List<String> parts(String name) {
        return PART.matcher(name.toLowerCase(Locale.ROOT))
                .results()
                .map(MatchResult::group)
                .toList();
    }

    private static int compare(List<String> some, List<String> others, String one, String other) {
        for (int i = 0; i < Math.min(some.size(), others.size()); i++) {
            int order = comparePart(some.get(i), others.get(i));
            if (order != 0) {
                return order;
            }
        }
        int length = Integer.compare(some.size(), others.size());
        return length == 0 ? one.compareTo(other) : length;
    }

    private static int comparePart(String one, String other) {
        return isNumber(one) && isNumber(other)
                ? new BigInteger(one).compareTo(new BigInteger(other))
                : one.compareTo(other);
    }

    private static boolean isNumber(String part) {
        return Character.isDigit(part.charAt(0));
    }
}
