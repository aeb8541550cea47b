package clutchwright.engine.probability;

/// A predictive distribution over days: normal, or normal but surely later than some day.
///
/// Days are numbered along one line from any day the caller chooses.
///
/// @param centre the mean if nothing is excluded
/// @param spreadDays the standard deviation if nothing is excluded, above zero
/// @param notBefore the day before which it surely does not happen; minus infinity if there is
///     none
public record Forecast(double centre, double spreadDays, double notBefore) {

    public Forecast {
        if (!Double.isFinite(centre) || !(spreadDays > 0 && spreadDays < 1e6)) {
            throw new IllegalArgumentException(
                    "a forecast of %s ± %s".formatted(centre, spreadDays));
        }
    }

    public static Forecast of(double mean, double sdDays) {
        return new Forecast(mean, sdDays, Double.NEGATIVE_INFINITY);
    }

    /// Given that it has not happened by that day.
    public Forecast notBy(double day) {
        return new Forecast(centre, spreadDays, Math.max(day, notBefore));
    }

    public double mean() {
        return centre + spreadDays * hazard();
    }

    public double sdDays() {
        var h = hazard();
        return spreadDays * Math.sqrt(Math.max(0, 1 + (h == 0 ? 0 : excluded() * h) - h * h));
    }

    /// The day by which it has happened with that chance.
    ///
    /// @param chance within 0 to 1, both excluded
    public double quantile(double chance) {
        // In the upper tail, so that nothing is lost where the excluded part is nearly all.
        var above = Normal.above(excluded()) * (1 - chance);
        return centre - spreadDays * Normal.quantile(above);
    }

    /// The chance that it happens no later than that day.
    public double by(double day) {
        if (day <= notBefore) {
            return 0;
        }
        return 1 - Normal.above((day - centre) / spreadDays) / Normal.above(excluded());
    }

    private double excluded() {
        return (notBefore - centre) / spreadDays;
    }

    private double hazard() {
        return Double.isFinite(notBefore)
                ? Normal.density(excluded()) / Normal.above(excluded())
                : 0;
    }
}
