package clutchwright.app.holding;

import clutchwright.app.wording.ContradictionWords;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.reasons.Contradictions;
import clutchwright.engine.reasons.ErrorRates;
import clutchwright.records.Snapshot;
import clutchwright.records.SpeciesRecords;
import java.util.Optional;

/// Whether what was just written down of an animal fits everything else.
public final class Surprise {

    private Surprise() {}

    /// Says that its record and others cannot all be true, or hardly, and what is likeliest to
    /// have happened; empty if it fits, or if nothing is on record to hold it against.
    public static Optional<String> of(Holding holding, AnimalId animal) {
        var snapshot = holding.database().read(Snapshot::of);
        var species = snapshot.find(animal).map(found -> found.species());
        if (species.isEmpty() || snapshot.pedigree() instanceof Pedigree.Result.Faulty) {
            return Optional.empty();
        }
        var words =
                new ContradictionWords(
                        id ->
                                snapshot.find(id)
                                        .map(found -> found.tag().value())
                                        .orElse(id.toString()));
        var records =
                SpeciesRecords.of(
                                snapshot.animals().values().stream()
                                        .filter(one -> one.species().equals(species.get()))
                                        .toList(),
                                snapshot.statements(),
                                holding::lines)
                        .get(species.get());
        return Optional.ofNullable(records)
                .flatMap(
                        found ->
                                Contradictions.about(
                                                found.records(),
                                                Assumptions.KEEPER,
                                                ErrorRates.STANDARD,
                                                animal)
                                        .stream()
                                        .findFirst())
                .map(words::text);
    }
}
