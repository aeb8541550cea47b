package clutchwright.engine.inference;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.LocusShape.Build;
import clutchwright.engine.inference.LocusShape.State;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/// Chances of the young's genotypes given its parents', at one locus and given that it lives.
///
/// Young that were recorded lived: their chances are those among the living, so that parents are
/// not doubted for young that nobody could have seen. Source of the formulas:
/// `docs/mathematics.md`, section "What an animal carries".
final class Transmission {

    private final LocusShape shape;
    private final double secondDivision;
    private final Map<Build, double[]> twoParents = new EnumMap<>(Build.class);
    private final Map<Build, double[]> perhaps = new EnumMap<>(Build.class);
    private final Map<Build, double[]> damOnly = new EnumMap<>(Build.class);

    Transmission(LocusShape shape, double secondDivision) {
        this.shape = shape;
        this.secondDivision = secondDivision;
    }

    /// Young by dam by sire, the sire fastest.
    double[] fromTwo(Build young) {
        return twoParents.computeIfAbsent(young, this::twoParentTable);
    }

    /// Young by dam, no sire.
    double[] fromDam(Build young) {
        return damOnly.computeIfAbsent(young, this::halfCloneTable);
    }

    /// Young by dam by sire by whether there was none (0: there was one), the last fastest.
    double[] perhapsFromDam(Build young) {
        return perhaps.computeIfAbsent(
                young,
                build -> {
                    var two = fromTwo(build);
                    var one = fromDam(build);
                    var sires = shape.states(Build.MALE).size();
                    var table = new double[two.length * 2];
                    for (var cell = 0; cell < two.length; cell++) {
                        table[2 * cell] = two[cell];
                        table[2 * cell + 1] = one[cell / sires];
                    }
                    return table;
                });
    }

    private double[] twoParentTable(Build young) {
        var states = shape.states(young);
        var dams = shape.states(Build.FEMALE);
        var sires = shape.states(Build.MALE);
        var table = new double[states.size() * dams.size() * sires.size()];
        for (var d = 0; d < dams.size(); d++) {
            for (var s = 0; s < sires.size(); s++) {
                var column = zygotes(states, dams.get(d), sires.get(s));
                normalise(column, states);
                for (var y = 0; y < column.length; y++) {
                    table[(y * dams.size() + d) * sires.size() + s] = column[y];
                }
            }
        }
        return table;
    }

    private double[] zygotes(List<State> young, State dam, State sire) {
        var chances = new double[young.size()];
        for (var sex : Sex.values()) {
            var eggs = shape.gametes(dam, Sex.FEMALE, sex);
            var sperm = shape.gametes(sire, Sex.MALE, sex);
            for (var y = 0; y < young.size(); y++) {
                var state = young.get(y);
                if (state.sex().contains(sex)) {
                    // Half of all zygotes are of each sex; a locus that does not mind sees both.
                    chances[y] += 0.5 * unite(state, eggs, sperm);
                }
            }
        }
        return chances;
    }

    private double unite(State young, double[] eggs, double[] sperm) {
        if (young.genotype() instanceof Genotype.Phased) {
            // The limited chromosome comes from the parent of the sex that has it.
            return shape.sexes.heterogametic() == Sex.MALE
                    ? eggs[young.first()] * sperm[young.second()]
                    : eggs[young.second()] * sperm[young.first()];
        }
        var one = eggs[young.first()] * sperm[young.second()];
        return young.first() == young.second()
                ? one
                : one + eggs[young.second()] * sperm[young.first()];
    }

    private double[] halfCloneTable(Build young) {
        var states = shape.states(young);
        var dams = shape.states(Build.FEMALE);
        var table = new double[states.size() * dams.size()];
        for (var d = 0; d < dams.size(); d++) {
            var column = new double[states.size()];
            for (var y = 0; y < states.size() && canBeHalfClone(young); y++) {
                column[y] = halfClone(states.get(y), dams.get(d));
            }
            normalise(column, states);
            for (var y = 0; y < states.size(); y++) {
                table[y * dams.size() + d] = column[y];
            }
        }
        return table;
    }

    /// The young have the chromosome twice that the dam has twice: none is of the other sex, at
    /// no locus.
    private boolean canBeHalfClone(Build young) {
        return young == Build.UNSEXED || young == Build.of(shape.sexes.heterogametic().opposite());
    }

    /// Terminal fusion: an egg and its second polar body, which carry the same allele unless the
    /// locus segregated at the second division. The young are of the sex with two alike.
    private double halfClone(State young, State dam) {
        if (!young.sex().contains(shape.sexes.heterogametic().opposite())
                || young.genotype() instanceof Genotype.Phased) {
            return 0;
        }
        if (dam.first() == dam.second()) {
            return young.first() == dam.first() && young.second() == dam.first() ? 1 : 0;
        }
        if (young.first() == young.second()) {
            var hers = young.first() == dam.first() || young.first() == dam.second();
            return hers ? (1 - secondDivision) / 2 : 0;
        }
        return young.genotype().pair().equals(dam.genotype().pair()) ? secondDivision : 0;
    }

    private static void normalise(double[] column, List<State> states) {
        var sum = 0.0;
        for (var y = 0; y < column.length; y++) {
            column[y] *= states.get(y).viability();
            sum += column[y];
        }
        for (var y = 0; sum > 0 && y < column.length; y++) {
            column[y] /= sum;
        }
    }
}
