package clutchwright.records.exchange;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Distribution;
import clutchwright.records.animals.Hatched;
import clutchwright.records.animals.Line;
import clutchwright.records.animals.Origin;
import clutchwright.records.animals.Status;
import clutchwright.records.animals.Tag;
import java.time.LocalDate;
import java.util.Optional;

/// One animal as a file states it, everything understood: what an import writes and what an
/// export reads.
///
/// @param stated gene line, all its cells joined; blank where nothing is stated
/// @param shows gene line; blank where nothing is recorded
/// @param withoutSire whether the dam alone made it
public record AnimalEntry(
        Tag tag,
        String name,
        Optional<Sex> sex,
        Hatched hatched,
        Optional<Tag> dam,
        SireEntry sire,
        boolean withoutSire,
        String stated,
        String shows,
        Status status,
        Origin origin,
        Line line,
        Optional<PlaceName> place,
        String species,
        String notes,
        Optional<WeightEntry> weight) {

    AnimalEntry withSex(Sex found) {
        return new AnimalEntry(
                tag,
                name,
                Optional.of(found),
                hatched,
                dam,
                sire,
                withoutSire,
                stated,
                shows,
                status,
                origin,
                line,
                place,
                species,
                notes,
                weight);
    }

    AnimalEntry withGenes(String newStated, String newShows) {
        return new AnimalEntry(
                tag,
                name,
                sex,
                hatched,
                dam,
                sire,
                withoutSire,
                newStated,
                newShows,
                status,
                origin,
                line,
                place,
                species,
                notes,
                weight);
    }

    /// Who fathered it, by tag.
    public sealed interface SireEntry {

        record Unknown() implements SireEntry {}

        record Known(Tag tag) implements SireEntry {}

        /// @param question animals with the same one share its answer
        /// @param candidates at least two
        record OneOf(String question, Distribution<Tag> candidates) implements SireEntry {}
    }

    /// @param grams above zero
    public record WeightEntry(double grams, LocalDate on) {}
}
