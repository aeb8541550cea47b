package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/// Loci that depend on each other, and on no others: every kind of embryo that may live.
final class Block {

    final List<ActiveLocus> loci;

    /// Chance of each pair of genotypes (and phases) that the parents may have.
    final List<Fraction> parents;

    /// Before viability; for what the pairing can give at all.
    final List<Embryo> conceived;

    /// Those that may live; `given` counts the chance to live.
    final List<Embryo> living;

    /// The share of embryos that live, as far as these loci decide.
    final Fraction alive;

    /// Common denominator of the chances of all kinds.
    final BigInteger scale;

    Block(Embryos embryos, List<Lethality> lethalities) {
        loci = embryos.loci();
        parents = embryos.parents();
        conceived = embryos.kinds();
        living = new ArrayList<>(conceived.size());
        var share = Fraction.NONE;
        var denominators = BigInteger.ONE;
        for (var kind : conceived) {
            var viability = viabilityOf(kind, lethalities);
            if (viability.isNone()) {
                continue;
            }
            var lives =
                    viability.isWhole()
                            ? kind
                            : new Embryo(
                                    kind.parents(),
                                    kind.fromDam(),
                                    kind.fromSire(),
                                    kind.sex(),
                                    kind.given().times(viability));
            living.add(lives);
            var chance = chanceOf(lives);
            share = share.plus(chance);
            denominators = leastCommonMultiple(denominators, chance.denominator());
        }
        alive = share;
        scale = denominators;
    }

    /// Among all embryos, whatever the parents are.
    Fraction chanceOf(Embryo kind) {
        return parents.get(kind.parents()).times(kind.given());
    }

    private Fraction viabilityOf(Embryo kind, List<Lethality> lethalities) {
        var viability = Fraction.WHOLE;
        for (var i = 0; i < loci.size(); i++) {
            viability =
                    viability.times(
                            loci.get(i).viabilityOf(kind.fromDam().get(i), kind.fromSire().get(i)));
        }
        for (var lethality : lethalities) {
            if (lethality.holdsFor(kind, loci)) {
                viability = viability.times(lethality.viability());
            }
        }
        return viability;
    }

    boolean tellsSex() {
        return conceived.getFirst().sex().isPresent();
    }

    static BigInteger leastCommonMultiple(BigInteger a, BigInteger b) {
        if (a.equals(b) || b.equals(BigInteger.ONE)) {
            return a;
        }
        return a.divide(a.gcd(b)).multiply(b);
    }
}
