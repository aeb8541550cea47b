package clutchwright.engine.pedigree;

/// Walks from two nodes up to their ancestors, youngest first, and adds up what they share.
///
/// How much of a node's genes is from an ancestor k is t_k: one for itself, and half of that (or
/// all, or the candidate's chance of it) for each parent. The relationship of two nodes is the sum
/// of t_k u_k b_k over the ancestors of both, b_k being the part of k's genes that no ancestor of k
/// accounts for. The walk ends where one of the two has no more ancestors to show.
/// Source: `docs/mathematics.md`, section "Kinship".
final class AncestorWalk {

    private final Descent descent;
    private final double[] own;
    private final YoungestFirst waiting;

    /// What has arrived at each ancestor from the one node and from the other, side by side.
    private final double[] arrived;

    private int waitingForOne;
    private int waitingForOther;

    /// @param own b of every node; may be filled while walks go on, older nodes first
    AncestorWalk(Descent descent, double[] own) {
        this.descent = descent;
        this.own = own;
        this.waiting = new YoungestFirst(descent.ancestors());
        this.arrived = new double[2 * descent.ancestors()];
    }

    /// Twice the kinship of two different nodes.
    double relationship(int one, int other) {
        start(one, 1, 0);
        start(other, 0, 1);
        return sum();
    }

    /// The part of a node's relationship to itself that its ancestors account for.
    double fromAncestorsOf(int node) {
        climb(node, 1, 1);
        return sum();
    }

    /// A node without young is no ancestor: its parents are the first.
    private void start(int node, double one, double other) {
        if (node < descent.ancestors()) {
            arrive(node, one, other);
        } else {
            climb(node, one, other);
        }
    }

    private double sum() {
        double sum = 0;
        while (waitingForOne > 0 && waitingForOther > 0) {
            int node = waiting.take();
            double one = arrived[2 * node];
            double other = arrived[2 * node + 1];
            forget(node, one, other);
            sum += one * other * own[node];
            climb(node, one, other);
        }
        while (!waiting.isEmpty()) {
            int node = waiting.take();
            forget(node, arrived[2 * node], arrived[2 * node + 1]);
        }
        return sum;
    }

    private void forget(int node, double one, double other) {
        arrived[2 * node] = 0;
        arrived[2 * node + 1] = 0;
        waitingForOne -= one > 0 ? 1 : 0;
        waitingForOther -= other > 0 ? 1 : 0;
    }

    private void climb(int node, double one, double other) {
        int first = descent.first(node);
        int second = descent.second(node);
        if (first >= 0) {
            arrive(first, one / 2, other / 2);
        } else if (first == Descent.MIXTURE) {
            climbToCandidates(second, one, other);
            return;
        }
        if (second >= 0) {
            arrive(second, one / 2, other / 2);
        }
    }

    private void climbToCandidates(int mixture, double one, double other) {
        var candidates = descent.candidates(mixture);
        var chances = descent.chances(mixture);
        for (int i = 0; i < candidates.length; i++) {
            arrive(candidates[i], one * chances[i], other * chances[i]);
        }
    }

    private void arrive(int node, double one, double other) {
        double oneBefore = arrived[2 * node];
        double otherBefore = arrived[2 * node + 1];
        if (oneBefore == 0 && otherBefore == 0) {
            waiting.add(node);
        }
        waitingForOne += oneBefore == 0 && one > 0 ? 1 : 0;
        waitingForOther += otherBefore == 0 && other > 0 ? 1 : 0;
        arrived[2 * node] = oneBefore + one;
        arrived[2 * node + 1] = otherBefore + other;
    }
}
