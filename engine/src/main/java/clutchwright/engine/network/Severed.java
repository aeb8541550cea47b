package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;

/// A core with some nodes cut apart: each of a cut node's groups of factors gets a copy of the
/// node, and each copy is weighed with what the other groups said of it.
///
/// Edge deletion after A. Choi and A. Darwiche, "An edge deletion semantics for belief
/// propagation and its practical impact on approximation quality", AAAI 2006. Nodes that are
/// nearly certain are cut first: what copies of one node lose is their agreeing on what they
/// hardly ever are.
final class Severed {

    private static final double LEAST_MESSAGE = 1e-40;
    private static final double LEAST_WEIGHT = 1e-60;

    final Core core;

    /// The weights of each node and copy.
    final double[][] weights;

    /// The nodes that stand for each node of the whole core; only itself where it is not cut.
    final int[][] copies;

    private final Core whole;

    private final double[][] wholeWeights;

    /// While groups are looked for: the node for which another was last met, and in which
    /// factor.
    private final int[] lastNode;

    private final int[] lastFactor;

    /// @param most the doubt up to which a node is cut
    Severed(Core whole, double[][] wholeWeights, Beliefs beliefs, double most) {
        this.whole = whole;
        this.wholeWeights = wholeWeights;
        var n = wholeWeights.length;
        lastNode = new int[n];
        lastFactor = new int[n];
        Arrays.fill(lastNode, -1);
        var at = factorsOf(whole, n);
        copies = new int[n][];
        var copyAt = new int[whole.factors.size()][];
        for (var f = 0; f < copyAt.length; f++) {
            copyAt[f] = whole.factors.get(f).nodes.clone();
        }
        var sizes = new ArrayList<Integer>();
        var own = new ArrayList<double[]>();
        for (var node = 0; node < n; node++) {
            sizes.add(whole.sizes[node]);
            own.add(wholeWeights[node]);
            copies[node] = new int[] {node};
        }
        for (var node = 0; node < n; node++) {
            if (at[node].length > 1 && beliefs.doubt(node) <= most) {
                cut(node, at[node], beliefs, copyAt, sizes, own);
            }
        }
        weights = own.toArray(double[][]::new);
        core = whole.with(sizes.stream().mapToInt(Integer::intValue).toArray(), copyAt);
    }

    private Severed(Core whole, double[][] wholeWeights) {
        this.whole = whole;
        this.wholeWeights = wholeWeights;
        lastNode = new int[0];
        lastFactor = new int[0];
        core = whole;
        weights = wholeWeights;
        copies = new int[wholeWeights.length][];
        for (var node = 0; node < copies.length; node++) {
            copies[node] = new int[] {node};
        }
    }

    /// Nothing is cut.
    static Severed nowhere(Core whole, double[][] weights) {
        return new Severed(whole, weights);
    }

    private void cut(
            int node,
            int[] factors,
            Beliefs beliefs,
            int[][] copyAt,
            List<Integer> sizes,
            List<double[]> own) {
        var groups = groups(node, factors);
        if (groups.size() < 2) {
            return;
        }
        copies[node] = new int[groups.size()];
        for (var g = 0; g < groups.size(); g++) {
            var copy = g == 0 ? node : sizes.size();
            copies[node][g] = copy;
            var weight = beliefs.beliefs[node].clone();
            for (var f : groups.get(g)) {
                var place = placeOf(whole.factors.get(f).nodes, node);
                copyAt[f][place] = copy;
                for (var s = 0; s < weight.length; s++) {
                    weight[s] /= beliefs.messages[f][place][s];
                }
            }
            raise(weight, LEAST_WEIGHT);
            if (g == 0) {
                own.set(node, weight);
            } else {
                sizes.add(whole.sizes[node]);
                own.add(weight);
            }
        }
    }

    /// Factors of a node that share another node belong together: a couple and all its young.
    private List<List<Integer>> groups(int node, int[] factors) {
        var roots = new int[factors.length];
        for (var i = 0; i < factors.length; i++) {
            roots[i] = i;
            for (var other : whole.factors.get(factors[i]).nodes) {
                if (other != node) {
                    if (lastNode[other] == node) {
                        roots[rootOf(roots, i)] = rootOf(roots, lastFactor[other]);
                    }
                    lastNode[other] = node;
                    lastFactor[other] = i;
                }
            }
        }
        var groups = new LinkedHashMap<Integer, List<Integer>>();
        for (var i = 0; i < factors.length; i++) {
            groups.computeIfAbsent(rootOf(roots, i), _ -> new ArrayList<>()).add(factors[i]);
        }
        return List.copyOf(groups.values());
    }

    private static int rootOf(int[] roots, int place) {
        var root = place;
        while (roots[root] != root) {
            root = roots[root];
        }
        return root;
    }

    private static int[][] factorsOf(Core core, int nodes) {
        var counts = new int[nodes];
        for (var factor : core.factors) {
            for (var node : factor.nodes) {
                counts[node]++;
            }
        }
        var at = new int[nodes][];
        for (var node = 0; node < nodes; node++) {
            at[node] = new int[counts[node]];
        }
        for (var f = core.factors.size() - 1; f >= 0; f--) {
            for (var node : core.factors.get(f).nodes) {
                at[node][--counts[node]] = f;
            }
        }
        return at;
    }

    private static int placeOf(int[] nodes, int node) {
        var place = 0;
        while (nodes[place] != node) {
            place++;
        }
        return place;
    }

    boolean isCut(int node) {
        return copies[node].length > 1;
    }

    /// A cut node's chances from those of its copies.
    ///
    /// @param chances of each node and copy
    double[] together(int node, double[][] chances) {
        if (!isCut(node)) {
            return chances[node];
        }
        var product = product(node, messages(node, chances), Integer.MAX_VALUE);
        Passing.toSumOne(product);
        return product;
    }

    /// Weighs each copy with what the others' groups say now.
    ///
    /// @return how far any weight moved, of copies with the largest weight one
    double reweigh(double[][] chances) {
        var moved = 0.0;
        for (var node = 0; node < copies.length; node++) {
            if (!isCut(node)) {
                continue;
            }
            var messages = messages(node, chances);
            for (var g = 0; g < messages.length; g++) {
                var weight = product(node, messages, g);
                var before = weights[copies[node][g]];
                for (var s = 0; s < weight.length; s++) {
                    moved = Math.max(moved, Math.abs(weight[s] - before[s]));
                }
                weights[copies[node][g]] = weight;
            }
        }
        return moved;
    }

    /// What the cuts take from the logarithm of the weight of everything: each copy was summed
    /// over by itself, and the node must be summed over once. The free energy of H. Bethe.
    double logCorrection(double[][] chances) {
        var log = 0.0;
        for (var node = 0; node < copies.length; node++) {
            if (isCut(node)) {
                var messages = messages(node, chances);
                log += logSum(node, messages);
                for (var g = 0; g < messages.length; g++) {
                    var sum = 0.0;
                    for (var s = 0; s < messages[g].length; s++) {
                        sum += messages[g][s] * weights[copies[node][g]][s];
                    }
                    log -= Math.log(sum);
                }
            }
        }
        return log;
    }

    /// What each group of factors says of the node: its copy's chances less its copy's weight.
    private double[][] messages(int node, double[][] chances) {
        var messages = new double[copies[node].length][];
        for (var g = 0; g < messages.length; g++) {
            var copy = copies[node][g];
            messages[g] = chances[copy].clone();
            Blocks.divide(messages[g], weights[copy]);
            raise(messages[g], LEAST_MESSAGE);
        }
        return messages;
    }

    private double[] product(int node, double[][] messages, int without) {
        var product = wholeWeights[node].clone();
        for (var g = 0; g < messages.length; g++) {
            if (g != without) {
                Blocks.multiply(product, messages[g], 0);
                raise(product, LEAST_WEIGHT);
            }
        }
        return product;
    }

    /// Brings the largest entry to one and the others to no less than the least: what is as
    /// good as impossible must not become impossible by rounding.
    private static void raise(double[] entries, double least) {
        var largest = Blocks.largest(entries);
        for (var i = 0; i < entries.length; i++) {
            entries[i] = Math.max(entries[i] / largest, least);
        }
    }

    private double logSum(int node, double[][] messages) {
        var product = wholeWeights[node].clone();
        var log = 0.0;
        for (var message : messages) {
            Blocks.multiply(product, message, 0);
            var largest = Blocks.largest(product);
            log += Math.log(largest);
            Blocks.scale(product, 1 / largest);
        }
        return log + Math.log(Blocks.sum(product));
    }
}
