package clutchwright.engine.genetics;

import clutchwright.engine.genetics.ClutchChances.Power;
import clutchwright.engine.genetics.ClutchChances.Share;
import clutchwright.engine.probability.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;

/// The mean, over what the parents may be, of a product of powers of sums of shares.
///
/// Either each combination of parents' genotypes in turn, or the powers multiplied out: the mean of
/// a product of shares is the product of each block's mean. Both are exact; the one with fewer
/// steps is taken.
final class ClutchMean {

    /// Parents one by one up to so many combinations, whatever the other way would cost.
    private static final BigInteger FEW = BigInteger.valueOf(4096);

    private final List<List<Row>> rows;
    private final List<Power> powers;
    private final List<Share> shares;

    /// What the parents may be in one block.
    ///
    /// @param values of each share
    private record Row(Fraction weight, List<Fraction> values) {}

    private ClutchMean(List<Block> blocks, List<Power> powers) {
        this.powers = powers;
        shares =
                powers.stream()
                        .flatMap(power -> power.sum().stream())
                        .map(ClutchChances.Term::share)
                        .toList();
        rows = new ArrayList<>(blocks.size());
        for (var b = 0; b < blocks.size(); b++) {
            rows.add(rowsOf(blocks.get(b), b));
        }
    }

    static Fraction of(List<Block> blocks, List<Power> powers) {
        var mean = new ClutchMean(blocks, powers);
        var combinations = mean.combinations();
        return combinations.compareTo(FEW.max(mean.products())) <= 0
                ? mean.oneByOne(
                        0, Fraction.WHOLE, Collections.nCopies(mean.shares.size(), Fraction.WHOLE))
                : mean.multipliedOut(0, new ArrayList<>(), BigInteger.ONE);
    }

    private List<Row> rowsOf(Block block, int b) {
        var weights = new LinkedHashMap<List<Fraction>, Fraction>();
        for (var u = 0; u < block.parents.size(); u++) {
            var values = new ArrayList<Fraction>(shares.size());
            for (var share : shares) {
                values.add(share.values().get(b).get(u));
            }
            weights.merge(values, block.parents.get(u), Fraction::plus);
        }
        var found = new ArrayList<Row>(weights.size());
        weights.forEach((values, weight) -> found.add(new Row(weight, values)));
        return found;
    }

    private BigInteger combinations() {
        return rows.stream()
                .map(block -> BigInteger.valueOf(block.size()))
                .reduce(BigInteger.ONE, BigInteger::multiply);
    }

    private BigInteger products() {
        return powers.stream()
                .map(
                        power ->
                                Counting.choose(
                                        power.exponent() + power.sum().size() - 1,
                                        power.sum().size() - 1))
                .reduce(BigInteger.ONE, BigInteger::multiply);
    }

    private Fraction oneByOne(int b, Fraction weight, List<Fraction> values) {
        if (b == rows.size()) {
            return weight.times(productOfPowers(values));
        }
        var sum = Fraction.NONE;
        for (var row : rows.get(b)) {
            var product = new ArrayList<Fraction>(values.size());
            for (var s = 0; s < values.size(); s++) {
                product.add(values.get(s).times(row.values().get(s)));
            }
            sum = sum.plus(oneByOne(b + 1, weight.times(row.weight()), product));
        }
        return sum;
    }

    private Fraction productOfPowers(List<Fraction> values) {
        var product = Fraction.WHOLE;
        var s = 0;
        for (var power : powers) {
            var sum = Fraction.NONE;
            for (var term : power.sum()) {
                sum = sum.plus(term.factor().times(values.get(s)));
                s++;
            }
            product = product.times(sum.power(power.exponent()));
        }
        return product;
    }

    /// @param exponents of the shares of the powers before this one
    private Fraction multipliedOut(int p, List<Integer> exponents, BigInteger ways) {
        if (p == powers.size()) {
            return Fraction.of(ways, BigInteger.ONE).times(meanOfProduct(exponents));
        }
        return distribute(p, 0, powers.get(p).exponent(), exponents, ways);
    }

    /// Every way to give the power's factors to its terms.
    private Fraction distribute(
            int p, int term, int left, List<Integer> exponents, BigInteger ways) {
        var terms = powers.get(p).sum().size();
        if (term == terms) {
            return left == 0 ? multipliedOut(p + 1, exponents, ways) : Fraction.NONE;
        }
        var sum = Fraction.NONE;
        for (var taken = term == terms - 1 ? left : 0; taken <= left; taken++) {
            var more = new ArrayList<>(exponents);
            more.add(taken);
            sum =
                    sum.plus(
                            distribute(
                                    p,
                                    term + 1,
                                    left - taken,
                                    more,
                                    ways.multiply(Counting.choose(left, taken))));
        }
        return sum;
    }

    private Fraction meanOfProduct(List<Integer> exponents) {
        var mean = Fraction.WHOLE;
        for (var block : rows) {
            var sum = Fraction.NONE;
            for (var row : block) {
                var product = row.weight();
                for (var s = 0; s < exponents.size(); s++) {
                    if (exponents.get(s) > 0) {
                        product = product.times(row.values().get(s).power(exponents.get(s)));
                    }
                }
                sum = sum.plus(product);
            }
            mean = mean.times(sum);
        }
        var s = 0;
        for (var power : powers) {
            for (var term : power.sum()) {
                mean = mean.times(term.factor().power(exponents.get(s)));
                s++;
            }
        }
        return mean;
    }
}
