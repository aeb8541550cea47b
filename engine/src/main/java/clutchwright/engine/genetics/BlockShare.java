package clutchwright.engine.genetics;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/// A share of a block's embryos, beside all that live, for each of the parents there may be.
///
/// Mean powers for the last number of eggs are kept: the groups of a list have most of their looks
/// in common.
final class BlockShare {

    /// By number of parents, in the parts of [BlockParts].
    final List<BigInteger> byParents;

    private final List<Row> rows;
    private volatile @Nullable MeanPowers latest;

    /// Parents alike in what lives and in what is of the share, without common divisors.
    private record Row(BigInteger weight, BigInteger alive, BigInteger share) {}

    /// @param byExponent of the share: the mean of `alive^(eggs - k) share^k` at k
    private record MeanPowers(int eggs, List<BigInteger> byExponent) {}

    BlockShare(List<BigInteger> weights, List<BigInteger> alive, List<BigInteger> byParents) {
        this.byParents = byParents;
        rows = new ArrayList<>();
        var divisor = BigInteger.ZERO;
        for (var u = 0; u < alive.size(); u++) {
            divisor = divisor.gcd(alive.get(u)).gcd(byParents.get(u));
        }
        if (divisor.signum() == 0) {
            divisor = BigInteger.ONE;
        }
        var merged = new HashMap<List<BigInteger>, BigInteger>();
        for (var u = 0; u < alive.size(); u++) {
            merged.merge(
                    List.of(alive.get(u).divide(divisor), byParents.get(u).divide(divisor)),
                    weights.get(u),
                    BigInteger::add);
        }
        var common = merged.values().stream().reduce(BigInteger.ZERO, BigInteger::gcd);
        for (Map.Entry<List<BigInteger>, BigInteger> entry : merged.entrySet()) {
            rows.add(
                    new Row(
                            entry.getValue().divide(common),
                            entry.getKey().getFirst(),
                            entry.getKey().getLast()));
        }
    }

    boolean isNone() {
        return byParents.stream().allMatch(part -> part.signum() == 0);
    }

    /// Whether it is the same whatever the parents are.
    boolean isCertain() {
        return rows.size() == 1;
    }

    /// If it is certain: the living, in parts that are not those of [BlockParts].
    BigInteger certainAlive() {
        return rows.getFirst().alive();
    }

    /// If it is certain: of as many parts as [#certainAlive()] has.
    BigInteger certainShare() {
        return rows.getFirst().share();
    }

    /// The mean of `alive^(eggs - k) share^k` for k from zero to the number of eggs, in some parts
    /// that are the same for every k.
    List<BigInteger> meanPowers(int eggs) {
        var known = latest;
        if (known == null || known.eggs() != eggs) {
            known = new MeanPowers(eggs, computeMeanPowers(eggs));
            latest = known;
        }
        return known.byExponent();
    }

    private List<BigInteger> computeMeanPowers(int eggs) {
        var sums = new BigInteger[eggs + 1];
        for (var k = 0; k <= eggs; k++) {
            sums[k] = BigInteger.ZERO;
        }
        for (var row : rows) {
            // Of k = 0 alone where nothing is of the share.
            var last = row.share().signum() == 0 ? 0 : eggs;
            var alive = new BigInteger[eggs + 1];
            alive[0] = BigInteger.ONE;
            for (var k = 1; k <= eggs; k++) {
                alive[k] = alive[k - 1].multiply(row.alive());
            }
            var share = row.weight();
            for (var k = 0; k <= last; k++) {
                sums[k] = sums[k].add(share.multiply(alive[eggs - k]));
                share = share.multiply(row.share());
            }
        }
        return List.of(sums);
    }
}
