package clutchwright.engine.network;

import java.util.Arrays;
import java.util.BitSet;

/// The exact chances that a junction tree gave.
final class TreeSolution implements Solution.Solved {

    private final FactorNetwork network;
    private final Limits limits;
    private final double logTotal;
    private final double[][] chances;

    TreeSolution(FactorNetwork network, Limits limits, double logTotal, double[][] chances) {
        this.network = network;
        this.limits = limits;
        this.logTotal = logTotal;
        this.chances = chances;
    }

    @Override
    public double logTotal() {
        return logTotal;
    }

    @Override
    public double chance(int variable, int state) {
        return chances[variable][state];
    }

    @Override
    public double[] chances(int variable) {
        return chances[variable].clone();
    }

    @Override
    public double[] joint(int... variables) {
        var last = new BitSet();
        Arrays.stream(variables).forEach(last::set);
        var order = EliminationOrder.of(network, last);
        var rest = new Buckets(network, order.order, Stop.never()).remainder();
        for (var v : variables) {
            rest = rest.times(oneOf(v));
        }
        var cells = rest.onto(variables).cells;
        var sum = Arrays.stream(cells).sum();
        return Arrays.stream(cells).map(x -> x / sum).toArray();
    }

    @Override
    public Solution with(Change... changes) {
        return JunctionTree.solve(network.with(changes), limits);
    }

    @Override
    public Quality quality() {
        return new Quality.Exact();
    }

    @Override
    public double error(int variable) {
        return 0;
    }

    private Potential oneOf(int variable) {
        var ones = new double[network.states(variable)];
        Arrays.fill(ones, 1);
        return new Potential(new int[] {variable}, new int[] {network.states(variable)}, ones, 0);
    }
}
