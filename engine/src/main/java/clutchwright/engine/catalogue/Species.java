package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LocusId;
import java.util.List;
import java.util.Optional;

/// A species and everything its catalogue states.
///
/// @param id such as `python-regius`
/// @param typicalClutch eggs of a usual clutch, for a female without a history
public record Species(
        String id,
        String commonName,
        String latinName,
        int typicalClutch,
        GeneticModel model,
        List<LocusEntry> loci,
        List<NamedCombination> combinations,
        List<Remark> remarks) {

    public Species {
        loci = List.copyOf(loci);
        combinations = List.copyOf(combinations);
        remarks = List.copyOf(remarks);
    }

    public Optional<LocusEntry> findLocus(LocusId id) {
        return loci.stream().filter(entry -> entry.id().equals(id)).findFirst();
    }
}
