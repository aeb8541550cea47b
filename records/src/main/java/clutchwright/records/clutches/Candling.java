package clutchwright.records.clutches;

import java.time.LocalDate;

/// A look through the shell.
public record Candling(long id, EggId egg, LocalDate on, Finding finding, String notes) {

    /// What was seen.
    public enum Finding {
        /// Veins, or a shadow that grows.
        GOOD,
        DOUBTFUL,
        /// Nothing, and nothing to come.
        SLUG
    }
}
