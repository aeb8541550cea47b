package clutchwright.app.wording;

import clutchwright.engine.incubation.Celsius;
import clutchwright.engine.incubation.ClutchSplit;
import clutchwright.engine.incubation.EggBox;
import clutchwright.engine.incubation.EggLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/// What eggs do to their box, in words.
public record BoxWords(Formats formats) {

    public static final String CAUTION =
            "A model, and no safety device: put a probe among the eggs, and a second sensor and a cut-out that do not hang on the thermostat. A veterinarian decides on health.";

    public static List<String> lines(EggBox.Warmth warmth, int eggs) {
        var lines = new ArrayList<String>();
        lines.add(
                String.format(
                        Locale.ENGLISH,
                        "%d %s give off %.1f mW each and come to %.1f °C (%.1f °F), %.1f K above the incubator.",
                        eggs,
                        eggs == 1 ? "egg" : "eggs",
                        1000 * warmth.wattsPerEgg(),
                        warmth.egg().degrees(),
                        warmth.egg().fahrenheit(),
                        warmth.riseKelvin()));
        lines.add(judged(EggLimits.of(warmth.egg())));
        lines.add(
                String.format(
                        Locale.ENGLISH,
                        "The box's air is at %.1f °C, the inside of the lid at %.1f °C: it fogs above %.1f %% of humidity, which is no danger by itself.",
                        warmth.box().degrees(),
                        warmth.lid().degrees(),
                        100 * warmth.condensesAbove()));
        lines.add("");
        lines.add(CAUTION);
        return lines;
    }

    /// Eggs of another clutch in the same box.
    public static String beside(EggBox.Warmth warmth, int eggs) {
        return String.format(
                Locale.ENGLISH,
                "Beside them %d %s of another clutch give off %.1f mW each and come to %.1f °C (%.1f °F). %s",
                eggs,
                eggs == 1 ? "egg" : "eggs",
                1000 * warmth.wattsPerEgg(),
                warmth.egg().degrees(),
                warmth.egg().fahrenheit(),
                judged(EggLimits.of(warmth.egg())));
    }

    /// How an egg's temperature is judged: common practice, no source.
    public static String judged(EggLimits limits) {
        return switch (limits) {
            case TOO_COLD -> "Too cold: at 27 °C or less eggs hatch late, and fewer of them.";
            case COOL -> "Cool: eggs develop slowly at 29.5 °C or less.";
            case GOOD -> "Within what is common practice.";
            case WARM -> "Warm: at 32.8 °C (91 °F) or more there is little room left.";
            case TOO_WARM ->
                    "Too warm if it lasts: at 33.3 °C (92 °F) and more young may be kinked, weak or die.";
            case CRITICAL -> "Critical: 35 °C (95 °F) for more than half an hour harms eggs.";
        };
    }

    /// How warm late eggs come to be, between the two curves.
    public String late(EggBox.Warmth cooler, EggBox.Warmth warmer) {
        return "In the last days the eggs come to %s: %s above the incubator."
                .formatted(
                        between(cooler.egg(), warmer.egg()),
                        difference(cooler.riseKelvin(), warmer.riseKelvin()));
    }

    public String onDay(int day, EggBox.Warmth cooler, EggBox.Warmth warmer) {
        return "On day %d the eggs are at %s, the box's air at %s."
                .formatted(
                        day,
                        between(cooler.egg(), warmer.egg()),
                        between(cooler.box(), warmer.box()));
    }

    /// From which day on it is too warm, by either curve.
    public String trouble(OptionalInt first, OptionalInt second) {
        var days = IntStream.concat(first.stream(), second.stream()).sorted().toArray();
        var limit = formats.warmth(EggLimits.TOO_WARM_AT.degrees());
        return switch (days.length) {
            case 0 -> "They stay below %s to the end.".formatted(limit);
            case 1 -> "By one of the two curves they reach %s on day %d.".formatted(limit, days[0]);
            default ->
                    days[0] == days[1]
                            ? "They reach %s on day %d.".formatted(limit, days[0])
                            : "They reach %s between day %d and day %d."
                                    .formatted(limit, days[0], days[1]);
        };
    }

    public String highest(Celsius lower, Celsius higher) {
        return "Set the incubator no higher than %s to keep late eggs below %s; it can be lowered for the last three weeks alone."
                .formatted(between(lower, higher), formats.warmth(EggLimits.TOO_WARM_AT.degrees()));
    }

    public String hatch(double sooner, double later) {
        return "They hatch about day %s."
                .formatted(range(formats.decimals(sooner, 0), formats.decimals(later, 0)));
    }

    public String damp(EggBox.Warmth late) {
        return "The lid fogs once the box's air has more than %s %% of humidity: the box is warmer than the incubator, which is no danger by itself. Wet eggs are colder than the air about them."
                .formatted(formats.decimals(100 * late.condensesAbove(), 1));
    }

    public String air(double hours) {
        return "Sealed, a box of 20 litres would last %s hours until its air has 19 %% of oxygen: leave holes, most of all in the last third."
                .formatted(formats.decimals(hours, 0));
    }

    public String boxes(ClutchSplit split) {
        return split.boxes().size() == 1
                ? "One box"
                : "%d boxes: %s"
                        .formatted(
                                split.boxes().size(),
                                formats.list(split.boxes().stream().map(String::valueOf).toList()));
    }

    public String between(Celsius cooler, Celsius warmer) {
        return range(formats.warmth(cooler.degrees()), formats.warmth(warmer.degrees()));
    }

    public String cut(double hours) {
        return "If the power fails the eggs are at %s after %s hours."
                .formatted(formats.warmth(EggLimits.COOL_AT.degrees()), formats.decimals(hours, 1));
    }

    public String noCut() {
        return "If the power fails the eggs stay above %s for two days."
                .formatted(formats.warmth(EggLimits.COOL_AT.degrees()));
    }

    private String difference(double least, double most) {
        return range(formats.warmthDifference(least), formats.warmthDifference(most));
    }

    private static String range(String from, String to) {
        return from.equals(to) ? from : from + " to " + to;
    }
}
