package clutchwright.engine.network;

import java.util.Arrays;

/// The cliques of an order of elimination: one a node, with what is summed to get to the next.
///
/// Nodes are known here by their position in the order. A clique's variables are its own
/// position and, ascending, the later ones it shares with its parent.
final class CliqueTree {

    final int[] positions;
    final int[][] scopes;
    final int[] parents;
    final int[] sizes;

    /// The factors and the children of each clique.
    final int[][] factors;

    final int[][] children;

    /// No parent: the last of its component.
    static final int ROOT = -1;

    CliqueTree(Core core, int[] order) {
        var n = order.length;
        positions = new int[n];
        sizes = new int[n];
        for (var i = 0; i < n; i++) {
            positions[order[i]] = i;
            sizes[i] = core.sizes[order[i]];
        }
        var first = new int[core.factors.size()];
        var factorCounts = new int[n];
        for (var f = 0; f < first.length; f++) {
            first[f] = n;
            for (var node : core.factors.get(f).nodes) {
                first[f] = Math.min(first[f], positions[node]);
            }
            factorCounts[first[f]]++;
        }
        factors = lists(first, factorCounts);
        scopes = new int[n][];
        parents = new int[n];
        var childCounts = new int[n];
        var heads = new int[n];
        var nexts = new int[n];
        Arrays.fill(heads, -1);
        var seen = new int[n];
        Arrays.fill(seen, -1);
        var scratch = new int[n];
        for (var i = 0; i < n; i++) {
            var count = 0;
            seen[i] = i;
            for (var f : factors[i]) {
                for (var node : core.factors.get(f).nodes) {
                    var p = positions[node];
                    if (seen[p] != i) {
                        seen[p] = i;
                        scratch[count++] = p;
                    }
                }
            }
            for (var c = heads[i]; c >= 0; c = nexts[c]) {
                for (var p : scopes[c]) {
                    if (p != c && seen[p] != i) {
                        seen[p] = i;
                        scratch[count++] = p;
                    }
                }
            }
            Arrays.sort(scratch, 0, count);
            scopes[i] = new int[count + 1];
            scopes[i][0] = i;
            System.arraycopy(scratch, 0, scopes[i], 1, count);
            parents[i] = ROOT;
            if (count > 0) {
                parents[i] = scratch[0];
                childCounts[parents[i]]++;
                nexts[i] = heads[parents[i]];
                heads[parents[i]] = i;
            }
        }
        children = lists(parents, childCounts);
    }

    int length() {
        return sizes.length;
    }

    private static int[][] lists(int[] owners, int[] counts) {
        var lists = new int[counts.length][];
        for (var i = 0; i < counts.length; i++) {
            lists[i] = new int[counts[i]];
        }
        for (var i = owners.length - 1; i >= 0; i--) {
            if (owners[i] >= 0) {
                lists[owners[i]][--counts[owners[i]]] = i;
            }
        }
        return lists;
    }
}
