package clutchwright.engine.network;

import java.util.Arrays;

/// The chances that came of a clique tree.
final class Answer implements Solution.Solved {

    /// Everything is exact.
    static final double[] NO_ERRORS = new double[0];

    private final FactorNetwork network;
    private final Domains domains;
    private final Way way;
    private final double logTotal;
    private final RimChances chances;
    private final double[] errors;
    private final Quality quality;

    Answer(Way way, RimChances chances, double logTotal, double[] errors, Quality quality) {
        network = chances.reduction.network;
        domains = chances.reduction.domains;
        this.way = way;
        this.chances = chances;
        this.logTotal = logTotal;
        this.errors = errors;
        this.quality = quality;
    }

    @Override
    public double logTotal() {
        return logTotal;
    }

    @Override
    public double chance(int variable, int state) {
        if (state < 0 || state >= network.states(variable)) {
            throw new IndexOutOfBoundsException(state);
        }
        var place = domains.placeOf(variable, state);
        if (domains.isSettled(variable)) {
            return place == 0 ? 1 : 0;
        }
        return place < 0 ? 0 : chances.of(variable)[place];
    }

    @Override
    public double[] chances(int variable) {
        var all = new double[network.states(variable)];
        for (var state = 0; state < all.length; state++) {
            all[state] = chance(variable, state);
        }
        return all;
    }

    @Override
    public double[] joint(int... variables) {
        var cells = 1;
        for (var v : variables) {
            cells = Math.multiplyExact(cells, network.states(v));
        }
        // A tie that weighs nothing keeps them together.
        var even = new double[cells];
        Arrays.fill(even, 1);
        var asking = Changed.builder(network).tie(even, variables).build();
        if (way.solve(asking, network.ties(), Stop.never()) instanceof Answer answer) {
            return answer.chances.kept(cells, variables);
        }
        throw new IllegalStateException(variables.length + " variables together pass the limits");
    }

    @Override
    public Solution with(Change... changes) {
        return way.solve(Changed.of(network, changes), Way.NONE, Stop.never());
    }

    @Override
    public Quality quality() {
        return quality;
    }

    @Override
    public double error(int variable) {
        return errors.length == 0 ? 0 : errors[variable];
    }

    @Override
    public String toString() {
        return "log total " + logTotal + ", " + quality;
    }
}
