package clutchwright.engine.pedigree;

import clutchwright.engine.pedigree.Descent.Kind;

/// How inbred each animal is, for whole populations in numbers.
///
/// The method of Meuwissen and Luo (1992), walked from both parents at once and once a couple: for
/// each couple the ancestors are met youngest first, and what both have from each is added up.
/// Source: `docs/mathematics.md`, section "Kinship".
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

    /// Every animal's inbreeding coefficient, in the order of the animals.
    ///
    /// @param dams  of each animal, its dam's place in the order, before its own; -1 where unknown
    /// @param sires the same of its sire
    /// @throws IllegalArgumentException if the two differ in length, or a parent does not stand
    ///     before its young
    public static double[] ofNumbered(int[] dams, int[] sires) {
        boolean[] hasYoung = havingYoung(dams, sires);
        // The few that have young are worked out among themselves; the others only look up.
        var builder = new Descent.Builder(dams.length / 8);
        var nodes = new int[dams.length];
        for (int i = 0; i < dams.length; i++) {
            nodes[i] =
                    hasYoung[i]
                            ? builder.add(
                                    Kind.TWO_GAMETES, node(dams[i], nodes), node(sires[i], nodes))
                            : Descent.NONE;
        }
        var found = new Inbreeding(builder.build());
        var couples = found.settle(0);
        var inbreeding = new double[dams.length];
        for (int i = 0; i < dams.length; i++) {
            if (hasYoung[i]) {
                inbreeding[i] = found.of(builder.node(nodes[i]));
            } else if (dams[i] >= 0 && sires[i] >= 0) {
                inbreeding[i] =
                        isSibling(i, dams, sires)
                                ? inbreeding[i - 1]
                                : found.ofYoung(
                                        builder.node(nodes[dams[i]]),
                                        builder.node(nodes[sires[i]]),
                                        couples);
            }
        }
        return inbreeding;
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

    private Couples settle(double secondDivision) {
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
        return couples;
    }

    private double inbreedingOf(int node, double secondDivision, Couples couples) {
        int first = descent.first(node);
        int second = descent.second(node);
        return switch (descent.kind(node)) {
            case TWO_GAMETES -> first >= 0 && second >= 0 ? ofYoung(first, second, couples) : 0;
            case ONE_MEIOSIS -> 1 - secondDivision + secondDivision * inbreeding[first];
            case SINGLE_COPY -> 1;
            case ONE_OF_SEVERAL -> mean(second);
        };
    }

    /// Both may be the same: a plant that fertilises itself.
    private double ofYoung(int one, int other, Couples couples) {
        return (one == other ? selfOf(one) : couples.relationship(one, other)) / 2;
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

    private static boolean[] havingYoung(int[] dams, int[] sires) {
        if (dams.length != sires.length) {
            throw new IllegalArgumentException(dams.length + " dams, " + sires.length + " sires");
        }
        var hasYoung = new boolean[dams.length];
        for (int i = 0; i < dams.length; i++) {
            if (dams[i] < -1 || dams[i] >= i || sires[i] < -1 || sires[i] >= i) {
                throw new IllegalArgumentException(
                        "parents %d and %d of number %d".formatted(dams[i], sires[i], i));
            }
            if (dams[i] >= 0) {
                hasYoung[dams[i]] = true;
            }
            if (sires[i] >= 0) {
                hasYoung[sires[i]] = true;
            }
        }
        return hasYoung;
    }

    private static int node(int parent, int[] nodes) {
        return parent < 0 ? Descent.NONE : nodes[parent];
    }

    /// Whether it has the parents of the one before it: the young of a clutch stand together.
    private static boolean isSibling(int i, int[] dams, int[] sires) {
        return i > 0 && dams[i] == dams[i - 1] && sires[i] == sires[i - 1];
    }
}
