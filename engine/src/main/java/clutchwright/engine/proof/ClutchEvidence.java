package clutchwright.engine.proof;

import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member.Span;
import clutchwright.engine.probability.BayesFactor;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;

/// What the young of one clutch say of whether a parent carries an allele.
///
/// A clutch is the young of one couple that hatched together. It is withdrawn by taking what was
/// seen and tested of these young at the locus off the record; all else stays.
///
/// @param dams of the couple, as far as recorded
/// @param sires the sire, or every candidate where he is in doubt
/// @param hatched from the first to the last; empty where no day is recorded
/// @param looks how many looked so; a doubtful look counts as the set of what it may have been
/// @param chanceWithout that the parent carries the allele, if the clutch is withdrawn
/// @param factor of the odds of carrying, with the clutch over without it; empty where the rest
///     of the records settles the question already, so that nothing is left to weigh
public record ClutchEvidence(
        List<AnimalId> dams,
        List<AnimalId> sires,
        Optional<Span> hatched,
        List<AnimalId> young,
        SequencedMap<Set<Phenotype>, Integer> looks,
        double chanceWithout,
        Optional<BayesFactor> factor) {

    public ClutchEvidence {
        dams = List.copyOf(dams);
        sires = List.copyOf(sires);
        young = List.copyOf(young);
        looks = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(looks));
    }

    /// The young of which something was read at the locus.
    public int looked() {
        return looks.values().stream().mapToInt(Integer::intValue).sum();
    }
}
