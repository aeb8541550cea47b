package clutchwright.app.wording;

import clutchwright.engine.incubation.Conductance;
import clutchwright.engine.incubation.EggLimits;
import clutchwright.engine.incubation.SetPointChoice;
import clutchwright.engine.incubation.SharedCourse;
import java.time.LocalDate;

/// What an incubator full of boxes may be set to, in words.
public record SettingWords(Formats formats) {

    private static final double ALIKE_KELVIN = 0.05;

    /// @param nowDays until the last egg hatches as it is set
    /// @param bestDays the same at the best set point
    public String advice(
            SetPointChoice best, SetPointChoice asSet, double nowDays, double bestDays) {
        var limit = formats.warmth(EggLimits.WARM_AT.degrees());
        var highest = formats.warmth(best.setPoint().degrees());
        var set = formats.warmth(asSet.setPoint().degrees());
        var over = asSet.setPoint().degrees() - best.setPoint().degrees();
        if (Math.abs(over) < ALIKE_KELVIN) {
            return "At %s, as it is set, no egg passes %s until the last has hatched, and a higher set point would let one do so."
                    .formatted(set, limit);
        }
        return over > 0
                ? "Set to %s eggs get as warm as %s. %s is the highest at which none passes %s; the last then hatches %s later."
                        .formatted(
                                set,
                                formats.warmth(asSet.warmest().degrees()),
                                highest,
                                limit,
                                days(bestDays - nowDays))
                : "At %s, as it is set, no egg gets warmer than %s. %s would be the highest at which none passes %s; the last would then hatch %s earlier."
                        .formatted(
                                set,
                                formats.warmth(asSet.warmest().degrees()),
                                highest,
                                limit,
                                days(nowDays - bestDays));
    }

    public String decides(String box, SharedCourse course, LocalDate today) {
        return "Box %s decides: its eggs are the warmest, %s."
                .formatted(box, warmest(course, today));
    }

    /// `32.4 °C on about 3 June`.
    public String warmest(SharedCourse course, LocalDate today) {
        return "%s on about %s"
                .formatted(
                        formats.warmth(course.warmest().degrees()),
                        formats.dayOfYear(today.plusDays(Math.round(course.warmestDay()))));
    }

    public String basis(Conductance box) {
        return "By a model of the eggs’ own heat, the steeper of its two curves, in boxes that let out %s W/K, eggs of 85 g; how far they are by their logger, or as if at %s. The limit is common practice. Keep a margin, put a probe among the latest eggs, and go by it."
                .formatted(formats.decimals(box.wattsPerKelvin(), 2), formats.warmth(31.7));
    }

    private String days(double days) {
        return "%s days".formatted(formats.decimals(Math.max(0, days), 1));
    }
}
