package clutchwright.engine.inference;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Pedigree;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/// All that is recorded of a collection and bears on what its animals carry.
///
/// @param own of the animals that have any
public record CollectionRecords(
        GeneticModel model, Pedigree pedigree, Map<AnimalId, OwnRecords> own) {

    public CollectionRecords {
        own = Map.copyOf(own);
        for (var animal : own.keySet()) {
            pedigree.theMember(animal);
        }
    }

    public OwnRecords of(AnimalId animal) {
        return own.getOrDefault(animal, OwnRecords.NONE);
    }

    /// The alleles of a locus that some animal is said, seen or tested to have, the wild type
    /// first.
    public List<Allele> allelesMet(LocusId locus) {
        return MetAlleles.of(this, locus);
    }

    /// The same with other records of one animal.
    public CollectionRecords with(AnimalId animal, OwnRecords records) {
        var changed = new HashMap<>(own);
        changed.put(animal, records);
        return new CollectionRecords(model, pedigree, changed);
    }

    /// The same with other records of some animals.
    public CollectionRecords with(Map<AnimalId, OwnRecords> others) {
        var changed = new HashMap<>(own);
        changed.putAll(others);
        return new CollectionRecords(model, pedigree, changed);
    }

    /// The same animals in another pedigree.
    public CollectionRecords with(Pedigree other) {
        return new CollectionRecords(model, other, own);
    }
}
