package clutchwright.engine.inference;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.inference.Held.AtLocus;
import clutchwright.engine.inference.Held.Basis;
import clutchwright.engine.inference.LocusShape.Build;
import clutchwright.engine.pedigree.AnimalId;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Optional;

/// What an animal's own records say of it, its relatives left aside: as if it had no recorded
/// parents and no young.
public record OwnWord(CollectionRecords records, Assumptions assumptions) {

    /// At every locus of which anything is said or seen.
    ///
    /// @throws IllegalArgumentException if the animal is not in the pedigree
    public Held of(AnimalId animal) {
        var own = records.of(animal);
        var build = records.pedigree().theMember(animal).sex().map(Build::of).orElse(Build.UNSEXED);
        var named = new LinkedHashSet<>(own.claims().keySet());
        own.seen().ifPresent(seen -> named.addAll(seen.looks().keySet()));
        own.tests().forEach(test -> named.add(test.allele().locus()));
        var loci = new LinkedHashMap<LocusId, AtLocus>();
        for (var locus : records.model().loci().keySet()) {
            if (named.contains(locus)) {
                at(locus, build, own, Basis.FOR_NOW).ifPresent(at -> loci.put(locus, at));
            }
        }
        return new Held(loci);
    }

    /// Empty where nothing but wild type is told.
    Optional<AtLocus> at(LocusId locus, Build build, OwnRecords own, Basis basis) {
        var network = new LocusNetwork(records, locus, assumptions);
        var weights = network.alone(own, build);
        var chances = new LinkedHashMap<Genotype, Double>();
        for (var s = 0; s < weights.length; s++) {
            if (weights[s] > 0) {
                chances.merge(
                        network.shape.states(build).get(s).genotype(), weights[s], Double::sum);
            }
        }
        return new Telling(network).of(build, own, chances, basis, 0);
    }
}
