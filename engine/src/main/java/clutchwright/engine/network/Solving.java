package clutchwright.engine.network;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/// One network on its way to its solution.
final class Solving {

    /// No tie is kept as it is.
    static final int NONE = Integer.MAX_VALUE;

    private final FactorNetwork network;
    private final Limits limits;
    private final Stop stop;
    private final int kept;

    private @Nullable RimChances rim;

    /// @param kept a tie whose variables' chances together are asked for, or [#NONE]
    Solving(FactorNetwork network, Limits limits, Stop stop, int kept) {
        this.network = network;
        this.limits = limits;
        this.stop = stop;
        this.kept = kept;
    }

    Solution solution() {
        var domains = new Domains(network);
        var nowhere = domains.narrow();
        if (nowhere.isPresent()) {
            return new Solution.Impossible(nowhere.get());
        }
        var reduction = new Reduction(network, domains, kept);
        var core = new Core(reduction);
        var components = Component.of(core);
        var cells = 0.0;
        var width = 0.0;
        for (var component : components) {
            component.search(limits);
            cells += component.cost();
            width = Math.max(width, component.width());
        }
        if (width > Math.log((double) limits.cells()) / Math.log(2)
                || 2 * cells > (double) limits.operations()) {
            return new Solution.TooWide(width);
        }
        return pass(reduction, core, components);
    }

    private Solution pass(Reduction reduction, Core core, List<Component> components) {
        var order = new int[core.variables.length];
        var count = 0;
        for (var component : components) {
            for (var node : component.order()) {
                order[count++] = node;
            }
        }
        var tree = new CliqueTree(core, order);
        var weights = new double[order.length][];
        for (var i = 0; i < order.length; i++) {
            weights[i] = reduction.weights(core.variables[order[i]]);
        }
        var passing = new Passing(core, tree, weights, reduction.gone);
        if (!passing.send(stop)) {
            return new Solution.Stopped();
        }
        var chances = new double[network.variables()][];
        for (var i = 0; i < core.variables.length; i++) {
            chances[core.variables[i]] = passing.chances[tree.positions[i]];
        }
        rim = new RimChances(reduction, core, passing, chances);
        var logTotal = rim.logOfAlone();
        if (logTotal == Double.NEGATIVE_INFINITY) {
            return new Solution.Impossible(new Solution.Where.Together());
        }
        rim.answer();
        return new Answer(reduction, limits, logTotal, chances);
    }

    /// The chances of several variables' states together: a tie that weighs nothing keeps them
    /// in one clique.
    static double[] joint(FactorNetwork network, Limits limits, int... variables) {
        var cells = 1;
        for (var v : variables) {
            cells = Math.multiplyExact(cells, network.states(v));
        }
        var even = new double[cells];
        Arrays.fill(even, 1);
        var asking = Changed.builder(network).tie(even, variables).build();
        var solving = new Solving(asking, limits, Stop.never(), network.ties());
        if (solving.solution() instanceof Solution.Solved && solving.rim != null) {
            return solving.rim.kept(cells, variables);
        }
        throw new IllegalStateException(variables.length + " variables together pass the limits");
    }
}
