package clutchwright.engine.season;

import java.util.Collection;
import java.util.OptionalDouble;

/// Days of the year as places on a circle: the last of December is next to the first of January.
public final class DayOfYear {

    /// Days of a year in the Gregorian calendar, on average.
    public static final double YEAR = 365.2425;

    private DayOfYear() {}

    /// The day about which some days lie; empty if there are none, or if they lie all around the
    /// year.
    ///
    /// @return above 0, up to [#YEAR]
    public static OptionalDouble mean(Collection<Double> days) {
        var x = 0.0;
        var y = 0.0;
        for (var day : days) {
            x += Math.cos(2 * Math.PI * day / YEAR);
            y += Math.sin(2 * Math.PI * day / YEAR);
        }
        if (Math.hypot(x, y) < 1e-9 * (1 + days.size())) {
            return OptionalDouble.empty();
        }
        var mean = Math.atan2(y, x) * YEAR / (2 * Math.PI);
        return OptionalDouble.of(mean > 0 ? mean : mean + YEAR);
    }

    /// The day on the line about an anchor: at most half a year from it.
    public static double near(double day, double anchor) {
        var turned = (day - anchor + YEAR / 2) % YEAR;
        return anchor + (turned < 0 ? turned + YEAR : turned) - YEAR / 2;
    }
}
