package clutchwright.engine.inference;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.inference.Held.AtLocus;
import clutchwright.engine.inference.Held.Basis;
import clutchwright.engine.inference.LocusShape.Build;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;
import java.util.function.Predicate;

/// How the chances of an animal's genotypes at one locus are told to a keeper: given that it
/// looks as recorded, and without what may be in any animal.
final class Telling {

    /// A genotype is left out that is no likelier than this many times in the population ...
    private static final double TIMES_THE_POPULATION = 2;

    /// ... and not likelier than this at all.
    private static final double LITTLE = 0.05;

    private static final double HALF = 0.5;

    private final LocusNetwork network;
    private final Map<Build, SequencedMap<Genotype, Double>> population =
            new EnumMap<>(Build.class);

    Telling(LocusNetwork network) {
        this.network = network;
        for (var build : Build.values()) {
            var all = network.population(build);
            var byGenotype = new LinkedHashMap<Genotype, Double>();
            for (var s = 0; s < all.length; s++) {
                byGenotype.merge(
                        told(build, network.shape.states(build).get(s).genotype()),
                        all[s],
                        Double::sum);
            }
            population.put(build, byGenotype);
        }
    }

    /// Empty where nothing but wild type is left to tell.
    ///
    /// @param chances or weights in proportion to them
    Optional<AtLocus> of(
            Build build,
            OwnRecords own,
            SequencedMap<Genotype, Double> chances,
            Basis basis,
            double error) {
        var look = own.seen().flatMap(network::look);
        Predicate<Genotype> asSeen =
                genotype ->
                        look.isEmpty()
                                || look.get().contains(network.shape.map.phenotypeOf(genotype));
        var all = new LinkedHashMap<Genotype, Double>();
        chances.forEach(
                (genotype, chance) -> all.merge(told(build, genotype), chance, Double::sum));
        var fitting = given(all, asSeen);
        var asRecorded = sum(fitting) / sum(all);
        if (!(asRecorded >= LocusChances.LEAST)) {
            // Nothing else is known of what looks so than what looks so in the population.
            fitting = given(population(build), asSeen);
            asRecorded = 0;
        }
        if (!(sum(fitting) > 0)) {
            fitting = plainest(build, look.orElse(Set.of()));
        }
        var told =
                withoutBackground(
                        normalised(fitting), normalised(given(population(build), asSeen)));
        if (told.keySet().stream().allMatch(Telling::isWild)) {
            return Optional.empty();
        }
        return Optional.of(
                new AtLocus(
                        NearFractions.of(told),
                        asRecorded < HALF ? doubted(basis) : basis,
                        asRecorded,
                        error));
    }

    private static Basis doubted(Basis basis) {
        return switch (basis) {
            case CLAIM, SIGHTING, ALL_RECORDS, SIGHTING_AGAINST_RECORDS ->
                    Basis.SIGHTING_AGAINST_RECORDS;
            // Own records alone are no ground to doubt what was seen.
            case CONTRADICTED, FOR_NOW -> basis;
        };
    }

    /// Of an animal whose sex is not known no phase is told.
    private Genotype told(Build build, Genotype genotype) {
        return build == Build.UNSEXED ? genotype.pair() : genotype;
    }

    private SequencedMap<Genotype, Double> population(Build build) {
        return population.getOrDefault(build, new LinkedHashMap<>());
    }

    private SequencedMap<Genotype, Double> plainest(Build build, Set<Phenotype> look) {
        var pairs = LocusWeights.plainest(network.shape.map, look).outcomes();
        return given(ones(population(build)), genotype -> pairs.contains(genotype.pair()));
    }

    private static SequencedMap<Genotype, Double> ones(SequencedMap<Genotype, Double> of) {
        var ones = new LinkedHashMap<Genotype, Double>();
        of.forEach((genotype, _) -> ones.put(genotype, 1.0));
        return ones;
    }

    /// Without genotypes for which the records give no reason; all of them where that would
    /// leave little.
    private static SequencedMap<Genotype, Double> withoutBackground(
            SequencedMap<Genotype, Double> fitting, SequencedMap<Genotype, Double> population) {
        var left = new LinkedHashMap<Genotype, Double>();
        fitting.forEach(
                (genotype, chance) -> {
                    var usual = TIMES_THE_POPULATION * population.getOrDefault(genotype, 0.0);
                    if (isWild(genotype) || chance > Math.min(usual, LITTLE)) {
                        left.put(genotype, chance);
                    }
                });
        return sum(left) > HALF ? normalised(left) : fitting;
    }

    private static boolean isWild(Genotype genotype) {
        return genotype.alleles().stream().allMatch(allele -> allele.isWild());
    }

    private static SequencedMap<Genotype, Double> given(
            SequencedMap<Genotype, Double> chances, Predicate<Genotype> event) {
        var left = new LinkedHashMap<Genotype, Double>();
        chances.forEach(
                (genotype, chance) -> {
                    if (event.test(genotype)) {
                        left.put(genotype, chance);
                    }
                });
        return left;
    }

    private static double sum(SequencedMap<Genotype, Double> chances) {
        return chances.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    private static SequencedMap<Genotype, Double> normalised(
            SequencedMap<Genotype, Double> weights) {
        var sum = sum(weights);
        var chances = new LinkedHashMap<Genotype, Double>();
        weights.forEach(
                (genotype, weight) -> {
                    if (weight / sum >= LocusChances.LEAST) {
                        chances.put(genotype, weight / sum);
                    }
                });
        return chances;
    }
}
