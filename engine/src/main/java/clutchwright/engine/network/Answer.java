package clutchwright.engine.network;

import java.util.Arrays;

/// The exact chances that a clique tree gave.
final class Answer implements Solution.Solved {

    private final FactorNetwork network;
    private final Domains domains;
    private final Limits limits;
    private final double logTotal;

    /// Over the possible states of each variable that has a choice.
    private final double[][] chances;

    private final Quality quality;

    /// Of each variable; empty where all is exact.
    private final double[] errors;

    Answer(Reduction reduction, Limits limits, double logTotal, double[][] chances) {
        this(reduction, limits, logTotal, chances, new Quality.Exact(), new double[0]);
    }

    Answer(
            Reduction reduction,
            Limits limits,
            double logTotal,
            double[][] chances,
            Quality quality,
            double... errors) {
        this.quality = quality;
        this.errors = errors;
        network = reduction.network;
        domains = reduction.domains;
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
        if (state < 0 || state >= network.states(variable)) {
            throw new IndexOutOfBoundsException(state);
        }
        var place = domains.placeOf(variable, state);
        if (domains.isSettled(variable)) {
            return place == 0 ? 1 : 0;
        }
        return place < 0 ? 0 : chances[variable][place];
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
        return quality instanceof Quality.Exact
                ? Solving.joint(network, limits, variables)
                : Severing.joint(network, limits, variables);
    }

    @Override
    public Solution with(Change... changes) {
        var changed = Changed.of(network, changes);
        return quality instanceof Quality.Exact
                ? JunctionTree.solve(changed, limits)
                : EdgeDeletion.solve(changed, limits, Stop.never());
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
        return "log total " + logTotal + " of " + Arrays.toString(chances);
    }
}
