package clutchwright.engine.inference;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentPair;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.probability.Distribution;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.function.Predicate;

/// Animals judged together. They are not independent of each other: of mates whose young are all
/// plain hardly both are het, and possible hets of one clutch are het together or not.
final class Judged {

    /// Chances that differ by less are the same to everybody.
    private static final double NOTHING = 1e-6;

    private final PedigreeInference inference;

    Judged(PedigreeInference inference) {
        this.inference = inference;
    }

    /// The genotypes of two together at each locus where that differs from each by itself.
    ///
    /// @param ofDam   what is told of her, and of him
    SequencedMap<LocusId, Distribution<ParentPair>> couple(
            AnimalId dam, Held ofDam, AnimalId sire, Held ofSire) {
        var together = new LinkedHashMap<LocusId, Distribution<ParentPair>>();
        ofDam.loci()
                .forEach(
                        (locus, hers) ->
                                Optional.ofNullable(ofSire.loci().get(locus))
                                        .filter(his -> isOpen(hers) && isOpen(his))
                                        .flatMap(
                                                his ->
                                                        couple(
                                                                locus,
                                                                dam,
                                                                hers.genotypes(),
                                                                sire,
                                                                his.genotypes()))
                                        .ifPresent(both -> together.put(locus, both)));
        return Collections.unmodifiableSequencedMap(together);
    }

    private static boolean isOpen(Held.AtLocus at) {
        return at.genotypes().outcomes().size() > 1;
    }

    private Optional<Distribution<ParentPair>> couple(
            LocusId locus,
            AnimalId dam,
            Distribution<Genotype> hers,
            AnimalId sire,
            Distribution<Genotype> his) {
        var chances = inference.chancesAt(locus);
        if (chances.isEmpty()) {
            return Optional.empty();
        }
        var joint = new LinkedHashMap<ParentPair, Double>();
        var sum = 0.0;
        for (var entry : chances.get().together(List.of(dam, sire)).entrySet()) {
            var couple = new ParentPair(entry.getKey().getFirst(), entry.getKey().getLast());
            // What is not told of one alone is not told of the two.
            if (hers.outcomes().contains(couple.dam()) && his.outcomes().contains(couple.sire())) {
                joint.merge(couple, entry.getValue(), Double::sum);
                sum += entry.getValue();
            }
        }
        if (!(sum > 0)) {
            return Optional.empty();
        }
        var whole = sum;
        joint.replaceAll((_, chance) -> chance / whole);
        joint.values().removeIf(chance -> chance < LocusChances.LEAST);
        return areIndependent(joint) ? Optional.empty() : Optional.of(NearFractions.of(joint));
    }

    private static boolean areIndependent(SequencedMap<ParentPair, Double> joint) {
        var hers = new HashMap<Genotype, Double>();
        var his = new HashMap<Genotype, Double>();
        joint.forEach(
                (couple, chance) -> {
                    hers.merge(couple.dam(), chance, Double::sum);
                    his.merge(couple.sire(), chance, Double::sum);
                });
        for (var dam : hers.entrySet()) {
            for (var sire : his.entrySet()) {
                var both = joint.getOrDefault(new ParentPair(dam.getKey(), sire.getKey()), 0.0);
                if (Math.abs(both - dam.getValue() * sire.getValue()) > NOTHING) {
                    return false;
                }
            }
        }
        return true;
    }

    /// The chance that the event holds for at least one of some animals; empty where what is
    /// recorded of the locus cannot all be true.
    Optional<Double> atLeastOne(
            LocusId locus, Collection<AnimalId> animals, Predicate<Genotype> event) {
        return inference
                .chancesAt(locus)
                .map(
                        chances -> {
                            var none = new LinkedHashMap<AnimalId, Predicate<Genotype>>();
                            new ArrayList<>(animals)
                                    .forEach(animal -> none.put(animal, event.negate()));
                            return 1 - chanceOfAll(chances, none);
                        });
    }

    private static double chanceOfAll(
            LocusChances chances, Map<AnimalId, Predicate<Genotype>> events) {
        return chances.given(events)
                .map(given -> Math.exp(given.logLikelihood() - chances.logLikelihood()))
                .map(chance -> Math.min(1, chance))
                .orElse(0.0);
    }
}
