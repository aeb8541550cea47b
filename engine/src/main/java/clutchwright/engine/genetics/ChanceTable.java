package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.math.BigInteger;
import java.util.List;

/// The chance of every group of a pairing, in one common denominator and without names.
///
/// The order is that of the parts it was built of; it says nothing.
public final class ChanceTable {

    private static final BigInteger MOST = BigInteger.valueOf(1 << 26);

    private final BigInteger parts;

    /// Numerators are here if they all fit, else in `big`.
    private final long[] weights;

    private final BigInteger[] big;

    private ChanceTable(BigInteger parts, long[] weights, BigInteger[] big) {
        this.parts = parts;
        this.weights = weights;
        this.big = big;
    }

    static ChanceTable of(List<View> views, BigInteger parts) {
        var count = views.stream().map(View::count).reduce(BigInteger.ZERO, BigInteger::add);
        if (count.compareTo(MOST) > 0) {
            throw new IllegalStateException(count + " groups, more than a table of " + MOST);
        }
        var fits = parts.bitLength() < Long.SIZE;
        var table =
                new ChanceTable(
                        parts,
                        new long[fits ? count.intValueExact() : 0],
                        new BigInteger[fits ? 0 : count.intValueExact()]);
        var start = 0;
        for (var view : views) {
            start = fits ? table.fill(start, view) : table.fillBig(start, view);
        }
        return table;
    }

    /// Behind each other, the products so far times each weight of the next part.
    private int fill(int start, View view) {
        weights[start] = 1;
        var filled = 1;
        for (var part : view.parts()) {
            var factors = Stage.of(part).weights();
            for (var look = factors.size() - 1; look >= 0; look--) {
                var factor = factors.get(look).longValueExact();
                var to = start + look * filled;
                for (var i = 0; i < filled; i++) {
                    weights[to + i] = weights[start + i] * factor;
                }
            }
            filled *= factors.size();
        }
        return start + filled;
    }

    private int fillBig(int start, View view) {
        big[start] = BigInteger.ONE;
        var filled = 1;
        for (var part : view.parts()) {
            var factors = Stage.of(part).weights();
            for (var look = factors.size() - 1; look >= 0; look--) {
                var to = start + look * filled;
                for (var i = 0; i < filled; i++) {
                    big[to + i] = big[start + i].multiply(factors.get(look));
                }
            }
            filled *= factors.size();
        }
        return start + filled;
    }

    /// How many groups there are.
    public int size() {
        return weights.length + big.length;
    }

    /// The chance of one group among the embryos that live.
    public Fraction chance(int group) {
        return Fraction.of(
                big.length == 0 ? BigInteger.valueOf(weights[group]) : big[group], parts);
    }

    /// The same, as the nearest double.
    public double value(int group) {
        return big.length == 0 && parts.bitLength() <= Double.PRECISION
                ? weights[group] / parts.doubleValue()
                : chance(group).value();
    }
}
