package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/// Chances of whole clutches, whose eggs share the unknown genotypes of their parents.
///
/// Given the parents the eggs are independent, so each chance is a mean, over what the parents may
/// be, of products of powers of shares of the embryos.
/// Source of the formulas: `docs/mathematics.md`, section "Cross".
record ClutchChances(List<Block> blocks, List<Scene> scenes) {

    Fraction atLeastOne(Asked asked, int eggs) {
        var whole = alive();
        var allLive = ClutchMean.of(blocks, List.of(Power.of(whole, eggs)));
        if (allLive.isNone()) {
            return Fraction.NONE;
        }
        var sum = new ArrayList<Term>();
        sum.add(new Term(Fraction.WHOLE, whole));
        for (var share : sharesOf(asked)) {
            sum.add(new Term(Fraction.NONE.minus(Fraction.WHOLE), share));
        }
        var none = ClutchMean.of(blocks, List.of(new Power(sum, eggs)));
        return none.dividedBy(allLive).complement();
    }

    /// @param groups exclude each other; as many numbers of hatchlings, each above zero
    Fraction asFound(List<Asked> groups, List<Integer> hatchlings) {
        var eggs = hatchlings.stream().mapToInt(Integer::intValue).sum();
        var allLive = ClutchMean.of(blocks, List.of(Power.of(alive(), eggs)));
        if (allLive.isNone()) {
            return Fraction.NONE;
        }
        var powers = new ArrayList<Power>();
        for (var i = 0; i < groups.size(); i++) {
            var sum = new ArrayList<Term>();
            for (var share : sharesOf(groups.get(i))) {
                sum.add(new Term(Fraction.WHOLE, share));
            }
            if (sum.isEmpty()) {
                return Fraction.NONE;
            }
            powers.add(new Power(sum, hatchlings.get(i)));
        }
        return Fraction.of(Counting.multinomial(hatchlings), BigInteger.ONE)
                .times(ClutchMean.of(blocks, powers))
                .dividedBy(allLive);
    }

    /// A share of the embryos that is a product over the blocks.
    ///
    /// @param values by block, then by number of parents: the share among the embryos of those
    record Share(List<List<Fraction>> values) {}

    record Term(Fraction factor, Share share) {}

    /// A sum of shares, to a power.
    record Power(List<Term> sum, int exponent) {

        static Power of(Share share, int exponent) {
            return new Power(List.of(new Term(Fraction.WHOLE, share)), exponent);
        }
    }

    private Share alive() {
        return new Share(blocks.stream().map(block -> byParents(block, block.living)).toList());
    }

    /// One share a case of masking in which it can happen.
    private List<Share> sharesOf(Asked asked) {
        var shares = new ArrayList<Share>();
        for (var scene : scenes) {
            var values = new ArrayList<List<Fraction>>();
            for (var b = 0; b < blocks.size(); b++) {
                var kinds = new ArrayList<Embryo>();
                for (var look : scene.looks().get(b).only(asked).all()) {
                    kinds.addAll(look.kinds());
                }
                values.add(byParents(blocks.get(b), kinds));
            }
            if (values.stream().noneMatch(block -> block.stream().allMatch(Fraction::isNone))) {
                shares.add(new Share(values));
            }
        }
        return shares;
    }

    private static List<Fraction> byParents(Block block, List<Embryo> kinds) {
        var shares = new ArrayList<>(Collections.nCopies(block.parents.size(), Fraction.NONE));
        for (var kind : kinds) {
            shares.set(kind.parents(), shares.get(kind.parents()).plus(kind.given()));
        }
        return shares;
    }
}
