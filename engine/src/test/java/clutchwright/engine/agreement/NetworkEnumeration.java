package clutchwright.engine.agreement;

import java.util.Arrays;

/// Every combination of all states, one by one: slow and obvious.
final class NetworkEnumeration {

    private final RandomNetwork network;

    /// The product of all weights of each combination, in the order of counting.
    private final double[] products;

    private final int[][] states;

    NetworkEnumeration(RandomNetwork network) {
        this.network = network;
        products = new double[combinations(0)];
        states = new int[products.length][];
        for (var i = 0; i < products.length; i++) {
            states[i] = state(i);
            products[i] = 1;
            for (var factor : network.factors()) {
                products[i] *= factor.at(states[i], network.states());
            }
        }
    }

    double total() {
        return Arrays.stream(products).sum();
    }

    /// The chance of each combination of these variables' states, the last varying fastest.
    double[] joint(int... variables) {
        var cells = 1;
        for (var v : variables) {
            cells *= network.states().get(v);
        }
        var sums = new double[cells];
        for (var i = 0; i < products.length; i++) {
            var cell = 0;
            for (var v : variables) {
                cell = cell * network.states().get(v) + states[i][v];
            }
            sums[cell] += products[i];
        }
        var total = total();
        return Arrays.stream(sums).map(sum -> sum / total).toArray();
    }

    private int[] state(int combination) {
        var state = new int[network.states().size()];
        for (var v = 0; v < state.length; v++) {
            state[v] = combination / combinations(v + 1) % network.states().get(v);
        }
        return state;
    }

    /// How many combinations the variables from one on have.
    private int combinations(int from) {
        var combinations = 1;
        for (var v = from; v < network.states().size(); v++) {
            combinations *= network.states().get(v);
        }
        return combinations;
    }
}
