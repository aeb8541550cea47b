package clutchwright.records.husbandry;

import clutchwright.engine.pedigree.AnimalId;
import java.time.LocalDate;
import java.util.Optional;

/// How far a young animal is that hatched lately: whether it has shed, and eaten.
///
/// @param shed    whether any shed of it is on record
/// @param eaten   whether it has taken a meal
/// @param offered the last day on which it was offered one
public record FirstDays(
        AnimalId animal,
        LocalDate hatched,
        boolean shed,
        boolean eaten,
        Optional<LocalDate> offered) {}
