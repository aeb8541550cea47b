package clutchwright.engine.incubation;

/// How a box of eggs warms up and cools down: two bodies that pass heat to each other, and one of
/// them to the air around, solved in closed form.
///
/// @param eggJoulesPerKelvin of all eggs, above zero
/// @param boxJoulesPerKelvin of air, substrate, water and tub, above zero
/// @param eggToBoxWattsPerKelvin above zero
public record ThermalMass(
        double eggJoulesPerKelvin,
        double boxJoulesPerKelvin,
        double eggToBoxWattsPerKelvin,
        Conductance conductance) {

    /// Of an egg: between a hen's, 3.18, and water's.
    private static final double JOULES_PER_GRAM_KELVIN = 3.4;

    public ThermalMass {
        if (!(eggJoulesPerKelvin > 0 && boxJoulesPerKelvin > 0 && eggToBoxWattsPerKelvin > 0)) {
            throw new IllegalArgumentException(
                    "%s J/K of eggs, %s J/K of box, %s W/K between them"
                            .formatted(
                                    eggJoulesPerKelvin,
                                    boxJoulesPerKelvin,
                                    eggToBoxWattsPerKelvin));
        }
    }

    /// @param eggs one or more
    /// @param boxJoulesPerKelvin of air, substrate, water and tub
    public static ThermalMass of(EggBox box, int eggs, double boxJoulesPerKelvin) {
        return new ThermalMass(
                eggs * box.eggGrams() * JOULES_PER_GRAM_KELVIN,
                boxJoulesPerKelvin,
                box.pile().wattsPerKelvin(eggs),
                box.conductance());
    }

    /// Kelvin above the air around.
    public record Excess(double eggKelvin, double boxKelvin) {}

    /// Where a steady heat of the eggs leads.
    public Excess limit(double watts) {
        var box = watts / conductance.wattsPerKelvin();
        return new Excess(box + watts / eggToBoxWattsPerKelvin, box);
    }

    /// The slower and the faster of the two times in which a difference falls to 1/e.
    ///
    /// @return in seconds, the longer one in front
    public double[] timeConstantsSeconds() {
        var m = rates();
        return new double[] {-1 / m.slow(), -1 / m.fast()};
    }

    /// What has become of an excess after a time.
    ///
    /// @param watts of all eggs, the same all the time
    public Excess after(double seconds, Excess start, double watts) {
        var m = rates();
        var limit = limit(watts);
        var egg = start.eggKelvin() - limit.eggKelvin();
        var box = start.boxKelvin() - limit.boxKelvin();
        // exp(M t) of a matrix with two real eigenvalues.
        var slow = Math.exp(m.slow() * seconds);
        var fast = Math.exp(m.fast() * seconds);
        var between = (slow - fast) / (m.slow() - m.fast());
        var same = slow - m.slow() * between;
        return new Excess(
                limit.eggKelvin() + same * egg + between * (m.eggEgg() * egg - m.eggEgg() * box),
                limit.boxKelvin() + same * box + between * (m.boxEgg() * egg + m.boxBox() * box));
    }

    private record Rates(double eggEgg, double boxEgg, double boxBox, double slow, double fast) {}

    private Rates rates() {
        var eggEgg = -eggToBoxWattsPerKelvin / eggJoulesPerKelvin;
        var boxEgg = eggToBoxWattsPerKelvin / boxJoulesPerKelvin;
        var boxBox = -(eggToBoxWattsPerKelvin + conductance.wattsPerKelvin()) / boxJoulesPerKelvin;
        var trace = eggEgg + boxBox;
        var determinant = eggEgg * boxBox + eggEgg * boxEgg;
        // Two bodies in a row: the roots are real, negative and apart.
        var root = Math.sqrt(trace * trace - 4 * determinant);
        return new Rates(eggEgg, boxEgg, boxBox, (trace + root) / 2, (trace - root) / 2);
    }
}
