package clutchwright.engine.incubation;

import java.util.ArrayList;
import java.util.List;

/// A whole incubation of one box at one set point, day by day.
///
/// @param days from laying; the last is the day on which development is complete
/// @param hatchDay in days from laying
public record BoxCourse(List<Day> days, double hatchDay) {

    private static final int STEPS_A_DAY = 100;
    private static final int MOST_DAYS = 200;

    public BoxCourse {
        days = List.copyOf(days);
    }

    /// @param development at its beginning
    public record Day(int day, double development, EggBox.Warmth warmth) {}

    /// @param eggs alive, all the time
    /// @throws ArithmeticException if the eggs' heat does not settle, or they never hatch
    public static BoxCourse of(EggBox box, int eggs, Celsius setPoint) {
        var days = new ArrayList<Day>();
        var development = 0.0;
        for (var step = 0; step < MOST_DAYS * STEPS_A_DAY; step++) {
            var warmth = box.steady(eggs, Math.min(1, development), setPoint);
            if (step % STEPS_A_DAY == 0) {
                days.add(new Day(step / STEPS_A_DAY, development, warmth));
            }
            var grown = box.heat().rate().perDay(warmth.egg()) / STEPS_A_DAY;
            if (development + grown >= 1) {
                return new BoxCourse(days, (step + (1 - development) / grown) / STEPS_A_DAY);
            }
            development += grown;
        }
        throw new ArithmeticException("no hatching within " + MOST_DAYS + " days");
    }
}
