package clutchwright.records.store;

import java.util.Optional;
import java.util.regex.Pattern;

/// By which something that is entered twice is known to be one thing: made where it is entered, new
/// for each thing.
///
/// @param value a UUID in its usual form, in small letters
public record EntryKey(String value) {

    private static final Pattern FORM =
            Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");

    public EntryKey {
        if (!FORM.matcher(value).matches()) {
            throw new IllegalArgumentException("not a key of an entry: " + value);
        }
    }

    /// Nothing where the text is no key.
    public static Optional<EntryKey> find(String text) {
        return FORM.matcher(text).matches() ? Optional.of(new EntryKey(text)) : Optional.empty();
    }

    @Override
    public String toString() {
        return value;
    }
}
