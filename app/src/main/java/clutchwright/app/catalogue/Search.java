package clutchwright.app.catalogue;

import clutchwright.engine.catalogue.LocusEntry;
import clutchwright.engine.catalogue.NamedCombination;
import clutchwright.engine.catalogue.Remark;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/// Looks for names that have what was typed in them, without regard to case, blanks and hyphens.
///
/// @param key what is left of what was typed; empty finds everything
record Search(String key) {

    static Search of(String typed) {
        return new Search(plain(typed));
    }

    boolean isForAll() {
        return key.isEmpty();
    }

    /// Whether the names that stand at the head of the entry are met.
    boolean meetsHead(LocusEntry entry) {
        return meetsAny(head(entry));
    }

    /// The first name further down in the entry that is met: a synonym, or a form.
    Optional<String> findBelow(LocusEntry entry) {
        var names =
                Stream.concat(
                        entry.traits().stream().flatMap(trait -> trait.synonyms().stream()),
                        entry.forms().stream()
                                .flatMap(
                                        form ->
                                                Stream.concat(
                                                        Stream.of(form.phenotype().name()),
                                                        form.synonyms().stream())));
        return names.filter(this::meets).findFirst();
    }

    boolean meets(NamedCombination combination) {
        return meets(combination.name()) || meetsAny(combination.synonyms().stream());
    }

    boolean meets(Remark remark) {
        return meets(remark.name()) || meetsAny(remark.synonyms().stream());
    }

    private static Stream<String> head(LocusEntry entry) {
        return Stream.concat(
                Stream.of(entry.title()), entry.traits().stream().map(trait -> trait.name()));
    }

    private boolean meetsAny(Stream<String> names) {
        return names.anyMatch(this::meets);
    }

    private boolean meets(String name) {
        return plain(name).contains(key);
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[\\s\\p{Pd}_'`\u2018\u2019]+", "");
    }
}
