package clutchwright.records.husbandry;

import java.time.LocalDate;

/// From when on an animal counts as having gone without a meal for long.
///
/// @param youngFrom    who hatched after that day is young
/// @param youngBefore  the young whose last meal was before that day
/// @param adultsBefore the others whose last meal was before that day
/// @param offeredFrom  who was offered a meal on that day or later is not asked about
public record Hunger(
        LocalDate youngFrom,
        LocalDate youngBefore,
        LocalDate adultsBefore,
        LocalDate offeredFrom) {}
