package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/// A network without the states that are next to impossible, for tables that would else be too
/// large: a series of a dozen alleles has seventy-eight genotypes, of which an animal may have a
/// handful.
final class Narrowed {

    /// A state below this chance is left out.
    private static final double NEXT_TO_NOTHING = 1e-10;

    /// What is lost by that is told so much larger, since the chances are guesses.
    private static final double CAUTION = 10;

    /// What is left.
    final FactorNetwork network;

    /// Of each variable, the states that are left, ascending.
    final int[][] states;

    /// How far chances may be off by what was left out, as estimated: none where all of that is
    /// impossible.
    final double lost;

    private Narrowed(FactorNetwork whole, int[][] states, double lost) {
        network = network(whole, states);
        this.states = states;
        this.lost = lost;
    }

    /// Empty where the records of one variable alone allow nothing.
    static Optional<Narrowed> of(FactorNetwork whole) {
        var whispers = new Whispers(whole);
        var states = new int[whole.variables()][];
        var lost = 0.0;
        for (var v = 0; v < states.length; v++) {
            var variable = v;
            states[v] =
                    IntStream.range(0, whole.states(v))
                            .filter(s -> whispers.of(variable, s) >= NEXT_TO_NOTHING)
                            .toArray();
            if (states[v].length == 0) {
                return Optional.empty();
            }
            for (var s = 0; s < whole.states(v); s++) {
                var chance = whispers.of(v, s);
                lost += chance > 0 && chance < NEXT_TO_NOTHING ? NEXT_TO_NOTHING : 0;
            }
        }
        return Optional.of(new Narrowed(whole, states, Math.min(1, CAUTION * lost)));
    }

    private static FactorNetwork network(FactorNetwork whole, int[]... states) {
        var builder = new FactorNetwork.Builder();
        for (var left : states) {
            builder.variable(left.length);
        }
        for (var i = 0; i < whole.weighings(); i++) {
            var v = whole.weighedVariable(i);
            builder.weigh(v, slice(whole.table(whole.weightNumber(i)), states[v]));
        }
        // Equal tables are to be one array, so that what follows of them is worked out once.
        Map<List<Object>, double[]> slices = new HashMap<>();
        for (var tie = 0; tie < whole.ties(); tie++) {
            var form = whole.form(whole.formNumber(tie));
            var scope = whole.scope(tie);
            List<Object> key = new ArrayList<>();
            key.add(form.table);
            for (var v : scope) {
                key.add(Arrays.stream(states[v]).boxed().toList());
            }
            builder.tie(
                    slices.computeIfAbsent(
                            key, _ -> slice(whole.table(form.table), form.states, scope, states)),
                    scope);
        }
        return builder.build();
    }

    private static double[] slice(double[] weights, int... left) {
        return Arrays.stream(left).mapToDouble(s -> weights[s]).toArray();
    }

    private static double[] slice(double[] table, int[] sizes, int[] scope, int[]... states) {
        var cells = 1;
        for (var v : scope) {
            cells *= states[v].length;
        }
        var slice = new double[cells];
        for (var cell = 0; cell < cells; cell++) {
            var rest = cell;
            var at = 0;
            var stride = 1;
            for (var i = scope.length - 1; i >= 0; i--) {
                var left = states[scope[i]];
                at += left[rest % left.length] * stride;
                rest /= left.length;
                stride *= sizes[i];
            }
            slice[cell] = table[at];
        }
        return slice;
    }

    /// The number of a state among those that are left; empty if it is left out.
    Optional<Integer> placeOf(int variable, int state) {
        var place = Arrays.binarySearch(states[variable], state);
        return place < 0 ? Optional.empty() : Optional.of(place);
    }

    /// What an answer for what is left says of the whole.
    Solution answer(FactorNetwork whole, Way way, Solution ofRest) {
        return ofRest instanceof Solution.Solved solved
                ? new NarrowedAnswer(whole, this, way, solved)
                : ofRest;
    }
}
