package clutchwright.engine.planning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import java.util.function.Consumer;

/// A linear programme, some of whose variables are whole: maximise the worth of the variables'
/// values under linear rows. Plain data, to be solved outside of the engine.
///
/// @param variables by their place, from 0
public record IntegerProgramme(List<Variable> variables, List<Row> rows) {

    /// @param whole whether only whole values count
    /// @param worth of one of it
    public record Variable(String name, boolean whole, double most, double worth) {

        public Variable {
            if (!(most >= 0) || !Double.isFinite(worth)) {
                throw new IllegalArgumentException(name + ": at most " + most + ", worth " + worth);
            }
        }
    }

    /// A sum of variables that lies between two bounds.
    ///
    /// @param weights by the variables' places
    /// @param least may be negative infinity
    /// @param most may be infinity
    public record Row(
            String name, SequencedMap<Integer, Double> weights, double least, double most) {

        public Row {
            if (!(least <= most)) {
                throw new IllegalArgumentException(name + ": from " + least + " to " + most);
            }
            weights = java.util.Collections.unmodifiableSequencedMap(new LinkedHashMap<>(weights));
        }

        static Row atMost(String name, Map<Integer, Double> weights, double most) {
            return new Row(name, new LinkedHashMap<>(weights), Double.NEGATIVE_INFINITY, most);
        }

        static Row atLeast(String name, Map<Integer, Double> weights, double least) {
            return new Row(name, new LinkedHashMap<>(weights), least, Double.POSITIVE_INFINITY);
        }
    }

    /// How long and how closely it is to be solved.
    ///
    /// @param seconds above zero
    /// @param gap so far from the bound, as a share of the value, is near enough; 0 to 1
    public record Effort(double seconds, double gap) {

        public Effort {
            if (!(seconds > 0 && gap >= 0 && gap < 1)) {
                throw new IllegalArgumentException(seconds + " s, gap " + gap);
            }
        }
    }

    /// What a solver outside of the engine makes of a programme.
    public interface Solver {

        default Answer solve(IntegerProgramme programme, Effort effort) {
            return solve(programme, effort, _ -> {});
        }

        /// @param stopping gets what ends it early, with the best found so far
        Answer solve(IntegerProgramme programme, Effort effort, Consumer<Runnable> stopping);
    }

    public sealed interface Answer {

        /// @param values of the variables, by their places
        /// @param value that they are worth together
        /// @param bound above which no values can be worth
        record Found(List<Double> values, double value, double bound) implements Answer {

            public Found {
                values = List.copyOf(values);
            }

            /// How far the best may be above it, as a share of the bound.
            public double gap() {
                return bound <= value ? 0 : (bound - value) / Math.max(1e-9, Math.abs(bound));
            }
        }

        /// No values meet all rows.
        record Impossible() implements Answer {}

        /// The time was over before any were found.
        record OutOfTime() implements Answer {}
    }

    public IntegerProgramme {
        variables = List.copyOf(variables);
        rows = List.copyOf(rows);
    }
}
