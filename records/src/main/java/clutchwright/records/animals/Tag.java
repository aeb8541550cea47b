package clutchwright.records.animals;

import clutchwright.records.store.Words;
import java.util.regex.Pattern;

/// What an animal is called by on its tub; no other animal has it, whatever the letters' case.
///
/// @param value one to 60 characters, no line breaks, single spaces
public record Tag(String value) {

    public static final int LONGEST = 60;

    private static final Pattern SPACES = Pattern.compile("\\s+");

    public Tag {
        value = SPACES.matcher(value.strip()).replaceAll(" ");
        if (!isWellFormed(value)) {
            throw new IllegalArgumentException("not a tag of 1 to 60 characters: " + value);
        }
    }

    public static boolean isWellFormed(String text) {
        var bare = text.strip();
        return !bare.isEmpty()
                && bare.length() <= LONGEST
                && bare.codePoints().noneMatch(Character::isISOControl);
    }

    /// Two tags with the same key are the same tag.
    String key() {
        return Words.key(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
