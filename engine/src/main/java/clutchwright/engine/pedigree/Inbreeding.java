package clutchwright.engine.pedigree;

import clutchwright.engine.pedigree.Descent.Kind;

/// How inbred each animal is.
///
/// The method of Meuwissen and Luo (1992), walked from both parents at once and once a couple: the
/// ancestors are met youngest first, and what both have from each is added up. Whole populations
/// that are numbered already are gone through sire by sire instead. Source:
/// `docs/mathematics.md`, section "Kinship".
public final class Inbreeding {

    private final Descent descent;
    private final double[] inbreeding;

    /// Of each node that has young: what its relationship to itself is more than its ancestors
    /// account for.
    private final double[] own;

    private Inbreeding(Descent descent) {
        this.descent = descent;
        this.inbreeding = new double[descent.size()];
        this.own = new double[descent.ancestors()];
    }

    /// Every animal's inbreeding coefficient, in the order of the animals. A dam may be the sire
    /// too, as in a plant that fertilises itself.
    ///
    /// @param dams  of each animal, its dam's place in the order, before its own; -1 where unknown
    /// @param sires the same of its sire
    /// @throws IllegalArgumentException if the two differ in length, or a parent does not stand
    ///     before its young
    public static double[] ofNumbered(int[] dams, int[] sires) {
        if (dams.length != sires.length) {
            throw new IllegalArgumentException(dams.length + " dams, " + sires.length + " sires");
        }
        for (int i = 0; i < dams.length; i++) {
            if (dams[i] < -1 || dams[i] >= i || sires[i] < -1 || sires[i] >= i) {
                throw new IllegalArgumentException(
                        "parents %d and %d of number %d".formatted(dams[i], sires[i], i));
            }
        }
        return new SiresInTurn(dams, sires).inbreeding();
    }

    /// @param secondDivision chance that a locus segregates at the second division of a meiosis
    static Inbreeding of(Descent descent, double secondDivision) {
        var found = new Inbreeding(descent);
        found.settle(secondDivision);
        return found;
    }

    /// F of a node: the chance that its two gene copies are one ancestor's same copy.
    double of(int node) {
        return inbreeding[node];
    }

    /// What a node's relationship to itself is more than its ancestors account for.
    double own(int node) {
        return node < own.length ? own[node] : ofItsOwn(node);
    }

    AncestorWalk walk() {
        return new AncestorWalk(descent, own);
    }

    private void settle(double secondDivision) {
        var walk = walk();
        var couples = new Couples(walk);
        for (int node = 0; node < descent.size(); node++) {
            inbreeding[node] = inbreedingOf(node, secondDivision, couples);
            if (node < own.length) {
                own[node] =
                        descent.kind(node) == Kind.ONE_OF_SEVERAL
                                // What rounding leaves of nothing may lie below it.
                                ? Math.max(0, selfOf(node) - walk.fromAncestorsOf(node))
                                : ofItsOwn(node);
            }
        }
    }

    private double inbreedingOf(int node, double secondDivision, Couples couples) {
        int first = descent.first(node);
        int second = descent.second(node);
        return switch (descent.kind(node)) {
            case TWO_GAMETES ->
                    first >= 0 && second >= 0 ? couples.relationship(first, second) / 2 : 0;
            case ONE_MEIOSIS -> 1 - secondDivision + secondDivision * inbreeding[first];
            case SINGLE_COPY -> 1;
            case ONE_OF_SEVERAL -> mean(second);
        };
    }

    private double ofItsOwn(int node) {
        int first = descent.first(node);
        return switch (descent.kind(node)) {
            case TWO_GAMETES -> 1 - (selfOf(first) + selfOf(descent.second(node))) / 4;
            case ONE_MEIOSIS, SINGLE_COPY, ONE_OF_SEVERAL -> selfOf(node) - selfOf(first);
        };
    }

    /// A relationship to itself; nothing for a parent that is not on record.
    private double selfOf(int node) {
        return node == Descent.NONE ? 0 : 1 + inbreeding[node];
    }

    private double mean(int mixture) {
        var candidates = descent.candidates(mixture);
        var chances = descent.chances(mixture);
        double mean = 0;
        for (int i = 0; i < candidates.length; i++) {
            mean += chances[i] * inbreeding[candidates[i]];
        }
        return mean;
    }
}
