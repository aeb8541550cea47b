package clutchwright.engine.season;

import clutchwright.engine.probability.Normal;

/// How far apart a female's lay days of two seasons are, as the priors have it: what a keeper can
/// hold against experience ("often within a week, sometimes a month").
///
/// Source of the formulas: `docs/mathematics.md`, "When she will lay".
///
/// @param medianDays as often closer as farther apart, above zero
public record YearToYear(Tails tails, double medianDays) {

    /// How often a difference is far beyond the usual.
    public enum Tails {
        NORMAL {
            @Override
            double above(double x) {
                return Normal.above(x);
            }
        },
        /// Student's distribution with four degrees of freedom, in closed form.
        STUDENT_4 {
            @Override
            double above(double x) {
                var square = x * x / 4;
                var root = Math.sqrt(1 + square);
                return 0.5 - 0.375 * x / root * (1 - square / (3 * (1 + square)));
            }
        };

        /// The chance of a value above that, of the distribution as it is tabled.
        ///
        /// @param x 0 or more
        abstract double above(double x);

        /// What one in four are above.
        double upperQuartile() {
            var low = 0.0;
            var high = 1.0;
            for (var step = 0; step < 60; step++) {
                var middle = (low + high) / 2;
                if (above(middle) > 0.25) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return (low + high) / 2;
        }
    }

    public YearToYear {
        if (!(medianDays > 0 && medianDays < 1e6)) {
            throw new IllegalArgumentException("a median of " + medianDays + " days, not above 0");
        }
    }

    /// The normal model's; other tails are given the same median.
    public static YearToYear of(LayPriors priors, Tails tails) {
        return new YearToYear(tails, priors.yearToYearSdDays() * Tails.NORMAL.upperQuartile());
    }

    /// By which the tabled distribution is stretched.
    public double scaleDays() {
        return medianDays / tails.upperQuartile();
    }

    /// The chance that the two are no farther apart than that.
    ///
    /// @param days 0 or more
    public double within(double days) {
        return 1 - beyond(days);
    }

    /// The chance that they are farther apart.
    ///
    /// @param days 0 or more
    public double beyond(double days) {
        return 2 * tails.above(days / scaleDays());
    }
}
