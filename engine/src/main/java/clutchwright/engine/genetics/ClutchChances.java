package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/// Chances of whole clutches, whose eggs share the unknown genotypes of their parents.
///
/// Given the parents the eggs are independent, so each chance is a mean, over what the parents may
/// be, of products of powers of shares of the embryos. All means of a chance are in the same parts,
/// so that only its own fraction is brought to lowest terms.
/// Source of the formulas: `docs/mathematics.md`, section "Cross".
final class ClutchChances {

    private final List<Scene> scenes;
    private final List<BlockParts> blocks;
    private final Map<Part, BlockShare> known = new ConcurrentHashMap<>();

    /// What is asked of one block in one case of masking, as in [Asked#shown()].
    private record Part(int scene, int block, List<Integer> asked) {}

    ClutchChances(List<Block> blocks, List<Scene> scenes) {
        this.scenes = scenes;
        this.blocks = blocks.stream().map(BlockParts::of).toList();
    }

    Fraction atLeastOne(Asked asked, int eggs) {
        var shares = sharesOf(asked);
        return switch (shares.size()) {
            case 0 -> Fraction.NONE;
            case 1 -> atLeastOneOf(shares.getFirst(), eggs);
            default -> atLeastOneOfAny(shares, eggs);
        };
    }

    /// `1 - E[(A - a)^n] / E[A^n]`, the power multiplied out: the sum over k above zero of
    /// `-(-1)^k choose(n, k) E[A^(n-k) a^k]`, each mean a product over the blocks.
    private static Fraction atLeastOneOf(List<BlockShare> share, int eggs) {
        var alive = BigInteger.ONE;
        var wanted = BigInteger.ONE;
        var powers = new ArrayList<List<BigInteger>>();
        for (var part : share) {
            if (part.isCertain()) {
                alive = alive.multiply(part.certainAlive());
                wanted = wanted.multiply(part.certainShare());
            } else {
                powers.add(part.meanPowers(eggs));
            }
        }
        if (powers.isEmpty()) {
            return Fraction.of(wanted, alive).complement().power(eggs).complement();
        }
        var sum = BigInteger.ZERO;
        var certain = BigInteger.ONE;
        // To be multiplied by choose(n, k), from k = n on.
        var ways = BigInteger.ONE;
        for (var k = eggs; k > 0; k--) {
            var mean = meanOf(powers, k).multiply(ways).multiply(certain);
            sum = sum.multiply(wanted);
            sum = k % 2 == 0 ? sum.subtract(mean) : sum.add(mean);
            ways = ways.multiply(BigInteger.valueOf(k)).divide(BigInteger.valueOf(eggs - k + 1L));
            certain = certain.multiply(alive);
        }
        return Fraction.of(sum.multiply(wanted), certain.multiply(meanOf(powers, 0)));
    }

    private static BigInteger meanOf(List<List<BigInteger>> powers, int k) {
        var mean = BigInteger.ONE;
        for (var block : powers) {
            mean = mean.multiply(block.get(k));
        }
        return mean;
    }

    private Fraction atLeastOneOfAny(List<List<BlockShare>> shares, int eggs) {
        var alive = alive();
        var sum = new ArrayList<Term>();
        sum.add(new Term(BigInteger.ONE, alive));
        for (var share : shares) {
            sum.add(new Term(BigInteger.ONE.negate(), share));
        }
        var none = ClutchMean.of(blocks, List.of(new Power(sum, eggs)));
        var allLive = ClutchMean.of(blocks, List.of(Power.of(alive, eggs)));
        return Fraction.of(allLive.subtract(none), allLive);
    }

    /// @param groups exclude each other; as many numbers of hatchlings, each above zero
    Fraction asFound(List<Asked> groups, List<Integer> hatchlings) {
        var powers = new ArrayList<Power>();
        for (var i = 0; i < groups.size(); i++) {
            var sum = new ArrayList<Term>();
            for (var share : sharesOf(groups.get(i))) {
                sum.add(new Term(BigInteger.ONE, share));
            }
            if (sum.isEmpty()) {
                return Fraction.NONE;
            }
            powers.add(new Power(sum, hatchlings.get(i)));
        }
        var eggs = hatchlings.stream().mapToInt(Integer::intValue).sum();
        return Fraction.of(
                Counting.multinomial(hatchlings).multiply(ClutchMean.of(blocks, powers)),
                ClutchMean.of(blocks, List.of(Power.of(alive(), eggs))));
    }

    /// A share of the embryos that is a product over the blocks.
    record Term(BigInteger factor, List<BlockShare> share) {}

    /// A sum of shares, to a power.
    record Power(List<Term> sum, int exponent) {

        static Power of(List<BlockShare> share, int exponent) {
            return new Power(List.of(new Term(BigInteger.ONE, share)), exponent);
        }
    }

    private List<BlockShare> alive() {
        return blocks.stream().map(BlockParts::all).toList();
    }

    /// One share a case of masking in which it can happen.
    private List<List<BlockShare>> sharesOf(Asked asked) {
        var shares = new ArrayList<List<BlockShare>>();
        for (var scene = 0; scene < scenes.size(); scene++) {
            var share = new ArrayList<BlockShare>(blocks.size());
            for (var b = 0; b < blocks.size(); b++) {
                var part = partOf(asked, scene, b);
                if (part.isNone()) {
                    break;
                }
                share.add(part);
            }
            if (share.size() == blocks.size()) {
                shares.add(share);
            }
        }
        return shares;
    }

    private BlockShare partOf(Asked asked, int scene, int b) {
        return known.computeIfAbsent(
                new Part(scene, b, asked.at(blocks.get(b).block().loci)),
                part -> {
                    var looks = scenes.get(scene).looks().get(b);
                    return blocks.get(b).of(looks.only(asked).all());
                });
    }
}
