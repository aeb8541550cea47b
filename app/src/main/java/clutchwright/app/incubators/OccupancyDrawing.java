package clutchwright.app.incubators;

import clutchwright.app.parts.Markup;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/// The incubators over the season: on each day how many clutches, as a band and its mean.
final class OccupancyDrawing {

    private static final double WIDTH = 640;
    private static final double HEIGHT = 200;
    private static final double LEFT = 40;
    private static final double RIGHT = 8;
    private static final double TOP = 12;
    private static final double BOTTOM = 28;
    private static final int LINES = 4;

    private final Occupancy occupancy;
    private final LocalDate first;
    private final long days;
    private final double most;

    private OccupancyDrawing(Occupancy occupancy) {
        this.occupancy = occupancy;
        this.first = occupancy.days().getFirst().on();
        this.days = Math.max(1, ChronoUnit.DAYS.between(first, occupancy.days().getLast().on()));
        this.most =
                Math.max(1, occupancy.days().stream().mapToInt(Occupancy.Day::to).max().orElse(1));
    }

    /// @param words what the drawing shows
    static Markup draw(Occupancy occupancy, LocalDate today, String words) {
        return new OccupancyDrawing(occupancy).draw(today, words);
    }

    private Markup draw(LocalDate today, String words) {
        var svg =
                new Markup()
                        .raw(
                                "<svg class=\"box-course occupancy\" viewBox=\"0 0 %.0f %.0f\" role=\"img\" aria-label=\"%s\">",
                                WIDTH, HEIGHT, words);
        var step = Math.max(1, (int) Math.ceil(most / LINES));
        for (int clutches = 0; clutches <= most; clutches += step) {
            svg.raw(
                    "<line class=\"hairline\" x1=\"%.1f\" x2=\"%.1f\" y1=\"%.1f\" y2=\"%.1f\"/>",
                    LEFT, WIDTH - RIGHT, y(clutches), y(clutches));
            svg.raw(
                    "<text class=\"soft\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"end\">%d</text>",
                    LEFT - 6, y(clutches) + 4, clutches);
        }
        band(svg);
        svg.raw("<path class=\"course-line\" d=\"");
        for (var day : occupancy.days()) {
            svg.raw(
                    day.on().equals(first) ? "M%.1f %.1f" : "L%.1f %.1f",
                    x(day.on()),
                    y(day.mean()));
        }
        svg.raw("\"/>");
        svg.raw(
                "<path class=\"course-box\" d=\"M%.1f %.1fV%.1f\"/>",
                x(today), TOP, HEIGHT - BOTTOM);
        for (var month = first.plusMonths(1).withDayOfMonth(1);
                !month.isAfter(first.plusDays(days));
                month = month.plusMonths(1)) {
            svg.raw(
                    "<text class=\"soft\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">%s</text>",
                    x(month),
                    HEIGHT - BOTTOM + 20,
                    month.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH));
        }
        return svg.raw("</svg>");
    }

    private void band(Markup svg) {
        svg.raw("<path class=\"band\" d=\"");
        for (var day : occupancy.days()) {
            svg.raw(day.on().equals(first) ? "M%.1f %.1f" : "L%.1f %.1f", x(day.on()), y(day.to()));
        }
        for (var day : occupancy.days().reversed()) {
            svg.raw("L%.1f %.1f", x(day.on()), y(day.from()));
        }
        svg.raw("z\"/>");
    }

    private double x(LocalDate day) {
        return LEFT + (WIDTH - LEFT - RIGHT) * ChronoUnit.DAYS.between(first, day) / days;
    }

    private double y(double clutches) {
        return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * clutches / most;
    }
}
