package clutchwright.app.wording;

import clutchwright.engine.incubation.BoxTrace.Beside;
import clutchwright.engine.incubation.BoxTrace.Probe;
import clutchwright.engine.incubation.ConductanceEstimate;
import clutchwright.engine.incubation.HeatBalance;
import clutchwright.engine.incubation.HeatBalance.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/// What a logger tells of a box, in words.
public final class ConductanceWords {

    private ConductanceWords() {}

    public static String told(ConductanceEstimate.Told told, int hours) {
        return String.format(
                Locale.ENGLISH,
                "The box lets out %.2f W for each degree (%.2f to %.2f W/K at 95 %%): over %d steady hours its air was %.2f K above the incubator's.",
                told.conductance().wattsPerKelvin(),
                told.low().wattsPerKelvin(),
                told.high().wattsPerKelvin(),
                hours,
                told.riseKelvin());
    }

    public static String vague(ConductanceEstimate.TooVague vague, Probe probe) {
        return String.format(
                        Locale.ENGLISH,
                        "the box's air is %.2f K above the incubator's, give or take %.2f K: that does not tell what the box lets out. ",
                        vague.riseKelvin(),
                        vague.giveOrTakeKelvin())
                + switch (probe) {
                    case BOX ->
                            "Lay both sensors side by side for two hours and say by how much they differ, read the incubator's air beside the box, or read later eggs, or longer.";
                    case EGGS ->
                            "How eggs pass heat to the air about them is known to a factor of two only: expected a sensor in the box’s air.";
                };
    }

    public static String tooShort(Stated.TooShort found) {
        return "expected %d steady hours in a row without a gap, not %d: %d hours without a reading, %d in which something was opened, moved or heating up."
                .formatted(
                        HeatBalance.FEWEST_HOURS,
                        found.hours(),
                        found.withoutReading(),
                        found.unsteady());
    }

    public static String cold(Stated.NoWarmth found) {
        return String.format(
                Locale.ENGLISH,
                "the eggs give off %.3f W in all, too little to warm a box by what can be read; expected live eggs in the second half of their incubation.",
                found.watts());
    }

    /// What the figure rests on.
    ///
    /// @param paired whether the sensors' difference was said
    public static List<String> notes(
            HeatBalance balance, Beside beside, Probe probe, boolean paired, double other) {
        var notes = new ArrayList<String>();
        if (balance.hoursUnsteady() + balance.hoursWithoutReading() > 0) {
            notes.add(
                    "The longest steady stretch was taken, %d hours; %d hours were not steady, %d had no reading."
                            .formatted(
                                    balance.hours().size(),
                                    balance.hoursUnsteady(),
                                    balance.hoursWithoutReading()));
        }
        notes.add(
                "The interval allows for hours that hang together, by %d slow waves in what is left over, and for %.2f K that the two sensors may differ."
                        .formatted(balance.waves(), balance.offsetSdKelvin()));
        if (beside == Beside.SET_POINT) {
            notes.add("The set point stands for the incubator's air, which swings about it.");
        }
        if (!paired) {
            notes.add(
                    "The two were not said to have been compared: lying side by side for two hours, and the difference said, makes the interval much smaller.");
        }
        if (probe == Probe.EGGS) {
            notes.add(
                    "The sensor lies among the eggs, and how they pass on heat is known to a factor of two: a sensor in the box's air tells more.");
        }
        notes.add(
                String.format(
                        Locale.ENGLISH,
                        "Only the eggs' heat divided by the figure is read; their heat is the model's and not in the interval. By the other of its two curves it is %.2f W/K. Evaporation is left out.",
                        other));
        return notes;
    }
}
