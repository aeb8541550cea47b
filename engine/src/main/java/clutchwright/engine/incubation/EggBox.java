package clutchwright.engine.incubation;

/// A box of eggs in an incubator: the eggs' own heat warms them above its set point.
///
/// Two bodies, the eggs and the box's air, and the incubator's air around them. Source of the
/// formulas: `docs/mathematics.md`, "The egg box".
public record EggBox(EmbryoHeat heat, Conductance conductance, Pile pile, double eggGrams) {

    private static final int MOST_ROUNDS = 200;
    private static final double SETTLED_KELVIN = 1e-12;

    /// How eggs pass heat to the air about them.
    ///
    /// @param wattsPerSquareMetreKelvin of the shells' air, above zero
    /// @param eggSquareMetres surface of one egg, above zero
    /// @param exponent 2/3 for eggs that stick together in a heap, 1 for eggs apart
    public record Pile(double wattsPerSquareMetreKelvin, double eggSquareMetres, double exponent) {

        public static final Pile STANDARD = new Pile(6, 0.0095, 0.8);

        public Pile {
            if (!(wattsPerSquareMetreKelvin > 0 && eggSquareMetres > 0)
                    || !(exponent > 0 && exponent <= 1)) {
                throw new IllegalArgumentException(
                        "a heap of %s W/m²K, %s m² an egg, exponent %s"
                                .formatted(wattsPerSquareMetreKelvin, eggSquareMetres, exponent));
            }
        }

        double wattsPerKelvin(int eggs) {
            return wattsPerSquareMetreKelvin * eggSquareMetres * Math.pow(eggs, exponent);
        }
    }

    /// What a box comes to, all heat given off.
    ///
    /// @param wattsPerEgg at the eggs' temperature
    /// @param boxRiseKelvin of the box's air over the incubator's
    /// @param eggRiseKelvin of the eggs over the box's air
    public record Warmth(
            Celsius incubator, double wattsPerEgg, double boxRiseKelvin, double eggRiseKelvin) {

        public double riseKelvin() {
            return boxRiseKelvin + eggRiseKelvin;
        }

        public Celsius box() {
            return incubator.plus(boxRiseKelvin);
        }

        public Celsius egg() {
            return incubator.plus(riseKelvin());
        }

        /// The inside of the lid.
        public Celsius lid() {
            return incubator.plus(boxRiseKelvin * (1 - Conductance.lidShare()));
        }

        /// The relative humidity of the box's air above which water forms under the lid.
        public double condensesAbove() {
            return Moisture.saturationPascals(lid()) / Moisture.saturationPascals(box());
        }
    }

    public EggBox {
        if (!(eggGrams > 0 && eggGrams < 1e4)) {
            throw new IllegalArgumentException("an egg of " + eggGrams + " g");
        }
    }

    public static EggBox standard(EmbryoHeat.Shape shape, Conductance conductance) {
        return new EggBox(
                EmbryoHeat.standard(shape), conductance, Pile.STANDARD, EmbryoHeat.EGG_GRAMS);
    }

    /// What it comes to, given that warm eggs develop, and so warm, the faster.
    ///
    /// @param eggs alive, 0 or more; slugs and dead eggs give off no heat
    /// @param development of the eggs, 0 to 1
    /// @throws ArithmeticException if there is no end to it: so much heat in so tight a box
    public Warmth steady(int eggs, double development, Celsius incubator) {
        var now = atEggTemperature(eggs, development, incubator, incubator);
        for (var round = 0; round < MOST_ROUNDS; round++) {
            var next = atEggTemperature(eggs, development, incubator, now.egg());
            if (next.riseKelvin() > 100) {
                break;
            }
            if (Math.abs(next.riseKelvin() - now.riseKelvin()) < SETTLED_KELVIN) {
                return next;
            }
            now = next;
        }
        throw new ArithmeticException(
                "%d eggs at %s W/K do not settle".formatted(eggs, conductance.wattsPerKelvin()));
    }

    /// What it comes to if the eggs' heat is what it would be at a temperature.
    public Warmth atEggTemperature(
            int eggs, double development, Celsius incubator, Celsius eggTemperature) {
        if (eggs < 0) {
            throw new IllegalArgumentException(eggs + " eggs");
        }
        var watts = heat.watts(development, eggTemperature, eggGrams);
        if (eggs == 0) {
            return new Warmth(incubator, watts, 0, 0);
        }
        return new Warmth(
                incubator,
                watts,
                eggs * watts / conductance.wattsPerKelvin(),
                eggs * watts / pile.wattsPerKelvin(eggs));
    }

    /// The highest set point at which the eggs stay at or below a temperature, to 1e-9 K.
    ///
    /// @param development at which they are to do so; late eggs are the warmest
    public Celsius highestSetPoint(int eggs, double development, Celsius warmestEgg) {
        var low = warmestEgg.degrees() - 20;
        var high = warmestEgg.degrees();
        while (high - low > 1e-9) {
            var middle = new Celsius((low + high) / 2);
            if (steady(eggs, development, middle).egg().compareTo(warmestEgg) > 0) {
                high = middle.degrees();
            } else {
                low = middle.degrees();
            }
        }
        return new Celsius(low);
    }
}
