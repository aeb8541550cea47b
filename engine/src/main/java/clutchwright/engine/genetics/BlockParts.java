package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// A block in whole numbers, so that powers of its shares need no common divisors.
///
/// @param scale in how many parts the embryos of any of its parents are divided
/// @param weights of each number of parents, in whole parts
/// @param alive those that live, of each number of parents
record BlockParts(Block block, BigInteger scale, List<BigInteger> weights, List<BigInteger> alive) {

    static BlockParts of(Block block) {
        var scale = commonDenominator(block.living.stream().map(Embryo::given).toList());
        var parents = commonDenominator(block.parents);
        return new BlockParts(
                block,
                scale,
                block.parents.stream().map(weight -> weight.partsOf(parents)).toList(),
                byParents(block, block.living, scale));
    }

    private static BigInteger commonDenominator(List<Fraction> fractions) {
        var common = BigInteger.ONE;
        for (var fraction : fractions) {
            common = Block.leastCommonMultiple(common, fraction.denominator());
        }
        return common;
    }

    private static List<BigInteger> byParents(Block block, List<Embryo> kinds, BigInteger scale) {
        var parts = new BigInteger[block.parents.size()];
        Arrays.fill(parts, BigInteger.ZERO);
        for (var kind : kinds) {
            parts[kind.parents()] = parts[kind.parents()].add(kind.given().partsOf(scale));
        }
        return List.of(parts);
    }

    BlockShare all() {
        return new BlockShare(weights, alive, alive);
    }

    BlockShare of(List<Look> looks) {
        var kinds = new ArrayList<Embryo>();
        looks.forEach(look -> kinds.addAll(look.kinds()));
        return new BlockShare(weights, alive, byParents(block, kinds, scale));
    }
}
