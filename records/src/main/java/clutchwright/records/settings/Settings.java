package clutchwright.records.settings;

import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import java.util.LinkedHashMap;
import java.util.Optional;
import java.util.SequencedMap;

/// How the keeper wants it: text by name.
///
/// Names are in lower case with slashes, such as `tag-pattern` or `filter/unsexed`.
public final class Settings {

    public static final String PASSWORD_HASH = "password-hash";
    public static final String WEIGHT_UNIT = "weight-unit";
    public static final String DATE_STYLE = "date-style";
    public static final String TAG_PATTERN = "tag-pattern";
    public static final String SPECIES = "species";

    /// Begins the name of each remembered matching of a file's columns.
    public static final String COLUMNS = "columns/";

    /// Begins the name of each saved filter of the collection.
    public static final String FILTERS = "filter/";

    private final Transaction tx;

    public Settings(Transaction tx) {
        this.tx = tx;
    }

    public Optional<String> find(String name) {
        return tx.first(row -> row.text("held"), "select held from setting where name = ?", name);
    }

    /// The settings whose names begin so, by name.
    public SequencedMap<String, String> under(String beginning) {
        var found = new LinkedHashMap<String, String>();
        tx.list(
                        Settings::pair,
                        "select name, held from setting where substr(name, 1, ?) = ? order by name",
                        beginning.length(),
                        beginning)
                .forEach(pair -> found.put(pair.name(), pair.held()));
        return found;
    }

    /// Keeps a setting, the last word wins.
    ///
    /// @throws IllegalArgumentException if the name is blank
    public void put(String name, String held) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a setting without a name");
        }
        var id = id(name);
        if (id.isPresent()) {
            tx.update("setting", id.get(), Values.of().set("held", held));
        } else {
            tx.insert("setting", Values.of().set("name", name).set("held", held));
        }
    }

    /// @return whether there was one
    public boolean remove(String name) {
        var id = id(name);
        id.ifPresent(found -> tx.delete("setting", found));
        return id.isPresent();
    }

    private Optional<Long> id(String name) {
        return tx.first(row -> row.number("id"), "select id from setting where name = ?", name);
    }

    private static Pair pair(Row row) {
        return new Pair(row.text("name"), row.text("held"));
    }

    private record Pair(String name, String held) {}
}
