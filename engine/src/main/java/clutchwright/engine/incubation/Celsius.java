package clutchwright.engine.incubation;

/// A temperature in degrees Celsius.
///
/// @param degrees above absolute zero
public record Celsius(double degrees) implements Comparable<Celsius> {

    private static final double ABSOLUTE_ZERO = -273.15;

    public Celsius {
        // Written so that NaN fails.
        if (!(degrees > ABSOLUTE_ZERO && degrees < 1e4)) {
            throw new IllegalArgumentException(degrees + " °C");
        }
    }

    public static Celsius ofFahrenheit(double fahrenheit) {
        return new Celsius((fahrenheit - 32) / 1.8);
    }

    /// A temperature that is given in both scales, as in "30 °C (86 °F)".
    ///
    /// @throws IllegalArgumentException if the two are farther apart than rounding each to a whole
    ///     degree can bring them
    public static Celsius ofBoth(double celsius, double fahrenheit) {
        var here = new Celsius(celsius);
        var there = ofFahrenheit(fahrenheit);
        if (Math.abs(here.degrees() - there.degrees()) > 0.5 + 0.5 / 1.8) {
            throw new IllegalArgumentException(
                    "%.4g °C is %.4g °F, and %.4g °F is %.4g °C"
                            .formatted(celsius, here.fahrenheit(), fahrenheit, there.degrees()));
        }
        return here;
    }

    public double fahrenheit() {
        return degrees * 1.8 + 32;
    }

    public double kelvin() {
        return degrees - ABSOLUTE_ZERO;
    }

    public Celsius plus(double kelvin) {
        return new Celsius(degrees + kelvin);
    }

    @Override
    public int compareTo(Celsius that) {
        return Double.compare(degrees, that.degrees);
    }

    @Override
    public String toString() {
        return degrees + " °C";
    }
}
