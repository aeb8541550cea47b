package clutchwright.engine.incubation;

import clutchwright.engine.probability.Normal;

/// A predictive distribution of the day on which eggs pip, in days from laying.
///
/// @param perDayAhead development a day after the last reading, above zero
/// @param spread standard deviation of log development at pipping
/// @param notByChance how much of the distribution is over without a pip, 0 to below 1
public record HatchForecast(
        Development felt, double perDayAhead, double spread, double notByChance) {

    private static final int POINTS_OF_MEAN = 2000;

    public HatchForecast {
        if (!(perDayAhead > 0 && spread > 0 && notByChance >= 0 && notByChance < 1)) {
            throw new IllegalArgumentException(
                    "%s a day ahead, spread %s, %s over"
                            .formatted(perDayAhead, spread, notByChance));
        }
    }

    HatchForecast(Development felt, double perDayAhead, double spread) {
        this(felt, perDayAhead, spread, 0);
    }

    /// Given that none has pipped by that day.
    public HatchForecast notBy(double day) {
        return new HatchForecast(felt, perDayAhead, spread, before(day));
    }

    /// The chance that they have pipped by that day.
    public double by(double day) {
        return Math.max(0, (before(day) - notByChance) / (1 - notByChance));
    }

    /// The day by which they have pipped with that chance.
    ///
    /// @param chance within 0 to 1, both excluded
    public double quantile(double chance) {
        var of = notByChance + chance * (1 - notByChance);
        return felt.dayOf(Math.exp(spread * Normal.quantile(of)), perDayAhead);
    }

    /// By equal parts of the chance.
    public double mean() {
        var sum = 0.0;
        for (var part = 0; part < POINTS_OF_MEAN; part++) {
            sum += quantile((part + 0.5) / POINTS_OF_MEAN);
        }
        return sum / POINTS_OF_MEAN;
    }

    private double before(double day) {
        var development = felt.on(day, perDayAhead);
        return development <= 0 ? 0 : Normal.below(Math.log(development) / spread);
    }
}
