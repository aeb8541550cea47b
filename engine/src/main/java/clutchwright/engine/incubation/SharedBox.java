package clutchwright.engine.incubation;

import clutchwright.engine.incubation.EggBox.Pile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/// A box in which eggs of several ages lie, each clutch a heap of its own: they share the box's
/// air, which all of them warm.
///
/// With one clutch it is an [EggBox]. Source of the formulas: `docs/mathematics.md`, "The egg box".
public record SharedBox(EmbryoHeat heat, Conductance conductance, Pile pile, List<Lot> lots) {

    private static final int MOST_ROUNDS = 400;
    private static final double SETTLED_KELVIN = 1e-12;

    /// Eggs of one clutch.
    ///
    /// @param eggs alive, 0 or more
    /// @param development 0 at laying to 1 at pipping
    /// @param eggGrams weight of one
    public record Lot(int eggs, double development, double eggGrams) {

        public Lot {
            if (eggs < 0 || !(development >= 0 && development <= 1)) {
                throw new IllegalArgumentException(eggs + " eggs at " + development);
            }
            if (!(eggGrams > 0 && eggGrams < 1e4)) {
                throw new IllegalArgumentException("an egg of " + eggGrams + " g");
            }
        }

        Lot grownTo(double reached) {
            return new Lot(eggs, reached, eggGrams);
        }
    }

    /// What the box comes to, all heat given off.
    ///
    /// @param lots each clutch's eggs in this box's air, in the order in which they were given
    public record Warmth(List<EggBox.Warmth> lots) {

        public Warmth {
            lots = List.copyOf(lots);
        }

        /// @throws java.util.NoSuchElementException if there is no clutch
        public Celsius warmestEgg() {
            return lots.stream()
                    .map(EggBox.Warmth::egg)
                    .max(Comparator.naturalOrder())
                    .orElseThrow();
        }
    }

    public SharedBox {
        lots = List.copyOf(lots);
    }

    public SharedBox with(List<Lot> others) {
        return new SharedBox(heat, conductance, pile, others);
    }

    /// What it comes to, given that warm eggs develop, and so warm, the faster.
    ///
    /// @throws ArithmeticException if there is no end to it: so much heat in so tight a box
    public Warmth steady(Celsius incubator) {
        var now = new ArrayList<>(lots.stream().map(_ -> incubator).toList());
        for (var round = 0; round < MOST_ROUNDS; round++) {
            var next = at(now, incubator);
            var moved = 0.0;
            for (var i = 0; i < now.size(); i++) {
                moved =
                        Math.max(
                                moved,
                                Math.abs(
                                        next.lots().get(i).egg().degrees() - now.get(i).degrees()));
                if (next.lots().get(i).riseKelvin() > 100) {
                    throw new ArithmeticException("the eggs' heat does not settle");
                }
                now.set(i, next.lots().get(i).egg());
            }
            if (moved < SETTLED_KELVIN) {
                return next;
            }
        }
        throw new ArithmeticException("the eggs' heat does not settle");
    }

    /// If each clutch's heat is what it would be at those temperatures.
    private Warmth at(List<Celsius> eggs, Celsius incubator) {
        var watts = new ArrayList<Double>();
        var sum = 0.0;
        for (var i = 0; i < lots.size(); i++) {
            var lot = lots.get(i);
            var each = heat.watts(lot.development(), eggs.get(i), lot.eggGrams());
            watts.add(each);
            sum += lot.eggs() * each;
        }
        var boxRise = sum / conductance.wattsPerKelvin();
        var warmths = new ArrayList<EggBox.Warmth>();
        for (var i = 0; i < lots.size(); i++) {
            var many = lots.get(i).eggs();
            warmths.add(
                    new EggBox.Warmth(
                            incubator,
                            watts.get(i),
                            boxRise,
                            many == 0 ? 0 : many * watts.get(i) / pile.wattsPerKelvin(many)));
        }
        return new Warmth(warmths);
    }
}
