package clutchwright.engine.network;

import java.util.Arrays;

/// A core without some of its nodes: each factor is left with the others of its nodes, and
/// what remains is narrow enough for a tree of cliques.
final class CutCore {

    /// Which nodes are cut.
    final boolean[] isCut;

    /// For each node its number among those that are left; meaningless where it is cut.
    final int[] numbers;

    /// What is left, nodes numbered anew. Factors that lost nodes have cells that are to be
    /// filled in, and are asked for.
    final Core rest;

    /// For each factor of the core its number among those left; negative if all its nodes are
    /// cut.
    final int[] factorNumbers;

    final CliqueTree tree;

    CutCore(Core core, boolean[] isCut) {
        this.isCut = isCut;
        numbers = new int[isCut.length];
        var sizes = new int[isCut.length];
        var count = 0;
        for (var node = 0; node < isCut.length; node++) {
            if (!isCut[node]) {
                sizes[count] = core.sizes[node];
                numbers[node] = count++;
            }
        }
        rest = new Core(Arrays.copyOf(sizes, count));
        factorNumbers = new int[core.factors.size()];
        for (var f = 0; f < factorNumbers.length; f++) {
            factorNumbers[f] = -1;
            var factor = core.factors.get(f);
            var left = Arrays.stream(factor.nodes).filter(node -> !isCut[node]).toArray();
            if (left.length > 0) {
                factorNumbers[f] = rest.factors.size();
                rest.factors.add(restOf(factor, left));
            }
        }
        var order = new int[count];
        count = 0;
        for (var component : Component.of(rest)) {
            component.search(Component.BRIEF);
            for (var node : component.order()) {
                order[count++] = node;
            }
        }
        tree = new CliqueTree(rest, order);
    }

    private Core.Factor restOf(Core.Factor factor, int... left) {
        var nodes = Arrays.stream(left).map(node -> numbers[node]).toArray();
        if (left.length == factor.nodes.length) {
            return new Core.Factor(nodes, factor);
        }
        var sizes = Arrays.stream(nodes).map(node -> rest.sizes[node]).toArray();
        var made = new Core.Factor(nodes, sizes);
        made.asked = true;
        return made;
    }
}
