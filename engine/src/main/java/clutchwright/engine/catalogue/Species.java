package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import java.util.List;
import java.util.Optional;

/// A species and everything its catalogue states.
///
/// @param id such as `python-regius`
/// @param typicalClutch eggs of a usual clutch, for a female without a history
/// @param female from when on females are bred; empty where the file does not say
/// @param male from when on males are bred
public record Species(
        String id,
        String commonName,
        String latinName,
        int typicalClutch,
        Optional<BreedingMinimum> female,
        Optional<BreedingMinimum> male,
        GeneticModel model,
        List<LocusEntry> loci,
        List<NamedCombination> combinations,
        List<Remark> remarks) {

    public Species {
        loci = List.copyOf(loci);
        combinations = List.copyOf(combinations);
        remarks = List.copyOf(remarks);
    }

    public Optional<BreedingMinimum> minimumOf(Sex sex) {
        return sex == Sex.FEMALE ? female : male;
    }

    public Optional<LocusEntry> findLocus(LocusId id) {
        return loci.stream().filter(entry -> entry.id().equals(id)).findFirst();
    }
}
