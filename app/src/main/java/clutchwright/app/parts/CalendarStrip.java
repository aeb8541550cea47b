package clutchwright.app.parts;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/// A forecast as a strip of the calendar: each day inked by its chance, the middle half and nine in
/// ten marked below, today above. What it shows stands in its label as words.
public final class CalendarStrip {

    private static final double WIDTH = 360;
    private static final double TOP = 12;
    private static final double DAYS_HEIGHT = 16;
    private static final int LEAST_DAYS = 45;
    private static final int AROUND_DAYS = 6;

    private CalendarStrip() {}

    /// From one day to another, both included.
    public record Days(LocalDate from, LocalDate to) {}

    /// @param by the chance that it has happened when a day is over
    /// @param half the middle half of the chances
    /// @param most nine in ten
    /// @param words what the strip shows
    public static Markup draw(
            ToDoubleFunction<LocalDate> by, Days half, Days most, LocalDate today, String words) {
        var first = min(today, most.from()).minusDays(AROUND_DAYS);
        var last = max(today, most.to()).plusDays(AROUND_DAYS);
        if (ChronoUnit.DAYS.between(first, last) < LEAST_DAYS) {
            last = first.plusDays(LEAST_DAYS);
        }
        var scale = new Scale(first, WIDTH / (ChronoUnit.DAYS.between(first, last) + 1));
        var svg =
                new Markup()
                        .raw(
                                "<svg class=\"strip\" viewBox=\"0 0 360 50\" role=\"img\""
                                        + " aria-label=\"%s\">",
                                words);
        months(svg, scale, last);
        days(svg, scale, by, last);
        bar(svg, scale, most, "strip-most", 1.2);
        bar(svg, scale, half, "strip-half", 3.2);
        svg.raw(
                "<path class=\"strip-today\" d=\"M%.1f %.1fv%.1f\"/>",
                scale.middle(today), TOP - 4, DAYS_HEIGHT + 8);
        return svg.raw("</svg>");
    }

    private record Scale(LocalDate first, double day) {

        double left(LocalDate of) {
            return ChronoUnit.DAYS.between(first, of) * day;
        }

        double middle(LocalDate of) {
            return left(of) + day / 2;
        }
    }

    private static void days(
            Markup svg, Scale scale, ToDoubleFunction<LocalDate> by, LocalDate last) {
        var most = 0.0;
        for (var day = scale.first(); !day.isAfter(last); day = day.plusDays(1)) {
            most = Math.max(most, chance(by, day));
        }
        for (var day = scale.first(); !day.isAfter(last); day = day.plusDays(1)) {
            var ink = most > 0 ? chance(by, day) / most : 0;
            if (ink > 0.02) {
                svg.raw(
                        "<rect class=\"strip-day\" x=\"%.2f\" y=\"%.1f\" width=\"%.2f\""
                                + " height=\"%.1f\" fill-opacity=\"%.2f\"/>",
                        scale.left(day), TOP, scale.day() + 0.05, DAYS_HEIGHT, ink);
            }
        }
    }

    private static double chance(ToDoubleFunction<LocalDate> by, LocalDate day) {
        return by.applyAsDouble(day) - by.applyAsDouble(day.minusDays(1));
    }

    private static void months(Markup svg, Scale scale, LocalDate last) {
        svg.raw("<path class=\"strip-line\" d=\"M0 %.1fH%.0f\"/>", TOP + DAYS_HEIGHT, WIDTH);
        for (var month = scale.first().withDayOfMonth(1);
                !month.isAfter(last);
                month = month.plusMonths(1)) {
            var x = scale.left(month);
            if (x >= 0) {
                svg.raw(
                        "<path class=\"strip-line\" d=\"M%.1f %.1fv%.1f\"/>",
                        x, TOP, DAYS_HEIGHT + 4);
            }
            var text = Math.max(x, 0) + 3;
            var next = scale.left(month.plusMonths(1));
            if (Math.min(next, WIDTH) - text > 24) {
                svg.raw(
                        "<text class=\"strip-month\" x=\"%.1f\" y=\"48\">%s</text>",
                        text, month.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH));
            }
        }
    }

    private static void bar(Markup svg, Scale scale, Days days, String style, double height) {
        var left = scale.left(days.from());
        svg.raw(
                "<rect class=\"%s\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>",
                style,
                left,
                TOP + DAYS_HEIGHT + 4 - height / 2,
                scale.left(days.to().plusDays(1)) - left,
                height);
    }

    private static LocalDate min(LocalDate a, LocalDate b) {
        return a.isBefore(b) ? a : b;
    }

    private static LocalDate max(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }
}
