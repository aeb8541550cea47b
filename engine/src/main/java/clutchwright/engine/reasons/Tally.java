package clutchwright.engine.reasons;

import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.pedigree.AnimalId;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import java.util.Set;

/// Young of one couple, counted by their looks at one locus.
///
/// @param looks how many looked so; a doubtful look counts as the set of what it may have been
/// @param unseen of whom nothing was read there
/// @param further descendants of theirs of whom something is recorded there
public record Tally(
        List<AnimalId> young,
        SequencedMap<Set<Phenotype>, Integer> looks,
        int unseen,
        int further) {

    public Tally {
        young = List.copyOf(young);
        looks = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(looks));
    }

    static Tally of(LocusChances chances, List<AnimalId> young, int further) {
        var looks = new LinkedHashMap<Set<Phenotype>, Integer>();
        for (var one : young) {
            chances.lookAt(one).ifPresent(look -> looks.merge(look, 1, Integer::sum));
        }
        var seen = looks.values().stream().mapToInt(Integer::intValue).sum();
        return new Tally(young, looks, young.size() - seen, further);
    }
}
