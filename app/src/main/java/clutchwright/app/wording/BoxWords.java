package clutchwright.app.wording;

import clutchwright.engine.incubation.EggBox;
import clutchwright.engine.incubation.EggLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/// What eggs do to their box, in words.
public final class BoxWords {

    public static final String CAUTION =
            "A model, and no safety device: put a probe among the eggs, and a second sensor and a cut-out that do not hang on the thermostat. A veterinarian decides on health.";

    private BoxWords() {}

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
}
