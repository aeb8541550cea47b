package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// Chances of a core that is too wide, with some nodes cut out of their ties and made up for.
///
/// Each factor of a cut node has a copy of it for itself. The copy is weighed as all the rest
/// of the network would weigh it, the node as its copies do, until node and copies agree; all
/// that is not cut is exact. A. Choi and A. Darwiche (2006); `docs/mathematics.md`, "Chances
/// on a network".
final class CutMessages {

    private static final int ROUNDS = 12;
    private static final int UNDAMPED = 6;
    private static final double STILL = 1e-4;

    private final Core core;
    private final double[][] weights;
    private final CutCore cut;

    /// The factors that lost a node, and how each talks with its cut nodes.
    private final List<CutFactor> factors = new ArrayList<>();

    /// For each cut node its places in factors.
    private final List<List<CutFactor.Copy>> copies = new ArrayList<>();

    /// The chances of each node, and of the factors that are asked for.
    final double[][] chances;

    double[][] asked = new double[0][];
    double logTotal;

    /// The largest difference between a node and a copy of it in the last round.
    double change = 1;

    /// @param guesses where the messages begin
    CutMessages(Reduced reduced, CutCore cut, LoopyBeliefs guesses) {
        core = reduced.core;
        weights = reduced.weights;
        chances = new double[weights.length][];
        this.cut = cut;
        for (var node = 0; node < weights.length; node++) {
            copies.add(cut.isCut[node] ? new ArrayList<>() : List.of());
        }
        for (var f = 0; f < core.factors.size(); f++) {
            var factor = new CutFactor(core.factors.get(f), cut, f, guesses);
            if (!factor.copies.isEmpty()) {
                factors.add(factor);
                factor.copies.forEach(copy -> copies.get(copy.node).add(copy));
            }
        }
    }

    /// Whether nothing is cut.
    boolean isWhole() {
        return factors.isEmpty();
    }

    /// Sends messages until node and copies agree.
    ///
    /// @return false if it was asked to stop
    boolean settle(Stop stop) {
        var left = new double[cut.rest.sizes.length][];
        for (var node = 0; node < weights.length; node++) {
            if (!cut.isCut[node]) {
                left[cut.numbers[node]] = weights[node];
            }
        }
        for (var round = 0; round < ROUNDS && change > STILL; round++) {
            var log = 0.0;
            for (var node = 0; node < weights.length; node++) {
                log += cut.isCut[node] ? weigh(node) : 0;
            }
            factors.forEach(CutFactor::fillIn);
            var passing = new Passing(cut.rest, cut.tree, left);
            if (!passing.send(stop)) {
                return false;
            }
            change = 0;
            for (var factor : factors) {
                log += factor.listen(passing.asked, round < UNDAMPED ? 0 : 0.5);
                for (var copy : factor.copies) {
                    change = Math.max(change, copy.distance(chances[copy.node]));
                }
            }
            logTotal = passing.logTotal() + log;
            answer(passing);
        }
        return true;
    }

    private void answer(Passing passing) {
        for (var node = 0; node < weights.length; node++) {
            if (!cut.isCut[node]) {
                chances[node] = passing.chances[cut.tree.positions[cut.numbers[node]]];
            }
        }
        asked = new double[core.factors.size()][0];
        for (var f = 0; f < asked.length; f++) {
            if (core.factors.get(f).asked && cut.factorNumbers[f] >= 0) {
                asked[f] = passing.asked[cut.factorNumbers[f]];
            }
        }
        for (var factor : factors) {
            if (core.factors.get(factor.number).asked) {
                asked[factor.number] = factor.together;
            }
        }
    }

    /// Gives a cut node the chances that its copies say, and each copy the weights that all
    /// the others say.
    ///
    /// @return the logarithm of the weight of the node
    private double weigh(int node) {
        var places = copies.get(node);
        var before = new double[places.size() + 1][];
        before[0] = weights[node];
        for (var i = 0; i < places.size(); i++) {
            before[i + 1] = times(before[i], places.get(i).said);
        }
        var after = new double[core.sizes[node]];
        Arrays.fill(after, 1);
        for (var i = places.size() - 1; i >= 0; i--) {
            var copy = places.get(i);
            copy.heard = times(before[i], after);
            after = times(after, copy.said);
        }
        chances[node] = before[places.size()].clone();
        Passing.toSumOne(chances[node]);
        return logWeight(node);
    }

    private double logWeight(int node) {
        var log = 0.0;
        var product = weights[node].clone();
        for (var copy : copies.get(node)) {
            for (var s = 0; s < product.length; s++) {
                product[s] *= copy.said[s];
            }
            var largest = Blocks.largest(product);
            log += Math.log(largest);
            Blocks.scale(product, 1 / largest);
        }
        return log + Math.log(Blocks.sum(product));
    }

    /// A product, its largest weight brought to one.
    private static double[] times(double[] a, double[] b) {
        var product = new double[a.length];
        for (var s = 0; s < product.length; s++) {
            product[s] = a[s] * b[s];
        }
        Blocks.scale(product, 1 / Blocks.largest(product));
        return product;
    }
}
