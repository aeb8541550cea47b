package clutchwright.engine.incubation;

import clutchwright.engine.incubation.SharedBox.Lot;
import java.util.ArrayList;
import java.util.List;

/// A box of several clutches from now on, at one set point: each clutch leaves it when it pips.
///
/// @param hatchDays in days from now, of each clutch in the order in which they were given
/// @param warmest the warmest that any egg gets
/// @param warmestDay in days from now
/// @param warmestLot which clutch that is, from 0
public record SharedCourse(
        List<Double> hatchDays, Celsius warmest, double warmestDay, int warmestLot) {

    private static final int STEPS_A_DAY = 24;
    private static final int MOST_DAYS = 200;

    public SharedCourse {
        hatchDays = List.copyOf(hatchDays);
    }

    /// @param box with an egg in it at least
    /// @throws ArithmeticException if the eggs' heat does not settle, or they never hatch
    public static SharedCourse of(SharedBox box, Celsius setPoint) {
        var lots = new ArrayList<>(box.lots());
        var hatch = new ArrayList<Double>();
        lots.forEach(_ -> hatch.add(Double.NaN));
        var warmest = setPoint;
        var warmestDay = 0.0;
        var warmestLot = 0;
        var left = lots.stream().filter(lot -> lot.eggs() > 0).count();
        for (var step = 0; step < MOST_DAYS * STEPS_A_DAY && left > 0; step++) {
            var warmth = box.with(lots).steady(setPoint);
            for (var i = 0; i < lots.size(); i++) {
                var lot = lots.get(i);
                if (lot.eggs() == 0) {
                    continue;
                }
                var egg = warmth.lots().get(i).egg();
                if (egg.compareTo(warmest) > 0) {
                    warmest = egg;
                    warmestDay = (double) step / STEPS_A_DAY;
                    warmestLot = i;
                }
                var grown = box.heat().rate().perDay(egg) / STEPS_A_DAY;
                if (lot.development() + grown >= 1) {
                    hatch.set(i, (step + (1 - lot.development()) / grown) / STEPS_A_DAY);
                    lots.set(i, new Lot(0, 1, lot.eggGrams()));
                    left--;
                } else {
                    lots.set(i, lot.grownTo(lot.development() + grown));
                }
            }
        }
        if (left > 0) {
            throw new ArithmeticException("no hatching within " + MOST_DAYS + " days");
        }
        return new SharedCourse(
                hatch.stream().filter(day -> !day.isNaN()).toList(),
                warmest,
                warmestDay,
                warmestLot);
    }
}
