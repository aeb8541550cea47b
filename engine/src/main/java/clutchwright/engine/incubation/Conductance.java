package clutchwright.engine.incubation;

/// How much heat a box passes to the incubator's air for each degree between them.
///
/// Source of the formulas: `docs/mathematics.md`, "The egg box".
///
/// @param wattsPerKelvin above zero
public record Conductance(double wattsPerKelvin) {

    /// What a plastic tub of 20 litres has, about.
    public static final Conductance STANDARD = new Conductance(1.4);

    /// Radiation and still air on a side of the wall.
    private static final double FILM = 7;

    /// Polypropylene of 1.5 mm, from memory.
    private static final double WALL = 0.0015 / 0.2;

    /// What is left of the surface on a shelf among neighbours.
    private static final double FREE_SURFACE = 0.85;

    public Conductance {
        if (!(wattsPerKelvin > 0 && wattsPerKelvin < 1e4)) {
            throw new IllegalArgumentException(wattsPerKelvin + " W/K, not above 0");
        }
    }

    /// Of a plastic tub with a lid, by its outside.
    public static Conductance ofTub(double lengthMetres, double widthMetres, double heightMetres) {
        var surface =
                2
                        * (lengthMetres * widthMetres
                                + lengthMetres * heightMetres
                                + widthMetres * heightMetres);
        return new Conductance(FREE_SURFACE * perSquareMetre() * surface);
    }

    /// Of a box that a known heat warms steadily.
    public static Conductance ofSteadyRise(double watts, double kelvin) {
        return new Conductance(watts / kelvin);
    }

    /// Of an empty box that warms up, or cools down, by the time in which the difference falls to
    /// 1/e.
    ///
    /// @param joulesPerKelvin of the box, its substrate and its water
    public static Conductance ofCooling(double joulesPerKelvin, double seconds) {
        return new Conductance(joulesPerKelvin / seconds);
    }

    /// W/m²K of the wall.
    static double perSquareMetre() {
        return 1 / (1 / FILM + WALL + 1 / FILM);
    }

    /// Which part of the way from the box's air to the incubator's the lid's inside has come.
    static double lidShare() {
        return perSquareMetre() / FILM;
    }
}
