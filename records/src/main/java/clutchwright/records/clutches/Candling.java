package clutchwright.records.clutches;

import java.time.LocalDate;

/// A look through the shell.
public record Candling(long id, EggId egg, LocalDate on, Finding finding, String notes) {

    /// What was seen.
    public enum Finding {
        /// Veins, or a shadow that grows.
        GOOD,
        /// None to be seen, which in the first days says little.
        NO_VEINS,
        DOUBTFUL,
        /// The shell has caved in, whatever shows behind it.
        COLLAPSED,
        /// Nothing, and nothing to come.
        SLUG
    }
}
