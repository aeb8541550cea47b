package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.List;

/// Nodes of a core that hang together, with the order in which they are summed out.
final class Component {

    /// Steps of search a cell: a cell takes several times as long as a step.
    private static final double SHARE = 1.5;

    /// Steps, some nanoseconds each.
    static final long QUICK = 1L << 24;

    /// For what is solved again and again, so that an order pays.
    static final long BRIEF = 1L << 20;

    private static final long LONG = 1L << 27;
    private static final double FAR = 16;
    private static final double BEYOND = 4096;

    private final int[] nodes;
    final OrderSearch search;

    private Component(int[] nodes, OrderSearch search) {
        this.nodes = nodes;
        this.search = search;
    }

    static List<Component> of(Core core) {
        return of(core, new boolean[core.sizes.length]);
    }

    /// @param isOut nodes that do not count
    static List<Component> of(Core core, boolean[] isOut) {
        var n = core.sizes.length;
        var roots = new int[n];
        for (var i = 0; i < n; i++) {
            roots[i] = i;
        }
        for (var factor : core.factors) {
            var last = -1;
            for (var node : factor.nodes) {
                if (!isOut[node]) {
                    if (last >= 0) {
                        roots[rootOf(roots, node)] = rootOf(roots, last);
                    }
                    last = node;
                }
            }
        }
        var counts = new int[n];
        for (var i = 0; i < n; i++) {
            counts[rootOf(roots, i)] += isOut[i] ? 0 : 1;
        }
        var members = new int[n][];
        var places = new int[n];
        for (var i = n - 1; i >= 0; i--) {
            if (isOut[i]) {
                continue;
            }
            var root = rootOf(roots, i);
            members[root] = members[root] == null ? new int[counts[root]] : members[root];
            members[root][--counts[root]] = i;
            places[i] = counts[root];
        }
        return components(core, isOut, roots, members, places);
    }

    private static List<Component> components(
            Core core, boolean[] isOut, int[] roots, int[][] members, int[] places) {
        var rows = new long[members.length][];
        for (var i = 0; i < members.length; i++) {
            if (members[i] != null) {
                rows[i] = new long[members[i].length * wordsOf(members[i].length)];
            }
        }
        for (var factor : core.factors) {
            for (var a : factor.nodes) {
                for (var b : factor.nodes) {
                    if (a != b && !isOut[a] && !isOut[b]) {
                        var root = rootOf(roots, a);
                        var words = wordsOf(members[root].length);
                        rows[root][places[a] * words + (places[b] >> 6)] |= 1L << places[b];
                    }
                }
            }
        }
        List<Component> components = new ArrayList<>();
        for (var i = 0; i < members.length; i++) {
            if (members[i] != null) {
                var logSizes = new double[members[i].length];
                for (var j = 0; j < logSizes.length; j++) {
                    logSizes[j] = Math.log(core.sizes[members[i][j]]) / Math.log(2);
                }
                components.add(
                        new Component(
                                members[i], new OrderSearch(logSizes.length, rows[i], logSizes)));
            }
        }
        return components;
    }

    void search(Limits limits) {
        search.look(BEYOND * (double) limits.operations());
        if (search.cost() == Double.POSITIVE_INFINITY) {
            return;
        }
        var quick = Math.min(QUICK, limits.operations() / 16);
        search(quick);
        // What is far too wide stays so.
        if (search.cost() < FAR * (double) limits.operations()) {
            search(Math.min(LONG, 8 * quick));
        }
    }

    void search(long mostSteps) {
        search.search(mostSteps, SHARE);
    }

    /// One order, whatever it costs.
    void first() {
        search.first();
    }

    /// Only looks whether a first order costs less than so many cells; if not, the cost stays
    /// infinite.
    void look(double mostCells) {
        search.look(mostCells);
    }

    double cost() {
        return search.cost();
    }

    double width() {
        return search.width();
    }

    /// The nodes, first to be summed out first.
    int[] order() {
        var order = search.order();
        for (var i = 0; i < order.length; i++) {
            order[i] = nodes[order[i]];
        }
        return order;
    }

    private static int wordsOf(int nodes) {
        return (nodes + 63) >> 6;
    }

    private static int rootOf(int[] roots, int node) {
        var root = node;
        while (roots[root] != root) {
            roots[root] = roots[roots[root]];
            root = roots[root];
        }
        return root;
    }
}
