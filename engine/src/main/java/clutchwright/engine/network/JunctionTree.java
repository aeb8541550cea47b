package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/// Exact chances of all variables of a network.
///
/// Variables are summed out one after the other (bucket elimination); what each sum leaves goes to
/// the bucket of the variable that comes next, and once more back (a junction tree). Time and
/// memory grow with the largest table on the way, not with the number of variables.
/// `docs/mathematics.md`, "Chances on a network".
public final class JunctionTree {

    private JunctionTree() {}

    /// Solves a network, or says why not.
    public static Solution solve(FactorNetwork network, Limits limits) {
        return solve(network, limits, Stop.never());
    }

    /// @param stop asked between cliques
    public static Solution solve(FactorNetwork network, Limits limits, Stop stop) {
        var order = EliminationOrder.of(network, new BitSet());
        if (order.log2Cells > Math.log((double) limits.cells()) / Math.log(2)
                || order.operations > (double) limits.operations()) {
            return new Solution.TooWide(order.log2Cells);
        }
        return new Buckets(network, order.order, stop).solution(limits);
    }

    /// All weights and ties, as potentials.
    static List<Potential> potentials(FactorNetwork network) {
        List<Potential> all = new ArrayList<>();
        for (var i = 0; i < network.weighings(); i++) {
            var variable = network.weighedVariable(i);
            all.add(
                    new Potential(
                            new int[] {variable},
                            new int[] {network.states(variable)},
                            network.weights(i),
                            0));
        }
        for (var tie = 0; tie < network.ties(); tie++) {
            var scope = network.scope(tie);
            var states = new int[scope.length];
            for (var i = 0; i < scope.length; i++) {
                states[i] = network.states(scope[i]);
            }
            all.add(new Potential(scope, states, network.table(tie), 0));
        }
        return all;
    }
}
