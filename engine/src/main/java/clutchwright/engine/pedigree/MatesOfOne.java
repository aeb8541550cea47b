package clutchwright.engine.pedigree;

import java.util.Arrays;

/// The relationships of one animal with many others, its own ancestors walked once.
///
/// What the one has from each of its ancestors, t_k b_k, is marked. The relationship with another
/// is then the mark on it and half of the relationships of its parents, worked out once an animal
/// and only as far back as there are marks. So Colleau's indirect method (2002) is done for a sire
/// at a time, as Sargolzaei, Iwaisaki and Colleau (2005) propose.
final class MatesOfOne {

    private final int[] dams;
    private final int[] sires;
    private final double[] own;
    private final YoungestFirst waiting;

    /// The mark of an animal, then its relationship with the one.
    private final double[] found;

    /// Even where it is marked, odd where it is worked out; less in an earlier round.
    private final int[] state;

    private int[] open = new int[64];
    private int round;
    private int oldest;

    /// @param own b of every animal; may be filled while others are asked for, older ones first
    MatesOfOne(int[] dams, int[] sires, double[] own) {
        this.dams = dams;
        this.sires = sires;
        this.own = own;
        this.waiting = new YoungestFirst(dams.length);
        this.found = new double[dams.length];
        this.state = new int[dams.length];
    }

    void choose(int one) {
        round += 2;
        oldest = one;
        arrive(one, 1);
        while (!waiting.isEmpty()) {
            int next = waiting.take();
            double share = found[next];
            found[next] = share * own[next];
            oldest = next;
            arrive(dams[next], share / 2);
            arrive(sires[next], share / 2);
        }
    }

    private void arrive(int ancestor, double share) {
        if (ancestor < 0) {
            return;
        }
        if (state[ancestor] == round) {
            found[ancestor] += share;
            return;
        }
        state[ancestor] = round;
        found[ancestor] = share;
        waiting.add(ancestor);
    }

    /// The relationship of the chosen one with an animal; of itself too.
    ///
    /// Walks with a stack of its own: a line of descent may be longer than the machine's.
    double relationship(int other) {
        int depth = 0;
        open[depth++] = other;
        while (depth > 0) {
            int next = open[depth - 1];
            if (isKnown(next)) {
                depth--;
                continue;
            }
            int dam = dams[next];
            int sire = sires[next];
            if (isKnown(dam) && isKnown(sire)) {
                double mark = state[next] == round ? found[next] : 0;
                found[next] = mark + (known(dam) + known(sire)) / 2;
                state[next] = round + 1;
                depth--;
                continue;
            }
            if (depth + 2 > open.length) {
                open = Arrays.copyOf(open, 2 * open.length);
            }
            if (!isKnown(dam)) {
                open[depth++] = dam;
            }
            if (!isKnown(sire)) {
                open[depth++] = sire;
            }
        }
        return known(other);
    }

    /// What is older than all ancestors of the one has nothing of them.
    private boolean isKnown(int animal) {
        return animal < oldest || state[animal] > round;
    }

    private double known(int animal) {
        return animal < oldest ? 0 : found[animal];
    }
}
