package clutchwright.engine.proof;

import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.pedigree.AnimalId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SequencedSet;

/// What living hatchlings of an animal with one mate would say of whether it carries an allele.
///
/// The two parents are drawn once for all hatchlings, together, as the records leave them; given
/// the parents hatchlings are independent. A hatchling has the trait if it shows one of the
/// telling looks. Hatchlings that nobody can read do not count.
public final class TestMating {

    /// Chances below which a breeder takes the question as answered.
    public static final double DOUBTFUL = 0.05;
    public static final double UNLIKELY = 0.01;
    public static final double RULED_OUT = 0.001;

    /// More hatchlings than that are not searched for: no animal has so many.
    public static final int MOST_HATCHLINGS = 10_000;

    /// A usual clutch, where nothing else is said.
    public static final int USUAL_CLUTCH = 6;

    /// Fewest hatchlings without the trait that bring the chance down, then most bits.
    public static final Comparator<TestMating> SOONEST_SETTLED =
            Comparator.<TestMating>comparingInt(mating -> orMost(mating.doubtful))
                    .thenComparingInt(mating -> orMost(mating.unlikely))
                    .thenComparingInt(mating -> orMost(mating.ruledOut))
                    .thenComparing(mating -> mating.usualBits, Comparator.reverseOrder())
                    .thenComparingLong(mating -> mating.mate.value());

    /// Sums of a few doubles; what is nearer than that is equal.
    static final double ROUNDING = 1e-12;

    private final AnimalId mate;
    private final SequencedSet<Phenotype> telling;
    private final List<Case> cases;
    private final OptionalInt doubtful;
    private final OptionalInt unlikely;
    private final OptionalInt ruledOut;
    private final double usualBits;

    /// What the two parents may be, as far as it matters here.
    ///
    /// @param tells chance that one hatchling has the trait
    record Case(boolean carries, double chance, double tells) {

        /// Logarithm of the chance of this case and of hatchlings as found.
        double log(int with, int without) {
            return Math.log(chance) + times(with, Math.log(tells)) + times(without, logPlain());
        }

        private double logPlain() {
            return Math.log1p(-tells);
        }

        /// The chance of at least one hatchling with the trait.
        double atLeastOne(int hatchlings) {
            return hatchlings == 0 ? 0 : -Math.expm1(times(hatchlings, logPlain()));
        }

        private static double times(int count, double log) {
            return count == 0 ? 0 : count * log;
        }
    }

    private TestMating(AnimalId mate, SequencedSet<Phenotype> telling, List<Case> cases) {
        this.mate = mate;
        this.telling = Collections.unmodifiableSequencedSet(new LinkedHashSet<>(telling));
        this.cases = cases;
        var needed = new Countdown(cases).hatchlingsUntil(DOUBTFUL, UNLIKELY, RULED_OUT);
        doubtful = needed.get(0);
        unlikely = needed.get(1);
        ruledOut = needed.get(2);
        usualBits = bits(USUAL_CLUTCH);
    }

    /// @param cases at least one, with chances that are proportional to the true ones
    static TestMating of(AnimalId mate, SequencedSet<Phenotype> telling, List<Case> cases) {
        record Kind(boolean carries, double tells) {}
        var chances = new LinkedHashMap<Kind, Double>();
        for (var one : cases) {
            chances.merge(new Kind(one.carries(), one.tells()), one.chance(), Double::sum);
        }
        var all = new double[2];
        chances.forEach((kind, chance) -> all[kind.carries() ? 1 : 0] += chance);
        var merged = new ArrayList<Case>();
        chances.forEach(
                (kind, chance) -> {
                    // Beside those like it that is rounding, and there are hundreds in a series.
                    if (chance > ROUNDING * all[kind.carries() ? 1 : 0]) {
                        var share = chance / (all[0] + all[1]);
                        merged.add(new Case(kind.carries(), share, kind.tells()));
                    }
                });
        return new TestMating(mate, telling, List.copyOf(merged));
    }

    public AnimalId mate() {
        return mate;
    }

    /// The looks that speak for the allele; empty if no hatchling of this mate says anything.
    public SequencedSet<Phenotype> telling() {
        return telling;
    }

    /// The chance that it carries the allele before any of these hatchlings.
    public double chance() {
        return sum(cases.stream().filter(Case::carries).toList());
    }

    /// The chance that it carries the allele after hatchlings as found; empty if they cannot be.
    ///
    /// @param with    hatchlings with the trait
    /// @param without hatchlings without it
    public OptionalDouble chanceAfter(int with, int without) {
        var logs = cases.stream().mapToDouble(one -> one.log(with, without)).toArray();
        var most = Double.NEGATIVE_INFINITY;
        for (var log : logs) {
            most = Math.max(most, log);
        }
        if (most == Double.NEGATIVE_INFINITY) {
            return OptionalDouble.empty();
        }
        var carries = 0.0;
        var all = 0.0;
        for (var i = 0; i < logs.length; i++) {
            var weight = Math.exp(logs[i] - most);
            all += weight;
            carries += cases.get(i).carries() ? weight : 0;
        }
        return OptionalDouble.of(carries / all);
    }

    /// The fewest hatchlings, all without the trait, after which the chance that it carries the
    /// allele is at most this; empty if there is no such number up to [#MOST_HATCHLINGS].
    ///
    /// @param chance above zero
    public OptionalInt needed(double chance) {
        if (chance == DOUBTFUL) {
            return doubtful;
        }
        if (chance == UNLIKELY) {
            return unlikely;
        }
        return chance == RULED_OUT
                ? ruledOut
                : new Countdown(cases).hatchlingsUntil(chance).getFirst();
    }

    /// What the chance comes to after ever more hatchlings without the trait: above zero where
    /// the mate itself may not be able to bring the trait out.
    public double limit() {
        var rarest = cases.stream().mapToDouble(Case::tells).min().orElseThrow();
        var left = cases.stream().filter(one -> one.tells() <= rarest + ROUNDING).toList();
        return sum(left.stream().filter(Case::carries).toList()) / sum(left);
    }

    /// The chance, as things stand, that at least one of so many hatchlings has the trait.
    public double chanceOfTrait(int hatchlings) {
        return cases.stream().mapToDouble(one -> one.chance() * one.atLeastOne(hatchlings)).sum();
    }

    /// The chance that at least one of so many hatchlings has the trait if the animal carries
    /// the allele: the figure of the old tables of test matings. It is not the chance that an
    /// animal without such a hatchling is free of the allele. Empty if it cannot carry it.
    public OptionalDouble detection(int hatchlings) {
        var carriers = cases.stream().filter(Case::carries).toList();
        return carriers.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        carriers.stream()
                                        .mapToDouble(
                                                one -> one.chance() * one.atLeastOne(hatchlings))
                                        .sum()
                                / sum(carriers));
    }

    /// The fewest hatchlings that bring a carrier out with that chance; empty if there is no
    /// such number up to [#MOST_HATCHLINGS].
    ///
    /// @param chance above zero, below one
    public OptionalInt neededToDetect(double chance) {
        var least = chance * (1 - ROUNDING);
        if (detection(MOST_HATCHLINGS).orElse(0) < least) {
            return OptionalInt.empty();
        }
        var low = 0;
        var high = MOST_HATCHLINGS;
        while (low < high) {
            var middle = (low + high) / 2;
            if (detection(middle).orElse(0) >= least) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return OptionalInt.of(low);
    }

    /// What a clutch of that size is expected to tell of whether it carries the allele: the
    /// mutual information of the question and the number of hatchlings with the trait, in bits;
    /// at most what is unknown now.
    public double bits(int hatchlings) {
        var carries = chance();
        if (telling.isEmpty() || carries <= 0 || carries >= 1) {
            return 0;
        }
        var bits = 0.0;
        var logWays = 0.0;
        for (var with = 0; with <= hatchlings; with++) {
            if (with > 0) {
                logWays += Math.log((hatchlings - with + 1.0) / with);
            }
            var yes = 0.0;
            var no = 0.0;
            for (var one : cases) {
                var both = Math.exp(logWays + one.log(with, hatchlings - with));
                yes += one.carries() ? both : 0;
                no += one.carries() ? 0 : both;
            }
            bits += term(yes, carries, yes + no) + term(no, 1 - carries, yes + no);
        }
        return Math.max(0, bits / Math.log(2));
    }

    private static double term(double both, double prior, double found) {
        return both > 0 ? both * Math.log(both / (prior * found)) : 0;
    }

    private static double sum(List<Case> some) {
        return some.stream().mapToDouble(Case::chance).sum();
    }

    private static int orMost(OptionalInt needed) {
        return needed.orElse(Integer.MAX_VALUE);
    }
}
