package clutchwright.engine.agreement;

import clutchwright.engine.network.FactorNetwork;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/// A small network by a seed, kept as plain parts so that it can be enumerated and rearranged.
///
/// @param states  how many a variable has
/// @param factors weights and ties alike
record RandomNetwork(List<Integer> states, List<Factor> factors) {

    /// @param variables the last varies fastest in the table
    record Factor(List<Integer> variables, List<Double> table) {

        double at(int[] state, List<Integer> states) {
            var cell = 0;
            for (var v : variables) {
                cell = cell * states.get(v) + state[v];
            }
            return table.get(cell);
        }

        double[] cells() {
            return table.stream().mapToDouble(Double::doubleValue).toArray();
        }

        int[] scope() {
            return variables.stream().mapToInt(Integer::intValue).toArray();
        }
    }

    /// Two to eight variables of one to six states, at most 1,500 combinations; ties of one to
    /// four; a third to none of the cells zero.
    static RandomNetwork of(long seed) {
        var random = new SplittableRandom(seed);
        List<Integer> states = new ArrayList<>();
        var combinations = 1;
        for (var i = 2 + random.nextInt(7); i > 0; i--) {
            var count = 1 + random.nextInt(6);
            if (combinations * count <= 1_500) {
                states.add(count);
                combinations *= count;
            }
        }
        var zeros = random.nextInt(4) / 9.0;
        List<Factor> factors = new ArrayList<>();
        for (var i = random.nextInt(states.size() + 4); i > 0; i--) {
            factors.add(factor(random, states, 1 + random.nextInt(4), zeros));
        }
        for (var i = random.nextInt(states.size() + 1); i > 0; i--) {
            factors.add(factor(random, states, 1, zeros));
        }
        return new RandomNetwork(states, factors);
    }

    private static Factor factor(
            SplittableRandom random, List<Integer> states, int most, double zeros) {
        var arity = Math.min(most, states.size());
        List<Integer> variables = new ArrayList<>();
        while (variables.size() < arity) {
            var v = random.nextInt(states.size());
            if (!variables.contains(v)) {
                variables.add(v);
            }
        }
        var cells = variables.stream().mapToInt(states::get).reduce(1, Math::multiplyExact);
        var table =
                IntStream.range(0, cells)
                        .mapToObj(_ -> random.nextDouble() < zeros ? 0 : 0.01 + random.nextDouble())
                        .toList();
        return new Factor(variables, table);
    }

    FactorNetwork network() {
        var builder = new FactorNetwork.Builder();
        states.forEach(builder::variable);
        for (var factor : factors) {
            if (factor.variables().size() == 1) {
                builder.weigh(factor.variables().getFirst(), factor.cells());
            } else {
                builder.tie(factor.cells(), factor.scope());
            }
        }
        return builder.build();
    }
}
