package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// Messages up a clique tree, and down again.
final class Passing {

    private final Core core;
    private final CliqueTree tree;
    private final double[][] weights;
    private final double[][] up;
    private final double[][] down;

    /// The chances of each node's states, by position.
    final double[][] chances;

    /// The chances of the factors that are asked for, over their cells.
    final double[][] asked;

    private final Scaled total = new Scaled();

    /// @param weights of each node's states, by node
    Passing(Core core, CliqueTree tree, double[][] weights) {
        this.core = core;
        this.tree = tree;
        this.weights = new double[tree.length()][];
        for (var i = 0; i < weights.length; i++) {
            this.weights[tree.positions[i]] = weights[i];
        }
        up = new double[tree.length()][];
        down = new double[tree.length()][];
        chances = new double[tree.length()][];
        asked = new double[core.factors.size()][0];
    }

    /// Sends all messages.
    ///
    /// @return false if it was asked to stop
    boolean send(Stop stop) {
        for (var i = 0; i < tree.length(); i++) {
            if (stop.asked()) {
                return false;
            }
            sendUp(i);
        }
        if (total.log() == Double.NEGATIVE_INFINITY) {
            return true;
        }
        for (var i = tree.length() - 1; i >= 0; i--) {
            if (stop.asked()) {
                return false;
            }
            sendDown(i);
        }
        return true;
    }

    /// The logarithm of the weight of all combinations.
    double logTotal() {
        return total.log();
    }

    private void sendUp(int i) {
        var sweep = sweep(i);
        var length = 1;
        for (var j = 1; j < tree.scopes[i].length; j++) {
            length *= tree.sizes[tree.scopes[i][j]];
        }
        var message = new double[length];
        total.timesExponential(sweep.sum(message));
        var largest = Blocks.largest(message);
        total.times(largest);
        if (largest > 0) {
            Blocks.scale(message, 1 / largest);
        }
        up[i] = message;
        if (tree.parents[i] == CliqueTree.ROOT) {
            down[i] = new double[] {1};
        }
    }

    private void sendDown(int i) {
        var sweep = sweep(i);
        List<Operand> targets = new ArrayList<>();
        for (var child : tree.children[i]) {
            down[child] = new double[up[child].length];
            targets.add(sweep.operand(down[child], rest(child), sizes(rest(child))));
        }
        for (var f : tree.factors[i]) {
            var factor = core.factors.get(f);
            if (factor.asked) {
                asked[f] = new double[factor.cells.length];
                targets.add(sweep.operand(asked[f], positions(factor.nodes), factor.sizes));
            }
        }
        chances[i] = new double[tree.sizes[i]];
        sweep.spread(down[i], chances[i], targets);
        toSumOne(chances[i]);
        for (var child : tree.children[i]) {
            Blocks.divide(down[child], up[child]);
            Blocks.scale(down[child], 1 / Blocks.largest(down[child]));
        }
        for (var f : tree.factors[i]) {
            if (core.factors.get(f).asked) {
                toSumOne(asked[f]);
            }
        }
    }

    private Sweep sweep(int i) {
        var sweep = new Sweep(tree.scopes[i], sizes(tree.scopes[i]), weights[i]);
        for (var f : tree.factors[i]) {
            var factor = core.factors.get(f);
            sweep.multiply(factor.cells, positions(factor.nodes), factor.sizes);
        }
        for (var child : tree.children[i]) {
            sweep.multiply(up[child], rest(child), sizes(rest(child)));
        }
        return sweep;
    }

    private int[] rest(int child) {
        return Arrays.copyOfRange(tree.scopes[child], 1, tree.scopes[child].length);
    }

    private int[] sizes(int... scope) {
        var sizes = new int[scope.length];
        for (var i = 0; i < scope.length; i++) {
            sizes[i] = tree.sizes[scope[i]];
        }
        return sizes;
    }

    private int[] positions(int... nodes) {
        var positions = new int[nodes.length];
        for (var i = 0; i < nodes.length; i++) {
            positions[i] = tree.positions[nodes[i]];
        }
        return positions;
    }

    static void toSumOne(double[] cells) {
        Blocks.scale(cells, 1 / Blocks.sum(cells));
    }
}
