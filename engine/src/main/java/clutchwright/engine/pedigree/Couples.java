package clutchwright.engine.pedigree;

import java.util.Arrays;

/// The relationship of the parents of every clutch, worked out once a couple: full siblings are
/// equally inbred.
final class Couples {

    private static final long FREE = -1;

    private final AncestorWalk walk;
    private long[] couples = new long[1 << 10];
    private double[] relationships = new double[couples.length];
    private int size;

    Couples(AncestorWalk walk) {
        this.walk = walk;
        Arrays.fill(couples, FREE);
    }

    /// The relationship of two nodes, walked to if it is not known yet.
    double relationship(int one, int other) {
        long couple = (long) Math.max(one, other) << 32 | Math.min(one, other);
        int slot = slot(couple);
        if (couples[slot] == couple) {
            return relationships[slot];
        }
        double found = walk.relationship(one, other);
        couples[slot] = couple;
        relationships[slot] = found;
        if (++size > couples.length / 2) {
            grow();
        }
        return found;
    }

    private int slot(long couple) {
        int slot = spread(couple);
        while (couples[slot] != FREE && couples[slot] != couple) {
            slot = (slot + 1) & (couples.length - 1);
        }
        return slot;
    }

    private int spread(long couple) {
        // The golden ratio's bits: neighbouring numbers fall far apart.
        int shift = 33 + Integer.numberOfLeadingZeros(couples.length);
        return (int) ((couple * 0x9E3779B97F4A7C15L) >>> shift);
    }

    private void grow() {
        var before = couples;
        var valuesBefore = relationships;
        couples = new long[2 * before.length];
        relationships = new double[couples.length];
        Arrays.fill(couples, FREE);
        for (int i = 0; i < before.length; i++) {
            if (before[i] != FREE) {
                int slot = slot(before[i]);
                couples[slot] = before[i];
                relationships[slot] = valuesBefore[i];
            }
        }
    }
}
