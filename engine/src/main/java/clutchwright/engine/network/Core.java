package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/// What is left of a network when its rim is summed out: nodes, and factors over them.
final class Core {

    /// The variables that are nodes, and each variable's node.
    final int[] variables;

    final int[] nodes;
    final int[] sizes;

    /// Ties of the same variables are one factor.
    final List<Factor> factors = new ArrayList<>();

    /// The factor that each live tie is part of.
    final int[] factorOf;

    private final Memo pairs = new Memo();
    private final Map<List<Integer>, Integer> wider = new HashMap<>();

    /// A table over some nodes.
    static final class Factor {

        final int[] nodes;
        final int[] sizes;
        final double[] cells;

        /// Whether the chances of its nodes' states together are asked for.
        boolean asked;

        /// The same table over copies of some of the nodes.
        Factor(int[] nodes, Factor like) {
            this.nodes = nodes;
            sizes = like.sizes;
            cells = like.cells;
            asked = like.asked;
        }

        Factor(int[] nodes, int[] sizes) {
            this.nodes = nodes;
            this.sizes = sizes;
            var cells = 1;
            for (var size : sizes) {
                cells *= size;
            }
            this.cells = new double[cells];
            Arrays.fill(this.cells, 1);
        }
    }

    Core(Reduction reduction) {
        nodes = new int[reduction.degree.length];
        var found = new int[reduction.degree.length];
        var count = 0;
        for (var v = 0; v < nodes.length; v++) {
            nodes[v] = -1;
            if (reduction.degree[v] > 0) {
                nodes[v] = count;
                found[count++] = v;
            }
        }
        variables = Arrays.copyOf(found, count);
        sizes = new int[count];
        for (var i = 0; i < count; i++) {
            sizes[i] = reduction.domains.size(variables[i]);
        }
        factorOf = new int[reduction.live];
        for (var tie = 0; tie < reduction.live; tie++) {
            if (reduction.arity[tie] > 0) {
                factorOf[tie] = factorOf(reduction, tie);
                multiply(reduction, factors.get(factorOf[tie]), tie);
            }
        }
        if (reduction.hasKept()) {
            factors.get(factorOf[reduction.keptLive]).asked = true;
        }
        for (var rim : reduction.rim) {
            if (reduction.arity[rim.tie] > 0) {
                factors.get(factorOf[rim.tie]).asked = true;
            }
        }
    }

    /// Nodes to which factors are to be added.
    Core(int... sizes) {
        this.sizes = sizes;
        variables = new int[0];
        nodes = new int[0];
        factorOf = new int[0];
    }

    private int factorOf(Reduction reduction, int tie) {
        var scope = scope(reduction, tie);
        var key = scope.clone();
        Arrays.sort(key);
        if (key.length == 2) {
            var known = pairs.get(key[0], key[1]);
            if (known == Memo.ABSENT) {
                known = add(scope);
                pairs.put(key[0], key[1], known);
            }
            return known;
        }
        return wider.computeIfAbsent(Arrays.stream(key).boxed().toList(), _ -> add(scope));
    }

    private int[] scope(Reduction reduction, int tie) {
        var scope = new int[reduction.arity[tie]];
        for (var i = 0; i < scope.length; i++) {
            scope[i] = nodes[reduction.scopes[reduction.start[tie] + i]];
        }
        return scope;
    }

    private int add(int... scope) {
        var scopeSizes = new int[scope.length];
        for (var i = 0; i < scope.length; i++) {
            scopeSizes[i] = sizes[scope[i]];
        }
        factors.add(new Factor(scope, scopeSizes));
        return factors.size() - 1;
    }

    private void multiply(Reduction reduction, Factor factor, int tie) {
        var kind = reduction.tables[tie];
        var order = placesOf(factor, reduction, tie);
        var largest = 0.0;
        for (var i = 0; i < factor.cells.length; i++) {
            factor.cells[i] *= kind.cells[order.length == 0 ? i : order[i]];
            largest = Math.max(largest, factor.cells[i]);
        }
        reduction.gone.timesExponential(kind.logScale);
        if (largest < 0x1p-100 || largest > 0x1p100) {
            reduction.gone.times(largest);
            for (var i = 0; i < factor.cells.length; i++) {
                factor.cells[i] = largest > 0 ? factor.cells[i] / largest : 0;
            }
        }
    }

    /// For each cell of a factor, the cell of a tie's table; empty if they are in the same
    /// order.
    int[] placesOf(Factor factor, Reduction reduction, int tie) {
        var scope = scope(reduction, tie);
        if (Arrays.equals(scope, factor.nodes)) {
            return new int[0];
        }
        var kind = reduction.tables[tie];
        var strides = new int[scope.length];
        for (var i = 0; i < scope.length; i++) {
            for (var j = 0; j < scope.length; j++) {
                strides[i] = scope[j] == factor.nodes[i] ? kind.stride(j) : strides[i];
            }
        }
        var places = new int[factor.cells.length];
        var state = new int[scope.length];
        for (var cell = 0; cell < places.length; cell++) {
            for (var i = 0; i < scope.length; i++) {
                places[cell] += state[i] * strides[i];
            }
            for (var i = scope.length - 1; i >= 0 && ++state[i] == factor.sizes[i]; i--) {
                state[i] = 0;
            }
        }
        return places;
    }
}
