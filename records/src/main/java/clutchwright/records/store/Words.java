package clutchwright.records.store;

import java.util.Locale;
import java.util.regex.Pattern;

/// Text as it is compared and searched.
public final class Words {

    private static final Pattern SPACES = Pattern.compile("\\s+");

    private Words() {}

    /// Small letters without accents or marks, single spaces: how words are searched for.
    public static String searchable(String text) {
        return Derived.searchable(text);
    }

    /// What makes two names the same name: letters' case and spacing do not.
    public static String key(String name) {
        return SPACES.matcher(name.strip())
                .replaceAll(" ")
                .toUpperCase(Locale.ROOT)
                .toLowerCase(Locale.ROOT);
    }
}
