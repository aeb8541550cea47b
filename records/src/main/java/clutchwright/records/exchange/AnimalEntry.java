package clutchwright.records.exchange;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Parentage.SireQuestion;
import clutchwright.engine.probability.Distribution;
import clutchwright.records.animals.Hatched;
import clutchwright.records.animals.Line;
import clutchwright.records.animals.Origin;
import clutchwright.records.animals.Particulars;
import clutchwright.records.animals.Status;
import clutchwright.records.animals.Tag;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;

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

    /// What the records keep of it, its place left aside.
    ///
    /// @param id of an animal by its tag
    Particulars particulars(Function<Tag, AnimalId> id) {
        return new Particulars(
                tag,
                name,
                sex,
                hatched,
                parentage(id),
                origin,
                line,
                status,
                Optional.empty(),
                species,
                notes);
    }

    /// Where it comes from.
    ///
    /// @param id of an animal by its tag
    Parentage parentage(Function<Tag, AnimalId> id) {
        if (withoutSire && dam.isPresent()) {
            return new Parentage.Parthenogenetic(id.apply(dam.get()));
        }
        return Parentage.of(
                dam.map(id).<Dam>map(Dam.Known::new).orElseGet(Dam.Unknown::new),
                switch (sire) {
                    case SireEntry.Unknown() -> new Sire.Unknown();
                    case SireEntry.Known(var known) -> new Sire.Known(id.apply(known));
                    case SireEntry.OneOf(var question, var candidates) ->
                            new Sire.InDoubt(new SireQuestion(question, candidates.map(id)));
                });
    }

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
