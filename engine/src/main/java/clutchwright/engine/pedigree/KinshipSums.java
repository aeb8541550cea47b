package clutchwright.engine.pedigree;

/// Every node's kinship with a weighted group of nodes at once, in two passes over the pedigree.
///
/// The indirect method of Colleau (2002): the group's weights are carried up to the ancestors, each
/// keeps its own part of them, and the sums come down again.
final class KinshipSums {

    private final Descent descent;
    private final Inbreeding inbreeding;

    KinshipSums(Descent descent, Inbreeding inbreeding) {
        this.descent = descent;
        this.inbreeding = inbreeding;
    }

    /// @param weights of each node; left as they are
    double[] of(double[] weights) {
        var sums = weights.clone();
        for (int node = descent.size() - 1; node >= 0; node--) {
            up(node, sums);
        }
        for (int node = 0; node < descent.size(); node++) {
            sums[node] = sums[node] * inbreeding.own(node) / 2 + fromParents(node, sums);
        }
        return sums;
    }

    private void up(int node, double[] sums) {
        int first = descent.first(node);
        int second = descent.second(node);
        if (first == Descent.MIXTURE) {
            var candidates = descent.candidates(second);
            var chances = descent.chances(second);
            for (int i = 0; i < candidates.length; i++) {
                sums[candidates[i]] += sums[node] * chances[i];
            }
            return;
        }
        if (first >= 0) {
            sums[first] += sums[node] / 2;
        }
        if (second >= 0) {
            sums[second] += sums[node] / 2;
        }
    }

    private double fromParents(int node, double[] sums) {
        int first = descent.first(node);
        int second = descent.second(node);
        double sum = 0;
        if (first == Descent.MIXTURE) {
            var candidates = descent.candidates(second);
            var chances = descent.chances(second);
            for (int i = 0; i < candidates.length; i++) {
                sum += sums[candidates[i]] * chances[i];
            }
            return sum;
        }
        if (first >= 0) {
            sum += sums[first] / 2;
        }
        if (second >= 0) {
            sum += sums[second] / 2;
        }
        return sum;
    }
}
