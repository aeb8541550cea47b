package clutchwright.engine.season;

/// Something seen of a female that says when she will lay. Days are those of the season's line.
public sealed interface Sign {

    /// She ovulated between two looks.
    ///
    /// @param after the last look without it
    /// @param by the look that found it, not before that
    record Ovulation(double after, double by) implements Sign {

        /// Between looks on one day it is known to the day.
        private static final double ONE_DAY = 1.0 / 12;

        public Ovulation {
            if (!(after <= by)) {
                throw new IllegalArgumentException("ovulation between " + after + " and " + by);
            }
        }

        double middle() {
            return (after + by) / 2;
        }

        double variance() {
            return Math.max((by - after) * (by - after) / 12, ONE_DAY);
        }
    }

    /// The shed before laying.
    record PreLayShed(double day) implements Sign {}
}
