package clutchwright.records.clutches;

import java.time.LocalDate;

/// What an egg weighed on a day.
///
/// @param grams above zero
public record EggWeighing(long id, EggId egg, LocalDate on, double grams) {}
