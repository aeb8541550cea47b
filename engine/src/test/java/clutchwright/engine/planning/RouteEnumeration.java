package clutchwright.engine.planning;

import clutchwright.engine.genetics.Sex;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/// Every route from some animals to a visual of unlinked recessives, one clutch a season by every
/// dam: slow, obvious, and with nothing left aside. Hatchlings breed in the next season.
///
/// Genotypes are counts of recessive copies, 0 to 2, by gene.
final class RouteEnumeration {

    private final int genes;
    private final int eggs;
    private final double hatchRate;
    private final int seasons;
    private final List<Animal> females = new ArrayList<>();
    private final List<Animal> males = new ArrayList<>();
    private final double[] best;
    private int numbers;
    private int matings;

    RouteEnumeration(int genes, int eggs, double hatchRate, int seasons) {
        this.genes = genes;
        this.eggs = eggs;
        this.hatchRate = hatchRate;
        this.seasons = seasons;
        best = new double[seasons + 1];
    }

    /// @param held by gene, the chance of 0, 1 and 2 copies
    /// @param ready by season, the chance that it is grown
    private record Animal(
            int number,
            double[][] held,
            double[] ready,
            Set<Integer> before,
            Mating mating,
            boolean[] shows) {}

    private record Mating(int number, Set<Integer> before, double[] ready, List<Truth> truths) {
        /// Of an animal of the stock.
        static final Mating NONE = new Mating(-1, Set.of(), new double[0], List.of());
    }

    /// What the parents may be.
    private record Truth(double weight, int[] dam, int[] sire) {}

    RouteEnumeration own(Sex sex, double[][] held) {
        var ready = new double[seasons + 1];
        Arrays.fill(ready, 1, seasons + 1, 1);
        var animal = new Animal(numbers++, held, ready, Set.of(), Mating.NONE, new boolean[genes]);
        (sex == Sex.FEMALE ? females : males).add(animal);
        return this;
    }

    /// By season, the best chance of any route.
    double[] best() {
        var fromFemale = 0;
        var fromMale = 0;
        for (var generation = 1; generation <= seasons; generation++) {
            var dams = List.copyOf(females);
            var sires = List.copyOf(males);
            for (var f = 0; f < dams.size(); f++) {
                for (var m = 0; m < sires.size(); m++) {
                    if (f >= fromFemale || m >= fromMale) {
                        mate(dams.get(f), sires.get(m), generation < seasons);
                    }
                }
            }
            fromFemale = dams.size();
            fromMale = sires.size();
        }
        return best;
    }

    int animals() {
        return females.size() + males.size();
    }

    private void mate(Animal dam, Animal sire, boolean keep) {
        var ready = bothReady(dam, sire);
        if (ready[seasons] == 0) {
            return;
        }
        var before = new HashSet<Integer>();
        if (keep) {
            before.addAll(dam.before());
            before.addAll(sire.before());
            before.add(dam.number());
            before.add(sire.number());
        }
        var mating = new Mating(matings++, before, ready, truths(dam, sire));
        var all = new boolean[genes];
        Arrays.fill(all, true);
        var reached = hatched(mating, all, 1);
        for (var s = 1; s <= seasons; s++) {
            best[s] = Math.max(best[s], reached[s]);
        }
        if (!keep) {
            return;
        }
        for (var look = 0; look < 1 << genes; look++) {
            var shows = new boolean[genes];
            for (var g = 0; g < genes; g++) {
                shows[g] = (look >> g & 1) == 1;
            }
            var by = hatched(mating, shows, 0.5);
            if (by[seasons - 1] > 0) {
                var held = held(dam, sire, shows);
                females.add(young(mating, shows, by, held));
                males.add(young(mating, shows, by, held));
            }
        }
    }

    private Animal young(Mating mating, boolean[] shows, double[] by, double[][] held) {
        var ready = new double[seasons + 1];
        System.arraycopy(by, 0, ready, 1, seasons);
        return new Animal(numbers++, held, ready, mating.before(), mating, shows);
    }

    private double[] bothReady(Animal dam, Animal sire) {
        if (dam.mating().number() >= 0 && dam.mating().number() == sire.mating().number()) {
            return siblingsReady(dam, sire);
        }
        if (dam.before().contains(sire.number())) {
            return dam.ready();
        }
        if (sire.before().contains(dam.number())) {
            return sire.ready();
        }
        var both = new double[seasons + 1];
        for (var s = 0; s <= seasons; s++) {
            both[s] = dam.ready()[s] * sire.ready()[s];
        }
        return both;
    }

    private double[] siblingsReady(Animal dam, Animal sire) {
        var mating = dam.mating();
        var both = new double[seasons + 1];
        for (var s = 1; s <= seasons; s++) {
            for (var t = 1; t < s; t++) {
                var start = mating.ready()[t] - mating.ready()[t - 1];
                var n = (s - t) * eggs;
                for (var truth : mating.truths()) {
                    var f = hatchRate / 2 * share(truth, dam.shows());
                    var m = hatchRate / 2 * share(truth, sire.shows());
                    both[s] +=
                            start
                                    * truth.weight()
                                    * (1
                                            - Math.pow(1 - f, n)
                                            - Math.pow(1 - m, n)
                                            + Math.pow(1 - f - m, n));
                }
            }
        }
        return both;
    }

    private double[] hatched(Mating mating, boolean[] shows, double sexShare) {
        var by = new double[seasons + 1];
        for (var truth : mating.truths()) {
            var one = hatchRate * sexShare * share(truth, shows);
            for (var t = 1; one > 0 && t <= seasons; t++) {
                var start = mating.ready()[t] - mating.ready()[t - 1];
                for (var s = t; start > 0 && s <= seasons; s++) {
                    by[s] += start * truth.weight() * (1 - Math.pow(1 - one, (s - t + 1) * eggs));
                }
            }
        }
        return by;
    }

    private List<Truth> truths(Animal dam, Animal sire) {
        List<Truth> all = List.of(new Truth(1, new int[0], new int[0]));
        for (var g = 0; g < genes; g++) {
            var next = new ArrayList<Truth>();
            for (var truth : all) {
                for (var d = 0; d <= 2; d++) {
                    for (var s = 0; s <= 2; s++) {
                        var weight = truth.weight() * dam.held()[g][d] * sire.held()[g][s];
                        if (weight > 0) {
                            next.add(
                                    new Truth(weight, plus(truth.dam(), d), plus(truth.sire(), s)));
                        }
                    }
                }
            }
            all = next;
        }
        return all;
    }

    private static int[] plus(int[] some, int one) {
        var more = Arrays.copyOf(some, some.length + 1);
        more[some.length] = one;
        return more;
    }

    private double share(Truth truth, boolean[] shows) {
        var share = 1.0;
        for (var g = 0; g < genes; g++) {
            var visual = truth.dam()[g] * truth.sire()[g] / 4.0;
            share *= shows[g] ? visual : 1 - visual;
        }
        return share;
    }

    /// What is held of young that look so; independent by gene, as that of their parents is.
    private double[][] held(Animal dam, Animal sire, boolean[] shows) {
        var held = new double[genes][3];
        for (var g = 0; g < genes; g++) {
            for (var d = 0; d <= 2; d++) {
                for (var s = 0; s <= 2; s++) {
                    var weight = dam.held()[g][d] * sire.held()[g][s];
                    var both = d * s / 4.0;
                    var none = (2 - d) * (2 - s) / 4.0;
                    if (shows[g]) {
                        held[g][2] += weight * both;
                    } else {
                        held[g][0] += weight * none;
                        held[g][1] += weight * (1 - both - none);
                    }
                }
            }
            var sum = Arrays.stream(held[g]).sum();
            for (var copies = 0; copies <= 2; copies++) {
                held[g][copies] /= sum;
            }
        }
        return held;
    }
}
