package clutchwright.app.wording;

import clutchwright.engine.incubation.Development;
import clutchwright.engine.incubation.DevelopmentRate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// When eggs hatch, in words.
public final class HatchWords {

    private static final String BASIS =
            "57 days at 31.7 °C are common practice; 1.7 times as fast ten degrees warmer is a python's (Shine 1997). Help no egg before its day: ask a veterinarian.";

    private HatchWords() {}

    public static List<String> constant(
            double celsius, double days, double sdDays, List<String> notes) {
        var lines = new ArrayList<String>();
        lines.add(
                String.format(
                        Locale.ENGLISH,
                        "At %.1f °C eggs hatch after about %.1f days, give or take %.1f.",
                        celsius,
                        days,
                        sdDays));
        lines.addAll(notes);
        lines.add("");
        lines.add(BASIS);
        return lines;
    }

    public static List<String> felt(
            double development, LocalDate mean, List<String> ranges, List<String> notes) {
        var lines = new ArrayList<String>();
        lines.add(
                String.format(
                        Locale.ENGLISH,
                        "The eggs have come %.0f %% of the way, and pip about %s.",
                        100 * development,
                        mean));
        lines.addAll(ranges);
        lines.addAll(notes);
        lines.add("");
        lines.add(BASIS);
        return lines;
    }

    /// When a clutch pips, in one sentence.
    public static String expected(LocalDate mean, LocalDate from, LocalDate to, Formats formats) {
        return "Expected to pip about %s; 9 in 10 between %s and %s."
                .formatted(formats.dayOfYear(mean), formats.dayOfYear(from), formats.dayOfYear(to));
    }

    /// @param eggs such as `6 eggs`
    public static String eggs(
            String eggs, LocalDate mean, LocalDate from, LocalDate to, Formats formats) {
        return "%s: expected to pip about %s; 9 in 10 between %s and %s."
                .formatted(
                        eggs,
                        formats.dayOfYear(mean),
                        formats.dayOfYear(from),
                        formats.dayOfYear(to));
    }

    /// @param last the last of the days in which 9 in 10 clutches pip
    public static String overdue(String eggs, LocalDate last, Formats formats) {
        return "%s: 19 in 20 clutches pip by %s. Candle them, and ask a veterinarian in doubt."
                .formatted(eggs, formats.dayOfYear(last));
    }

    /// On what a forecast rests, in a few words.
    ///
    /// @param sensor by which, if by any
    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    public static String inShort(Optional<String> sensor, Formats formats) {
        return sensor.map("by what %s said"::formatted)
                .orElseGet(
                        () ->
                                "as if at %s, no logger says so"
                                        .formatted(
                                                formats.warmth(
                                                        DevelopmentRate.REFERENCE.degrees())));
    }

    /// The common practice that forecasts begin with.
    public static String usual(Formats formats) {
        return "57 days at %s are common practice.".formatted(formats.warmth(31.7));
    }

    public static String withoutLogger(Formats formats) {
        return "As if the eggs were at %s, give or take half a degree Celsius: no logger says so. Warmer eggs are sooner, cooler ones later."
                .formatted(formats.warmth(DevelopmentRate.REFERENCE.degrees()));
    }

    /// On what a forecast by a sensor rests.
    public static String bySensor(
            String sensor, boolean amongEggs, Development felt, Formats formats) {
        return "By what %s said of the first %s: %s %% of the way to pipping; it is taken to go on as on average.%s %s"
                .formatted(
                        sensor,
                        formats.count(Math.round(felt.lastDay()), "day", "days"),
                        formats.decimals(100 * felt.reached(), 1),
                        amongEggs
                                ? " Days to hatching are known by what incubators are set to, and eggs are warmer than that: expect it a day or two later."
                                : "",
                        String.join(" ", notes(felt)))
                .strip();
    }

    /// What makes a forecast less certain.
    public static List<String> notes(Development felt) {
        var notes = new ArrayList<String>();
        for (var gap : felt.gaps()) {
            notes.add(
                    String.format(
                            Locale.ENGLISH,
                            "No reading from day %.1f to day %.1f: what was before and after it is taken, and the ranges are wider.",
                            gap.fromDay(),
                            gap.toDay()));
        }
        if (felt.shareOutside() > 0) {
            notes.add(
                    String.format(
                            Locale.ENGLISH,
                            "%.1f %% of the way was at temperatures outside 26 to 33.3 °C, where the model is not known to hold: the ranges are wider.",
                            100 * felt.shareOutside()));
        }
        return notes;
    }

    public static String outside(double celsius) {
        return String.format(
                Locale.ENGLISH,
                "%.1f °C is outside 26 to 33.3 °C, where the model is not known to hold: the spread is wider. Eggs are harmed there.",
                celsius);
    }
}
