package clutchwright.engine.incubation;

/// When eggs hatch, from what they have felt.
///
/// Development is summed up from the temperatures; eggs pip when it is near 1, give or take a
/// share: log s is normal about 0. Source: `docs/mathematics.md`, "Hatching".
///
/// @param spread standard deviation of log s at pipping, above zero
public record HatchModel(DevelopmentRate rate, double spread) {

    /// Of a clutch among others 0.030, of the house 0.025, of a sensor 0.016.
    public static final double SPREAD = 0.042;

    /// Of past clutches about the house's own constant.
    private static final double CLUTCH_SPREAD = 0.03;

    private static final double HOUSE_SPREAD = 0.05;

    public static final HatchModel STANDARD = new HatchModel(DevelopmentRate.standard(), SPREAD);

    public HatchModel {
        if (!(spread > 0 && spread < 1)) {
            throw new IllegalArgumentException("a spread of " + spread);
        }
    }

    /// At one temperature from laying to hatching.
    public HatchForecast constant(Celsius egg) {
        return new HatchForecast(Development.none(), rate.perDay(egg), spread);
    }

    /// After a course of temperatures, if it goes on at a rate.
    ///
    /// @param perDay development ahead, above zero
    public HatchForecast after(Development felt, double perDay) {
        return new HatchForecast(felt, perDay, Math.hypot(spread, felt.uncertainty()));
    }

    /// A house's own days at 31.7 °C, learnt from its clutches.
    ///
    /// @param logMean of the days
    /// @param logSd how well that is known
    public record HouseDays(double logMean, double logSd) {

        public double days() {
            return Math.exp(logMean);
        }

        /// Of the next clutch.
        public double predictiveLogSd() {
            return Math.hypot(logSd, CLUTCH_SPREAD);
        }
    }

    /// @param referenceDays of each finished clutch, from laying to pipping, as if at 31.7 °C
    public static HouseDays learn(Iterable<Double> referenceDays) {
        var precision = 1 / (HOUSE_SPREAD * HOUSE_SPREAD);
        var sum = Math.log(DevelopmentRate.REFERENCE_DAYS) * precision;
        for (var days : referenceDays) {
            precision += 1 / (CLUTCH_SPREAD * CLUTCH_SPREAD);
            sum += Math.log(days) / (CLUTCH_SPREAD * CLUTCH_SPREAD);
        }
        return new HouseDays(sum / precision, 1 / Math.sqrt(precision));
    }
}
