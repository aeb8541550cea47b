package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/// In which order variables are summed out: each time the one whose clique is smallest.
final class EliminationOrder {

    final int[] order;
    final double log2Cells;
    final double operations;

    private EliminationOrder(int[] order, double log2Cells, double operations) {
        this.order = order;
        this.log2Cells = log2Cells;
        this.operations = operations;
    }

    /// @param last variables that are not summed out
    static EliminationOrder of(FactorNetwork network, BitSet last) {
        var n = network.variables();
        List<BitSet> near = new ArrayList<>();
        for (var v = 0; v < n; v++) {
            near.add(new BitSet());
        }
        for (var tie = 0; tie < network.ties(); tie++) {
            join(near, network.scope(tie));
        }
        join(near, last.stream().toArray());
        var sizes = new double[n];
        for (var v = 0; v < n; v++) {
            sizes[v] = sizeOf(network, near.get(v), v);
        }
        var left = new BitSet(n);
        left.set(0, n);
        left.andNot(last);
        var order = new int[left.cardinality()];
        var widest = 0.0;
        var operations = 0.0;
        for (var i = 0; i < order.length; i++) {
            var best = left.nextSetBit(0);
            for (var v = best; v >= 0; v = left.nextSetBit(v + 1)) {
                best = sizes[v] < sizes[best] ? v : best;
            }
            order[i] = best;
            left.clear(best);
            widest = Math.max(widest, sizes[best]);
            operations += Math.pow(2, sizes[best]);
            var neighbours = near.get(best).stream().toArray();
            join(near, neighbours);
            for (var v : neighbours) {
                near.get(v).clear(best);
                sizes[v] = sizeOf(network, near.get(v), v);
            }
        }
        return new EliminationOrder(order, widest, operations);
    }

    private static void join(List<BitSet> near, int... variables) {
        for (var a : variables) {
            Arrays.stream(variables).filter(b -> b != a).forEach(near.get(a)::set);
        }
    }

    private static double sizeOf(FactorNetwork network, BitSet near, int variable) {
        var size = log2(network.states(variable));
        for (var v = near.nextSetBit(0); v >= 0; v = near.nextSetBit(v + 1)) {
            size += log2(network.states(v));
        }
        return size;
    }

    private static double log2(double x) {
        return Math.log(x) / Math.log(2);
    }
}
