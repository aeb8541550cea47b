package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.List;

/// Nodes of a core that hang together, with the order in which they are summed out.
final class Component {

    private final int[] nodes;
    final OrderSearch search;

    private Component(int[] nodes, OrderSearch search) {
        this.nodes = nodes;
        this.search = search;
    }

    static List<Component> of(Core core) {
        var n = core.sizes.length;
        var roots = new int[n];
        for (var i = 0; i < n; i++) {
            roots[i] = i;
        }
        for (var factor : core.factors) {
            for (var node : factor.nodes) {
                roots[rootOf(roots, node)] = rootOf(roots, factor.nodes[0]);
            }
        }
        var counts = new int[n];
        for (var i = 0; i < n; i++) {
            counts[rootOf(roots, i)]++;
        }
        var members = new int[n][];
        var places = new int[n];
        for (var i = n - 1; i >= 0; i--) {
            var root = rootOf(roots, i);
            members[root] = members[root] == null ? new int[counts[root]] : members[root];
            members[root][--counts[root]] = i;
            places[i] = counts[root];
        }
        return components(core, roots, members, places);
    }

    private static List<Component> components(
            Core core, int[] roots, int[][] members, int[] places) {
        var rows = new long[members.length][];
        for (var i = 0; i < members.length; i++) {
            if (members[i] != null) {
                rows[i] = new long[members[i].length * wordsOf(members[i].length)];
            }
        }
        for (var factor : core.factors) {
            var root = rootOf(roots, factor.nodes[0]);
            var words = wordsOf(members[root].length);
            for (var a : factor.nodes) {
                for (var b : factor.nodes) {
                    if (a != b) {
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
        search.search(Math.min(limits.operations(), 1L << 31), 0.5);
    }

    /// Looks for one order only, and gives up where it costs more.
    ///
    /// @return whether there is one
    boolean glance(double mostCells) {
        return search.glance(mostCells);
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
