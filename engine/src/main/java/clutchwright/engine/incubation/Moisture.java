package clutchwright.engine.incubation;

/// Water in air and on surfaces.
///
/// Saturation by IAPWS-IF97, region 4 (release R7-97), over liquid water, and its own inverse for
/// the dew point.
public final class Moisture {

    private static final double[] N = {
        0.11670521452767e4,
        -0.72421316703206e6,
        -0.17073846940092e2,
        0.12020824702470e5,
        -0.32325550322333e7,
        0.14915108613530e2,
        -0.48232657361591e4,
        0.40511340542057e6,
        -0.23855557567849,
        0.65017534844798e3
    };
    private static final double PASCALS_PER_MEGAPASCAL = 1e6;
    private static final double VAPOUR_JOULES_PER_KILOGRAM_KELVIN = 461.526;

    /// Where the formula holds: water's triple and critical point.
    private static final double COLDEST = 0;

    private static final double HOTTEST = 373.9;

    /// From memory; near 30 °C.
    private static final double EVAPORATION_JOULES_PER_KILOGRAM = 2.43e6;

    private Moisture() {}

    /// The pressure of water vapour over liquid water.
    ///
    /// @throws IllegalArgumentException below 0 °C or near water's critical point
    public static double saturationPascals(Celsius temperature) {
        if (temperature.degrees() < COLDEST || temperature.degrees() > HOTTEST) {
            throw new IllegalArgumentException("vapour over liquid water at " + temperature);
        }
        var t = temperature.kelvin();
        var theta = t + N[8] / (t - N[9]);
        var a = theta * theta + N[0] * theta + N[1];
        var b = N[2] * theta * theta + N[3] * theta + N[4];
        var c = N[5] * theta * theta + N[6] * theta + N[7];
        return Math.pow(2 * c / (-b + Math.sqrt(b * b - 4 * a * c)), 4) * PASCALS_PER_MEGAPASCAL;
    }

    /// The temperature at which vapour of that pressure condenses.
    ///
    /// @throws IllegalArgumentException if that is below 0 °C
    public static Celsius dewPointOf(double pascals) {
        if (!(pascals >= 611 && pascals < 22e6)) {
            throw new IllegalArgumentException("a dew point of " + pascals + " Pa");
        }
        var beta = Math.pow(pascals / PASCALS_PER_MEGAPASCAL, 0.25);
        var e = beta * beta + N[2] * beta + N[5];
        var f = N[0] * beta * beta + N[3] * beta + N[6];
        var g = N[1] * beta * beta + N[4] * beta + N[7];
        var d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
        var sum = N[9] + d;
        return new Celsius((sum - Math.sqrt(sum * sum - 4 * (N[8] + N[9] * d))) / 2 - 273.15);
    }

    /// @param relativeHumidity above 0, at most 1
    public static Celsius dewPoint(Celsius air, double relativeHumidity) {
        requireHumidity(relativeHumidity);
        return dewPointOf(relativeHumidity * saturationPascals(air));
    }

    /// The relative humidity of air above which water forms on a colder surface.
    public static double wetsAbove(Celsius surface, Celsius air) {
        return Math.min(1, saturationPascals(surface) / saturationPascals(air));
    }

    /// Grams of water in a cubic metre of air.
    public static double gramsPerCubicMetre(Celsius air, double relativeHumidity) {
        requireHumidity(relativeHumidity);
        return 1000
                * relativeHumidity
                * saturationPascals(air)
                / (VAPOUR_JOULES_PER_KILOGRAM_KELVIN * air.kelvin());
    }

    /// Kilograms of water to one of dry air.
    ///
    /// @param pascals of the air with its water
    public static double humidityRatio(Celsius air, double relativeHumidity, double pascals) {
        requireHumidity(relativeHumidity);
        var vapour = relativeHumidity * saturationPascals(air);
        return 0.621945 * vapour / (pascals - vapour);
    }

    /// Watts that so much evaporation takes.
    public static double wattsOfEvaporation(double gramsPerDay) {
        return EVAPORATION_JOULES_PER_KILOGRAM * gramsPerDay / 1000 / 86_400;
    }

    private static void requireHumidity(double relativeHumidity) {
        if (!(relativeHumidity > 0 && relativeHumidity <= 1)) {
            throw new IllegalArgumentException(
                    "relative humidity is " + relativeHumidity + ", not above 0 and up to 1");
        }
    }
}
