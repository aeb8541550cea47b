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
