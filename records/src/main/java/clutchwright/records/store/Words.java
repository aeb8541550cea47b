package clutchwright.records.store;

/// Text as it is compared and searched.
public final class Words {

    private Words() {}

    /// Small letters without accents or marks, single spaces: how words are searched for.
    public static String searchable(String text) {
        return Derived.searchable(text);
    }

    /// What makes two names the same name: letters' case and spacing do not.
    public static String key(String name) {
        return name.strip()
                .replaceAll("\\s+", " ")
                .toUpperCase(java.util.Locale.ROOT)
                .toLowerCase(java.util.Locale.ROOT);
    }
}
