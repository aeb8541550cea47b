package clutchwright.engine.incubation;

/// The heat of a live egg by its development and temperature.
///
/// Over an incubation it gives off the same energy whatever the temperature; when, is the shape's.
/// Source of the formulas: `docs/mathematics.md`, "The egg box".
///
/// @param joulesPerGram of egg, over the whole incubation; above zero
public record EmbryoHeat(Shape shape, DevelopmentRate rate, double joulesPerGram) {

    /// An egg's weight where it is not known: from memory, 65 to 105 g.
    public static final double EGG_GRAMS = 85;

    /// 3.6 litres of oxygen an egg (Ellis and Chappell 1987) at 20 J/mL.
    public static final double JOULES_PER_GRAM = 72_000 / EGG_GRAMS;

    private static final double SECONDS_PER_DAY = 86_400;

    /// How the heat rises over development. What is published does not settle which it is.
    public enum Shape {
        LOGISTIC {
            @Override
            double height(double development) {
                return 1 / (1 + Math.exp(-(development - HALF) / WIDTH));
            }

            @Override
            double mean() {
                return WIDTH
                        * (Math.log1p(Math.exp((1 - HALF) / WIDTH))
                                - Math.log1p(Math.exp(-HALF / WIDTH)));
            }
        },
        EXPONENTIAL {
            @Override
            double height(double development) {
                return Math.exp(STEEPNESS * (development - 1));
            }

            @Override
            double mean() {
                return (1 - Math.exp(-STEEPNESS)) / STEEPNESS;
            }
        };

        private static final double HALF = 0.68;
        private static final double WIDTH = 0.1;
        private static final double STEEPNESS = 4;

        /// Not scaled.
        abstract double height(double development);

        /// Of the height, over development from 0 to 1.
        abstract double mean();
    }

    public EmbryoHeat {
        if (!(joulesPerGram > 0 && joulesPerGram < 1e6)) {
            throw new IllegalArgumentException(joulesPerGram + " J/g, not above 0");
        }
    }

    public static EmbryoHeat standard(Shape shape) {
        return new EmbryoHeat(shape, DevelopmentRate.standard(), JOULES_PER_GRAM);
    }

    /// Watts of one live egg.
    ///
    /// @param development from 0 at laying to 1 at pipping
    /// @param eggGrams above zero
    public double watts(double development, Celsius egg, double eggGrams) {
        if (!(development >= 0 && development <= 1)) {
            throw new IllegalArgumentException(
                    "development is " + development + ", not within 0 to 1");
        }
        if (!(eggGrams > 0 && eggGrams < 1e4)) {
            throw new IllegalArgumentException("an egg of " + eggGrams + " g");
        }
        return joulesPerGram
                * eggGrams
                * rate.perDay(egg)
                / SECONDS_PER_DAY
                * shape.height(development)
                / shape.mean();
    }
}
