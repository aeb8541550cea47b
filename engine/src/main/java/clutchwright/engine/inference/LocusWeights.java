package clutchwright.engine.inference;

import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.LocusShape.Build;
import clutchwright.engine.inference.LocusShape.State;
import clutchwright.engine.inference.OwnRecords.Claim;
import clutchwright.engine.probability.Distribution;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// What an animal's own records say at one locus, as weights of its genotypes: the prior of one
/// without recorded parents, and the likelihood of what was seen and tested.
///
/// Equal records give the same array, which is never changed.
final class LocusWeights {

    private final GeneticModel model;
    private final LocusShape shape;
    private final Assumptions assumptions;
    private final Map<Build, double[]> population = new EnumMap<>(Build.class);
    private final Map<Build, double[]> plain = new EnumMap<>(Build.class);
    private final Map<Build, Map<Set<Phenotype>, double[]>> looks = new EnumMap<>(Build.class);
    private final Map<Build, Map<Claim, double[]>> claims = new EnumMap<>(Build.class);
    private final LocusId id;
    private final Set<Phenotype> normal;
    private final Optional<Set<Phenotype>> plainLook;

    LocusWeights(GeneticModel model, LocusShape shape, Assumptions assumptions) {
        this.model = model;
        this.shape = shape;
        this.assumptions = assumptions;
        this.id = shape.map.locus().id();
        this.normal = Set.of(Phenotype.normalOf(id));
        this.plainLook = Optional.of(normal);
        var notWild = shape.alleles.size() - 1;
        if (notWild * assumptions.background() > 1) {
            throw new IllegalArgumentException(
                    "background frequency %s for each of the %d alleles of %s is more than 1"
                            .formatted(assumptions.background(), notWild, id));
        }
    }

    /// Hardy-Weinberg proportions among the living.
    double[] population(Build build) {
        return population.computeIfAbsent(build, this::hardyWeinberg);
    }

    /// Prior of an animal without recorded parents.
    double[] founder(Build build, OwnRecords own) {
        var claim = own.claims().get(id);
        if (claim != null) {
            return claims.computeIfAbsent(build, _ -> new HashMap<>())
                    .computeIfAbsent(claim, said -> claimed(build, said));
        }
        if (assumptions.acquiredForLook() > 0) {
            var seen = own.seen().flatMap(this::look);
            if (seen.isPresent() && !seen.get().equals(normal)) {
                var drawn = new Claim(plainest(shape.map, seen.get()), true);
                return claims.computeIfAbsent(build, _ -> new HashMap<>())
                        .computeIfAbsent(drawn, said -> claimed(build, said));
            }
        }
        return population(build);
    }

    /// What is stated to be carried, whoever the parents are; empty where nothing is.
    Optional<double[]> statedCarried(Build build, OwnRecords own) {
        return Optional.ofNullable(own.claims().get(shape.map.locus().id()))
                .filter(claim -> !claim.shows())
                .map(claim -> normalised(spread(build, claim.genotypes())));
    }

    /// Likelihood of what was seen and tested; empty where that says nothing.
    Optional<double[]> likelihood(Build build, OwnRecords own) {
        var seen = own.seen().flatMap(this::look).map(look -> ofLook(build, look));
        return own.tests().isEmpty() ? seen : tested(build, own, seen);
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private Optional<double[]> tested(Build build, OwnRecords own, Optional<double[]> seen) {
        var tests = own.tests().stream().filter(test -> test.allele().locus().equals(id)).toList();
        if (tests.isEmpty()) {
            return seen;
        }
        var states = shape.states(build);
        var product = seen.map(double[]::clone).orElseGet(() -> ones(states.size()));
        for (var s = 0; s < product.length; s++) {
            for (var test : tests) {
                product[s] *= test.likelihood(states.get(s).genotype());
            }
        }
        return Optional.of(product);
    }

    /// What was seen at the locus; empty where it could not be read.
    Optional<Set<Phenotype>> look(OwnRecords.Seen seen) {
        if (seen.unread().contains(id)) {
            return Optional.empty();
        }
        var named = seen.looks().get(id);
        if (named != null) {
            return Optional.of(named);
        }
        // Asked for every animal at every locus: the usual answers come first and make nothing new.
        return seen.looks().isEmpty() || !isHidden(seen) ? plainLook : Optional.empty();
    }

    private boolean isHidden(OwnRecords.Seen seen) {
        for (var entry : seen.looks().entrySet()) {
            for (var look : entry.getValue()) {
                var masking = model.theLocus(entry.getKey()).maskingOf(look);
                if (!(masking instanceof Masking.Nothing) && masking.hides(id)) {
                    return true;
                }
            }
        }
        return false;
    }

    private double[] ofLook(Build build, Set<Phenotype> look) {
        if (look.equals(normal)) {
            return plain.computeIfAbsent(build, same -> sighted(same, normal));
        }
        return looks.computeIfAbsent(build, _ -> new HashMap<>())
                .computeIfAbsent(look, seen -> sighted(build, seen));
    }

    /// With the misread rate the record is one of the locus's other forms, each alike.
    private double[] sighted(Build build, Set<Phenotype> recorded) {
        var forms = shape.map.phenotypes();
        var states = shape.states(build);
        var weights = ones(states.size());
        if (forms.size() < 2) {
            return weights;
        }
        var misread = assumptions.misread() / (forms.size() - 1);
        for (var s = 0; s < weights.length; s++) {
            var shows = shape.map.phenotypeOf(states.get(s).genotype());
            var weight = 0.0;
            for (var form : recorded) {
                weight += form.equals(shows) ? 1 - assumptions.misread() : misread;
            }
            weights[s] = weight;
        }
        return weights;
    }

    private double[] hardyWeinberg(Build build) {
        var f = assumptions.background();
        var states = shape.states(build);
        var weights = new double[states.size()];
        for (var s = 0; s < weights.length; s++) {
            var state = states.get(s);
            var product = frequency(state.first(), f) * frequency(state.second(), f);
            var twoWays =
                    state.first() != state.second() && state.genotype() instanceof Genotype.Diploid;
            weights[s] = (twoWays ? 2 : 1) * product * state.viability();
        }
        return normalised(weights);
    }

    private double frequency(int allele, double f) {
        return allele == 0 ? 1 - f * (shape.alleles.size() - 1) : f;
    }

    /// What is stated to be carried sets the prior. What is stated to show is one more
    /// sighting; it sets the prior only as far as the animal is taken to have been acquired for
    /// it, and in the phase, which no sighting tells.
    private double[] claimed(Build build, Claim claim) {
        var stated = normalised(spread(build, claim.genotypes()));
        if (!claim.shows()) {
            return stated;
        }
        var open = population(build).clone();
        var states = shape.states(build);
        for (var s = 0; s < open.length; s++) {
            if (stated[s] == 0 && isOtherPhase(states.get(s), claim.genotypes())) {
                open[s] = 0;
            }
        }
        normalised(open);
        var acquired = assumptions.acquiredForLook();
        for (var s = 0; s < open.length; s++) {
            open[s] = acquired * stated[s] + (1 - acquired) * open[s];
        }
        return open;
    }

    private static boolean isOtherPhase(State state, Distribution<Genotype> stated) {
        return state.genotype() instanceof Genotype.Phased(var shared, var limited)
                && !shared.equals(limited)
                && stated.outcomes()
                        .contains(
                                new Genotype.Phased(/* shared= */ limited, /* limited= */ shared));
    }

    /// A distribution over genotypes laid on the states. Where the sex is not known each is
    /// alike, whatever is stated; within a sex each phase that fits.
    private double[] spread(Build build, Distribution<Genotype> genotypes) {
        var states = shape.states(build);
        var weights = new double[states.size()];
        for (var sex : Sex.values()) {
            genotypes
                    .chances()
                    .forEach(
                            (genotype, chance) -> {
                                var fitting =
                                        states.stream()
                                                .filter(state -> state.sex().contains(sex))
                                                .filter(state -> fits(state, genotype))
                                                .toList();
                                for (var state : fitting) {
                                    weights[states.indexOf(state)] +=
                                            chance.value() / fitting.size();
                                }
                            });
        }
        return weights;
    }

    private static boolean fits(State state, Genotype genotype) {
        var bothPhased =
                state.genotype() instanceof Genotype.Phased && genotype instanceof Genotype.Phased;
        return bothPhased
                ? state.genotype().equals(genotype)
                : state.genotype().pair().equals(genotype.pair());
    }

    /// Of the pairs that look so, those with the fewest alleles that are not wild, each alike:
    /// one copy of a dominant allele is far more usual than two.
    static Distribution<Genotype> plainest(PhenotypeMap map, Set<Phenotype> look) {
        var fitting =
                map.locus().allPairs().stream()
                        .filter(pair -> look.isEmpty() || look.contains(map.phenotypeOf(pair)))
                        .toList();
        var fewest = fitting.stream().mapToInt(LocusWeights::notWild).min().orElseThrow();
        return Distribution.uniform(
                List.<Genotype>copyOf(
                        fitting.stream().filter(pair -> notWild(pair) == fewest).toList()));
    }

    private static int notWild(Genotype genotype) {
        return (int) genotype.alleles().stream().filter(allele -> !allele.isWild()).count();
    }

    private static double[] ones(int size) {
        var ones = new double[size];
        Arrays.fill(ones, 1);
        return ones;
    }

    private static double[] normalised(double[] weights) {
        var sum = 0.0;
        for (var weight : weights) {
            sum += weight;
        }
        for (var s = 0; sum > 0 && s < weights.length; s++) {
            weights[s] /= sum;
        }
        return weights;
    }
}
