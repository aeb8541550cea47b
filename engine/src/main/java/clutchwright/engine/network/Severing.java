package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/// One network on its way to an estimate.
final class Severing {

    /// Up to which doubt nodes are cut: tried from the middle, finer while it is affordable.
    private static final double[] DOUBTS = {0.002, 0.006, 0.02, 0.1, 0.3, 1};

    private static final int FIRST = 2;
    private static final int MOST_ROUNDS = 2;

    /// Operations from which on it is worth looking for a finer cut; the copies' agreeing makes
    /// up for most of what the first loses.
    private static final long THOROUGH = 1L << 26;

    private static final double SETTLED = 1e-4;

    /// How much more than is affordable the first look at an order may cost, for a longer look
    /// to be worth it.
    private static final double NEARLY = 1024;

    private static final double LEAST_ERROR = 5e-4;
    private static final double SHARE = 0.2;

    private final FactorNetwork network;
    private final Limits limits;
    private final Stop stop;
    private final int kept;

    private @Nullable RimChances rim;

    /// @param kept a tie whose variables' chances together are asked for, or [Solving#NONE]
    Severing(FactorNetwork network, Limits limits, Stop stop, int kept) {
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
        var weights = new double[core.variables.length][];
        for (var node = 0; node < weights.length; node++) {
            weights[node] = reduction.weights(core.variables[node]);
        }
        var whole = uncut(core, weights);
        if (whole.isPresent()) {
            return solution(reduction, core, Optional.empty(), whole.get());
        }
        var beliefs = new Beliefs(core, weights);
        return plan(core, weights, beliefs)
                .map(plan -> solution(reduction, core, Optional.of(beliefs), plan))
                .orElseGet(() -> new Solution.TooWide(Double.POSITIVE_INFINITY));
    }

    /// The whole core, where that is affordable. Where one look at it says that it nearly is,
    /// it is worth looking longer.
    private Optional<Plan> uncut(Core core, double[][] weights) {
        var components = Component.of(core);
        var cells = 0.0;
        var width = 0.0;
        for (var component : components) {
            if (!component.glance(limits.operations() * NEARLY)) {
                return Optional.empty();
            }
            if (component.cost() > limits.operations() / 2.0 || component.width() > mostWidth()) {
                component.search(limits);
            }
            cells += component.cost();
            width = Math.max(width, component.width());
        }
        return 2 * cells > limits.operations() || width > mostWidth()
                ? Optional.empty()
                : Optional.of(new Plan(Severed.nowhere(core, weights), components));
    }

    private double mostWidth() {
        return Math.log((double) limits.cells()) / Math.log(2);
    }

    private record Plan(Severed severed, List<Component> components) {}

    /// The least cut that the limits allow.
    private Optional<Plan> plan(Core core, double[][] weights, Beliefs beliefs) {
        var found = attempt(core, weights, beliefs, FIRST);
        if (found.isEmpty()) {
            for (var i = FIRST + 1; i < DOUBTS.length && found.isEmpty(); i++) {
                found = attempt(core, weights, beliefs, i);
            }
            return found;
        }
        for (var i = FIRST - 1; i >= 0 && limits.operations() >= THOROUGH; i--) {
            var finer = attempt(core, weights, beliefs, i);
            if (finer.isEmpty()) {
                return found;
            }
            found = finer;
        }
        return found;
    }

    private Optional<Plan> attempt(Core core, double[][] weights, Beliefs beliefs, int doubt) {
        var severed = new Severed(core, weights, beliefs, DOUBTS[doubt]);
        var components = Component.of(severed.core);
        var left = limits.operations() / 2.0;
        for (var component : components) {
            if (!component.glance(left) || component.width() > mostWidth()) {
                return Optional.empty();
            }
            left -= component.cost();
        }
        return Optional.of(new Plan(severed, components));
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private Solution solution(
            Reduction reduction, Core core, Optional<Beliefs> beliefs, Plan plan) {
        var severed = plan.severed;
        var order = orderOf(plan);
        var tree = new CliqueTree(severed.core, order);
        for (var round = 0; ; round++) {
            var total = new Scaled();
            var passing = new Passing(severed.core, tree, weights(severed, order), total);
            if (!passing.send(stop)) {
                return new Solution.Stopped();
            }
            if (total.log() == Double.NEGATIVE_INFINITY) {
                return new Solution.Impossible(new Solution.Where.Together());
            }
            var chances = new double[order.length][];
            for (var i = 0; i < order.length; i++) {
                chances[i] = passing.chances[tree.positions[i]];
            }
            var logTotal = total.log() + severed.logCorrection(chances);
            if (round == MOST_ROUNDS || severed.reweigh(chances) < SETTLED) {
                reduction.gone.timesExponential(logTotal);
                return answer(reduction, core, beliefs, severed, passing, chances);
            }
        }
    }

    private static int[] orderOf(Plan plan) {
        var order = new ArrayList<Integer>();
        for (var component : plan.components) {
            for (var node : component.order()) {
                order.add(node);
            }
        }
        return order.stream().mapToInt(Integer::intValue).toArray();
    }

    private static double[][] weights(Severed severed, int... order) {
        var weights = new double[order.length][];
        for (var i = 0; i < order.length; i++) {
            weights[i] = severed.weights[order[i]];
        }
        return weights;
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private Solution answer(
            Reduction reduction,
            Core core,
            Optional<Beliefs> beliefs,
            Severed severed,
            Passing passing,
            double[][] copyChances) {
        var chances = new double[network.variables()][];
        for (var node = 0; node < core.variables.length; node++) {
            chances[core.variables[node]] = severed.together(node, copyChances);
        }
        rim = new RimChances(reduction, core, passing, chances);
        var logTotal = rim.logOfAlone();
        if (logTotal == Double.NEGATIVE_INFINITY) {
            return new Solution.Impossible(new Solution.Where.Together());
        }
        rim.answer();
        if (beliefs.isEmpty()) {
            return new Answer(reduction, limits, logTotal, chances);
        }
        var errors = errors(reduction, core, beliefs.get(), chances);
        var largest = Arrays.stream(errors).max().orElse(0);
        var quality = new Quality.Estimated(largest);
        return new Answer(reduction, limits, logTotal, chances, quality, errors);
    }

    /// What loopy belief propagation, which cuts everything, differs by: an estimate that errs
    /// on the safe side. Beside it a share of the largest difference anywhere, since two wrong
    /// answers may agree by chance, and a little for what all cuts share.
    private double[] errors(Reduction reduction, Core core, Beliefs beliefs, double[][] chances) {
        var errors = new double[network.variables()];
        var furthest = 0.0;
        for (var node = 0; node < core.variables.length; node++) {
            var v = core.variables[node];
            errors[v] = beliefs.distance(node, chances[v]) / 2;
            furthest = Math.max(furthest, errors[v]);
        }
        for (var node = 0; node < core.variables.length; node++) {
            var v = core.variables[node];
            var doubt = 1 - Blocks.largest(chances[v]);
            errors[v] += LEAST_ERROR + SHARE * furthest * Math.min(1, 4 * doubt);
        }
        for (var i = reduction.rim.size() - 1; i >= 0; i--) {
            var gone = reduction.rim.get(i);
            for (var v : gone.rest) {
                errors[gone.variable] = Math.max(errors[gone.variable], errors[v]);
            }
        }
        return errors;
    }

    /// The chances of several variables' states together, as near as the cuts let them be.
    static double[] joint(FactorNetwork network, Limits limits, int... variables) {
        var cells = 1;
        for (var v : variables) {
            cells = Math.multiplyExact(cells, network.states(v));
        }
        var even = new double[cells];
        Arrays.fill(even, 1);
        var asking = Changed.builder(network).tie(even, variables).build();
        var severing = new Severing(asking, limits, Stop.never(), network.ties());
        if (severing.solution() instanceof Solution.Solved && severing.rim != null) {
            return severing.rim.kept(cells, variables);
        }
        throw new IllegalStateException(variables.length + " variables together pass the limits");
    }
}
