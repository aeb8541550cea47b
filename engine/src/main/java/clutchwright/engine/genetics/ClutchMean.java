package clutchwright.engine.genetics;

import clutchwright.engine.genetics.ClutchChances.Power;
import clutchwright.engine.genetics.ClutchChances.Term;
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

    private final List<List<Row>> rows;
    private final List<Power> powers;
    private final List<List<BlockShare>> shares;

    /// What the parents may be in one block.
    ///
    /// @param values of each share
    private record Row(BigInteger weight, List<BigInteger> values) {}

    private ClutchMean(List<BlockParts> blocks, List<Power> powers) {
        this.powers = powers;
        shares = powers.stream().flatMap(power -> power.sum().stream()).map(Term::share).toList();
        rows = new ArrayList<>(blocks.size());
        for (var b = 0; b < blocks.size(); b++) {
            rows.add(rowsOf(blocks.get(b).weights(), b));
        }
    }

    /// In whole parts, of which there are as many for any powers whose exponents have the same sum.
    static BigInteger of(List<BlockParts> blocks, List<Power> powers) {
        var mean = new ClutchMean(blocks, powers);
        return mean.combinations().compareTo(mean.stepsMultipliedOut()) <= 0
                ? mean.oneByOne(
                        0, BigInteger.ONE, Collections.nCopies(mean.shares.size(), BigInteger.ONE))
                : mean.multipliedOut(0, new ArrayList<>(), BigInteger.ONE);
    }

    private List<Row> rowsOf(List<BigInteger> weights, int b) {
        var merged = new LinkedHashMap<List<BigInteger>, BigInteger>();
        for (var u = 0; u < weights.size(); u++) {
            var values = new ArrayList<BigInteger>(shares.size());
            for (var share : shares) {
                values.add(share.get(b).byParents.get(u));
            }
            merged.merge(values, weights.get(u), BigInteger::add);
        }
        var found = new ArrayList<Row>(merged.size());
        merged.forEach((values, weight) -> found.add(new Row(weight, values)));
        return found;
    }

    private BigInteger combinations() {
        return rows.stream()
                .map(block -> BigInteger.valueOf(block.size()))
                .reduce(BigInteger.ONE, BigInteger::multiply);
    }

    /// How many products, each with a mean over the rows of every block.
    private BigInteger stepsMultipliedOut() {
        var steps = BigInteger.valueOf(rows.stream().mapToLong(List::size).sum());
        for (var power : powers) {
            var terms = power.sum().size();
            steps = steps.multiply(Counting.choose(power.exponent() + terms - 1, terms - 1));
        }
        return steps;
    }

    private BigInteger oneByOne(int b, BigInteger weight, List<BigInteger> values) {
        if (b == rows.size()) {
            return weight.multiply(productOfPowers(values));
        }
        var sum = BigInteger.ZERO;
        for (var row : rows.get(b)) {
            var product = new ArrayList<BigInteger>(values.size());
            for (var s = 0; s < values.size(); s++) {
                product.add(values.get(s).multiply(row.values().get(s)));
            }
            sum = sum.add(oneByOne(b + 1, weight.multiply(row.weight()), product));
        }
        return sum;
    }

    private BigInteger productOfPowers(List<BigInteger> values) {
        var product = BigInteger.ONE;
        var s = 0;
        for (var power : powers) {
            var sum = BigInteger.ZERO;
            for (var term : power.sum()) {
                sum = sum.add(term.factor().multiply(values.get(s)));
                s++;
            }
            product = product.multiply(sum.pow(power.exponent()));
        }
        return product;
    }

    /// @param exponents of the shares of the powers before this one
    private BigInteger multipliedOut(int p, List<Integer> exponents, BigInteger ways) {
        return p == powers.size()
                ? ways.multiply(meanOfProduct(exponents))
                : distribute(p, 0, powers.get(p).exponent(), exponents, ways);
    }

    /// Every way to give the power's factors to its terms.
    private BigInteger distribute(
            int p, int term, int left, List<Integer> exponents, BigInteger ways) {
        var terms = powers.get(p).sum().size();
        if (term == terms) {
            return left == 0 ? multipliedOut(p + 1, exponents, ways) : BigInteger.ZERO;
        }
        var sum = BigInteger.ZERO;
        for (var taken = term == terms - 1 ? left : 0; taken <= left; taken++) {
            var more = new ArrayList<>(exponents);
            more.add(taken);
            sum =
                    sum.add(
                            distribute(
                                    p,
                                    term + 1,
                                    left - taken,
                                    more,
                                    ways.multiply(Counting.choose(left, taken))));
        }
        return sum;
    }

    private BigInteger meanOfProduct(List<Integer> exponents) {
        var mean = BigInteger.ONE;
        for (var block : rows) {
            var sum = BigInteger.ZERO;
            for (var row : block) {
                var product = row.weight();
                for (var s = 0; s < exponents.size(); s++) {
                    if (exponents.get(s) > 0) {
                        product = product.multiply(row.values().get(s).pow(exponents.get(s)));
                    }
                }
                sum = sum.add(product);
            }
            mean = mean.multiply(sum);
        }
        var s = 0;
        for (var power : powers) {
            for (var term : power.sum()) {
                mean = mean.multiply(term.factor().pow(exponents.get(s)));
                s++;
            }
        }
        return mean;
    }
}
