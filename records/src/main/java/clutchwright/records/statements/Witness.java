package clutchwright.records.statements;

import java.time.LocalDate;
import java.util.Optional;

/// Who said or saw something, when, and where it stands.
///
/// @param by     may be blank where nobody remembers
/// @param source a bill, a letter, a page; may be blank
public record Witness(Optional<LocalDate> on, String by, String source) {

    public Witness {
        by = by.strip();
        source = source.strip();
    }

    public static Witness on(LocalDate day, String by) {
        return new Witness(Optional.of(day), by, "");
    }

    public static Witness undated(String by) {
        return new Witness(Optional.empty(), by, "");
    }
}
