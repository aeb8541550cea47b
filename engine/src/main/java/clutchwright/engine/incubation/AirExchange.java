package clutchwright.engine.incubation;

/// How a box's air is renewed from the incubator's: it carries off water, and with the water heat.
///
/// Source of the formulas: `docs/mathematics.md`, "The egg box".
///
/// @param changesPerHour of the box's air, 0 or more
/// @param litres of air in the box, above zero
public record AirExchange(double changesPerHour, double litres) {

    /// Of air at constant pressure near 30 °C.
    private static final double JOULES_PER_CUBIC_METRE_KELVIN = 1.16 * 1006;

    public AirExchange {
        // Written so that NaN fails.
        if (!(changesPerHour >= 0 && changesPerHour < 1e6 && litres > 0 && litres < 1e6)) {
            throw new IllegalArgumentException(
                    "%s changes an hour of %s litres of air".formatted(changesPerHour, litres));
        }
    }

    /// Air by its temperature and relative humidity.
    ///
    /// @param relativeHumidity above 0, at most 1
    public record Air(Celsius celsius, double relativeHumidity) {

        double gramsPerCubicMetre() {
            return Moisture.gramsPerCubicMetre(celsius, relativeHumidity);
        }
    }

    /// Water that leaves the box in a day; negative where the incubator's air is the damper.
    public double gramsPerDay(Air box, Air incubator) {
        return 24
                * changesPerHour
                * litres
                / 1000
                * (box.gramsPerCubicMetre() - incubator.gramsPerCubicMetre());
    }

    /// Heat that leaves the box with that water.
    public double wattsOfVapour(Air box, Air incubator) {
        return Moisture.wattsOfEvaporation(gramsPerDay(box, incubator));
    }

    /// What the renewed air itself adds to a box's conductance: next to nothing.
    public double wattsPerKelvin() {
        return JOULES_PER_CUBIC_METRE_KELVIN * changesPerHour * litres / 1000 / 3600;
    }
}
