package clutchwright.records.store;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Optional;
import java.util.SequencedMap;
import org.jspecify.annotations.Nullable;

/// Column by column, what a row is to hold.
///
/// Days become ISO text, constants of an enum their names, truth 1 or 0.
public final class Values {

    private final SequencedMap<String, @Nullable Object> columns = new LinkedHashMap<>();

    private Values() {}

    public static Values of() {
        return new Values();
    }

    public Values set(String column, Object value) {
        columns.put(column, stored(value));
        return this;
    }

    /// Leaves the column empty.
    public Values clear(String column) {
        columns.put(column, null);
        return this;
    }

    /// The value, or nothing where there is none.
    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    public Values setIfAny(String column, Optional<?> value) {
        if (value.isPresent()) {
            return set(column, value.get());
        }
        return clear(column);
    }

    SequencedMap<String, @Nullable Object> columns() {
        return Collections.unmodifiableSequencedMap(columns);
    }

    private static Object stored(Object value) {
        return switch (value) {
            case Boolean truth -> truth ? 1L : 0L;
            case Integer number -> number.longValue();
            case Enum<?> constant -> constant.name();
            case LocalDate day -> day.toString();
            default -> value;
        };
    }
}
