package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// Each variable's bucket: what is multiplied when it is summed out, and what the sum leaves.
final class Buckets {

    private final FactorNetwork network;
    private final int[] order;
    private final int[] position;
    private final Stop stop;
    private final List<List<Potential>> held = new ArrayList<>();
    private final List<List<Integer>> children = new ArrayList<>();
    private final Potential[] up;
    private final Potential[] down;
    private final double[][] chances;
    private double logTotal;

    Buckets(FactorNetwork network, int[] order, Stop stop) {
        this.network = network;
        this.order = order;
        this.stop = stop;
        position = new int[network.variables()];
        Arrays.fill(position, Integer.MAX_VALUE);
        for (var i = 0; i < order.length; i++) {
            position[order[i]] = i;
            held.add(new ArrayList<>());
            children.add(new ArrayList<>());
        }
        held.add(new ArrayList<>());
        children.add(new ArrayList<>());
        up = new Potential[order.length + 1];
        down = new Potential[order.length + 1];
        chances = new double[network.variables()][];
        JunctionTree.potentials(network).forEach(p -> held.get(bucketOf(p)).add(p));
    }

    Solution solution(Limits limits) {
        for (var i = 0; i < order.length; i++) {
            if (stop.asked()) {
                return new Solution.Stopped();
            }
            sendUp(i);
        }
        if (logTotal == Double.NEGATIVE_INFINITY) {
            return new Solution.Impossible(new Solution.Where.Together());
        }
        for (var i = order.length - 1; i >= 0; i--) {
            if (stop.asked()) {
                return new Solution.Stopped();
            }
            sendDown(i);
        }
        return new TreeSolution(network, limits, logTotal, chances);
    }

    /// What is left when all variables of the order are summed out, over those that are not in it.
    Potential remainder() {
        for (var i = 0; i < order.length; i++) {
            sendUp(i);
        }
        var product = Potential.one();
        for (var p : held.get(order.length)) {
            product = product.times(p);
        }
        return product;
    }

    private int bucketOf(Potential potential) {
        var first = order.length;
        for (var v : potential.variables) {
            first = Math.min(first, position[v]);
        }
        return first;
    }

    private void sendUp(int i) {
        var product = product(i);
        var rest = Arrays.stream(product.variables).filter(v -> v != order[i]).toArray();
        up[i] = product.onto(rest);
        var parent = bucketOf(up[i]);
        if (rest.length == 0) {
            logTotal += up[i].logScale;
            down[i] = Potential.one();
        } else {
            held.get(parent).add(up[i]);
            children.get(parent).add(i);
        }
    }

    private Potential product(int i) {
        var own =
                new Potential(
                        new int[] {order[i]}, new int[] {network.states(order[i])}, ones(i), 0);
        for (var p : held.get(i)) {
            own = own.times(p);
        }
        return own;
    }

    private double[] ones(int i) {
        var ones = new double[network.states(order[i])];
        Arrays.fill(ones, 1);
        return ones;
    }

    private void sendDown(int i) {
        var belief = product(i).times(down[i]);
        for (var child : children.get(i)) {
            down[child] = belief.onto(up[child].variables).without(up[child]);
        }
        var own = belief.onto(order[i]).cells;
        var sum = Arrays.stream(own).sum();
        chances[order[i]] = Arrays.stream(own).map(x -> x / sum).toArray();
    }
}
