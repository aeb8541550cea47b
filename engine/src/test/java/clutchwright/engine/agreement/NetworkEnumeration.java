package clutchwright.engine.agreement;

import java.util.Arrays;
import java.util.List;

/// Every combination of all states, one by one: slow and obvious.
final class NetworkEnumeration {

    final RandomNetwork network;
    final double total;

    NetworkEnumeration(RandomNetwork network) {
        this.network = network;
        total = sum(new int[0]).get(0);
    }

    /// The chance of each combination of these variables' states, the last varying fastest.
    List<Double> joint(int... variables) {
        return sum(variables).stream().map(x -> x / total).toList();
    }

    private List<Double> sum(int[] variables) {
        var states = network.states();
        var cells = 1;
        for (var v : variables) {
            cells *= states.get(v);
        }
        var sums = new Double[cells];
        Arrays.fill(sums, 0.0);
        var state = new int[states.size()];
        var more = true;
        while (more) {
            var product = 1.0;
            for (var factor : network.factors()) {
                product *= factor.at(state, states);
            }
            var cell = 0;
            for (var v : variables) {
                cell = cell * states.get(v) + state[v];
            }
            sums[cell] += product;
            more = next(state);
        }
        return List.of(sums);
    }

    private boolean next(int[] state) {
        for (var v = state.length - 1; v >= 0; v--) {
            if (++state[v] < network.states().get(v)) {
                return true;
            }
            state[v] = 0;
        }
        return false;
    }
}
