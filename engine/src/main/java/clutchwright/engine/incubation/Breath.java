package clutchwright.engine.incubation;

/// The oxygen that eggs take from a box.
public final class Breath {

    /// From memory, as in texts of physiology.
    static final double JOULES_PER_MILLILITRE = 20;

    private static final double OUTSIDE = 0.2095;

    private Breath() {}

    /// @param watts of all eggs
    public static double millilitresPerHour(double watts) {
        return watts * 3600 / JOULES_PER_MILLILITRE;
    }

    /// How long a sealed box lasts until its air holds no more than a share of oxygen.
    ///
    /// @param lowest share of oxygen, 0 to 0.2095
    public static double sealedHours(double watts, double boxLitres, double lowest) {
        return boxLitres * 1000 * (OUTSIDE - lowest) / millilitresPerHour(watts);
    }

    /// How often an hour a box's air must be renewed to hold that much oxygen.
    public static double changesPerHour(double watts, double boxLitres, double lowest) {
        return millilitresPerHour(watts) / (boxLitres * 1000 * (OUTSIDE - lowest));
    }
}
