package clutchwright.records.husbandry;

import clutchwright.engine.pedigree.AnimalId;
import java.time.LocalDate;
import java.util.Optional;

/// Something that was done with an animal, or seen of it, on one day.
public sealed interface Happening {

    long id();

    long version();

    AnimalId animal();

    LocalDate on();

    String notes();

    /// @param grams above zero
    record Weighing(
            long id, long version, AnimalId animal, LocalDate on, double grams, String notes)
            implements Happening {}

    /// @param prey  what was offered
    /// @param grams what the prey weighed; above zero
    /// @param taken whether it was eaten
    record Meal(
            long id,
            long version,
            AnimalId animal,
            LocalDate on,
            String prey,
            Optional<Double> grams,
            boolean taken,
            String notes)
            implements Happening {}

    /// @param complete whether the skin came off in one piece
    record Shed(
            long id, long version, AnimalId animal, LocalDate on, boolean complete, String notes)
            implements Happening {}

    /// Something about its health, in the keeper's words.
    record HealthNote(long id, long version, AnimalId animal, LocalDate on, String notes)
            implements Happening {}
}
