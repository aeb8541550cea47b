package clutchwright.records.journal;

import clutchwright.engine.pedigree.AnimalId;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Optional;
import java.util.SequencedMap;

/// One row as it was and as it became.
///
/// @param table   such as `animal`
/// @param animal  the animal that it is about, if it is about one
/// @param columns those that differ, by name
public record Entry(
        Change change,
        String table,
        long row,
        Optional<AnimalId> animal,
        Kind kind,
        SequencedMap<String, BeforeAfter> columns) {

    /// What became of the row.
    public enum Kind {
        ADDED,
        CHANGED,
        REMOVED
    }

    /// One column's value before and after, as text; empty where there was or is none.
    public record BeforeAfter(Optional<String> before, Optional<String> after) {}

    public Entry {
        columns = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(columns));
    }
}
