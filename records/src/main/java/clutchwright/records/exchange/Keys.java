package clutchwright.records.exchange;

import clutchwright.records.animals.Tag;
import clutchwright.records.store.Words;

/// What makes two tags, or two names, the same.
final class Keys {

    private Keys() {}

    static String of(Tag tag) {
        return Words.key(tag.value());
    }

    static String of(String text) {
        return Words.key(text);
    }
}
