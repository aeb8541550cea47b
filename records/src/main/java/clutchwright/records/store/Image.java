package clutchwright.records.store;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.SequencedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/// A row as it was at one moment; in the journal it is JSON, the columns in alphabetical order.
public final class Image {

    private static final JsonMapper JSON = JsonMapper.shared();
    private static final TypeReference<TreeMap<String, @Nullable Object>> COLUMNS =
            new TypeReference<>() {};

    private final SequencedMap<String, @Nullable Object> values;

    private Image(SequencedMap<String, @Nullable Object> values) {
        this.values = values;
    }

    public static Image read(String json) {
        return of(JSON.readValue(json, COLUMNS));
    }

    static Image of(Map<String, @Nullable Object> row) {
        var plain = new TreeMap<String, @Nullable Object>();
        // A number that fits is an int from JSON and a long from the database.
        row.forEach(
                (column, value) ->
                        plain.put(
                                column,
                                value instanceof Integer number
                                        ? (Object) number.longValue()
                                        : value));
        return new Image(plain);
    }

    /// In alphabetical order.
    public SequencedSet<String> columns() {
        return new TreeSet<>(values.keySet());
    }

    /// A column's value as text, if it holds one.
    public Optional<String> text(String column) {
        return Optional.ofNullable(values.get(column)).map(Object::toString);
    }

    Map<String, @Nullable Object> values() {
        return values;
    }

    /// Whether a row still is what this shows. Its version does not count, and neither do columns
    /// that this does not have: a later migration may have added them.
    boolean shows(Map<String, @Nullable Object> row) {
        var other = of(row).values;
        return values.entrySet().stream()
                .filter(column -> !column.getKey().equals("version"))
                .allMatch(column -> Objects.equals(column.getValue(), other.get(column.getKey())));
    }

    /// As JSON.
    @Override
    public String toString() {
        return JSON.writeValueAsString(values);
    }
}
