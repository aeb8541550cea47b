package clutchwright.engine.incubation;

/// How fast embryos develop at a temperature: the share of the incubation that a day is worth.
///
/// Source of the formulas: `docs/mathematics.md`, "Hatching".
public sealed interface DevelopmentRate {

    /// Where the rate is known; beyond it development flattens, or the embryo suffers.
    double COOLEST_CELSIUS = 26;

    double WARMEST_CELSIUS = 33.3;

    /// Days of incubation at 31.7 °C, as keepers count it.
    double REFERENCE_DAYS = 57;

    Celsius REFERENCE = new Celsius(31.7);

    double Q10 = 1.7;

    /// 57 days at 31.7 °C, and 1.7 times as fast ten degrees warmer.
    static DevelopmentRate standard() {
        return new Exponential(REFERENCE_DAYS, Q10);
    }

    /// @return share a day, above zero; zero only where [DegreeDays] has no development
    double perDay(Celsius egg);

    /// Days from laying to hatching at a constant temperature.
    default double days(Celsius egg) {
        return 1 / perDay(egg);
    }

    /// Whether the rate is known at that temperature.
    static boolean isKnownAt(Celsius egg) {
        return egg.degrees() >= COOLEST_CELSIUS && egg.degrees() <= WARMEST_CELSIUS;
    }

    /// Faster by a constant factor with every ten degrees.
    ///
    /// @param referenceDays at 31.7 °C, above zero
    /// @param q10 above zero
    record Exponential(double referenceDays, double q10) implements DevelopmentRate {

        public Exponential {
            requireAboveZero("days", referenceDays);
            requireAboveZero("Q10", q10);
        }

        @Override
        public double perDay(Celsius egg) {
            return Math.pow(q10, (egg.degrees() - REFERENCE.degrees()) / 10) / referenceDays;
        }
    }

    /// Sharpe and DeMichele's rate as Schoolfield and others wrote it (1981), high temperatures
    /// only: as above at 31.7 °C, and flattening towards 37.5 °C.
    ///
    /// @param referenceDays at 31.7 °C, above zero
    record Flattening(double referenceDays) implements DevelopmentRate {

        private static final double GAS = 8.314462618;
        private static final double HALF_INACTIVE_KELVIN = 310.65;
        private static final double INACTIVATION = 600_000;

        public Flattening {
            requireAboveZero("days", referenceDays);
        }

        @Override
        public double perDay(Celsius egg) {
            var reference = REFERENCE.kelvin();
            var activation = GAS * Math.log(Q10) * reference * reference / 10;
            return Math.exp(activation / GAS * (1 / reference - 1 / egg.kelvin()))
                    * active(egg.kelvin())
                    / active(reference)
                    / referenceDays;
        }

        private static double active(double kelvin) {
            return 1 / (1 + Math.exp(INACTIVATION / GAS * (1 / HALF_INACTIVE_KELVIN - 1 / kelvin)));
        }
    }

    /// The straight line that keepers reckon with: so many degrees above a base, so many days.
    ///
    /// @param base below which there is no development
    /// @param degreeDays from laying to hatching, above zero
    record DegreeDays(Celsius base, double degreeDays) implements DevelopmentRate {

        public DegreeDays {
            requireAboveZero("degree-days", degreeDays);
        }

        /// The line that touches a curve: as fast there, and as much faster a little warmer. Good
        /// within two degrees, and worse beyond.
        public static DegreeDays touching(Exponential curve, Celsius at) {
            if (!(curve.q10() > 1)) {
                throw new IllegalArgumentException(
                        "Q10 is " + curve.q10() + ", not above 1: no base below");
            }
            var aboveBase = 10 / Math.log(curve.q10());
            return new DegreeDays(at.plus(-aboveBase), aboveBase * curve.days(at));
        }

        @Override
        public double perDay(Celsius egg) {
            return Math.max(0, egg.degrees() - base.degrees()) / degreeDays;
        }
    }

    private static void requireAboveZero(String what, double value) {
        if (!(value > 0 && value < 1e6)) {
            throw new IllegalArgumentException(what + " is " + value + ", not above 0");
        }
    }
}
