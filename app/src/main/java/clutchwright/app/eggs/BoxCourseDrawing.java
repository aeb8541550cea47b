package clutchwright.app.eggs;

import clutchwright.app.parts.Markup;
import clutchwright.app.wording.Formats;
import clutchwright.engine.incubation.BoxCourse;
import clutchwright.engine.incubation.Celsius;
import clutchwright.engine.incubation.EggLimits;
import java.util.List;

/// The temperatures of a whole incubation: incubator, box and eggs, the eggs as a band between two
/// curves, over the limits.
final class BoxCourseDrawing {

    private static final double WIDTH = 640;
    private static final double HEIGHT = 280;
    private static final double LEFT = 62;
    private static final double RIGHT = 8;
    private static final double TOP = 10;
    private static final double BOTTOM = 30;
    private static final double MARGIN_KELVIN = 0.4;
    private static final int WEEK = 7;

    private final BoxCourse first;
    private final BoxCourse second;
    private final int days;
    private final double low;
    private final double high;

    private BoxCourseDrawing(BoxCourse first, BoxCourse second) {
        this.first = first;
        this.second = second;
        this.days = Math.min(first.days().size(), second.days().size());
        var set = first.days().getFirst().warmth().incubator().degrees();
        this.low = Math.min(set, EggLimits.COOL_AT.degrees()) - MARGIN_KELVIN;
        this.high =
                Math.max(EggLimits.TOO_WARM_AT.degrees(), Math.max(warmest(first), warmest(second)))
                        + MARGIN_KELVIN;
    }

    /// @param words what the drawing shows
    static Markup draw(BoxCourse first, BoxCourse second, String words, Formats formats) {
        return new BoxCourseDrawing(first, second).draw(words, formats);
    }

    private Markup draw(String words, Formats formats) {
        var svg =
                new Markup()
                        .raw(
                                "<svg class=\"box-course\" viewBox=\"0 0 %.0f %.0f\" role=\"img\" aria-label=\"%s\">",
                                WIDTH, HEIGHT, words);
        // What is common practice for eggs, lightly.
        svg.raw(
                "<rect class=\"safe\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>",
                LEFT,
                y(EggLimits.WARM_AT.degrees()),
                WIDTH - LEFT - RIGHT,
                y(EggLimits.COOL_AT.degrees()) - y(EggLimits.WARM_AT.degrees()));
        for (var limit : List.of(EggLimits.COOL_AT, EggLimits.WARM_AT, EggLimits.TOO_WARM_AT)) {
            line(svg, limit, limit.equals(EggLimits.TOO_WARM_AT) ? "limit" : "hairline", formats);
        }
        band(svg);
        path(svg, first, true, "course-line");
        path(svg, second, true, "course-line");
        path(svg, first, false, "course-box");
        var set = first.days().getFirst().warmth().incubator();
        svg.raw(
                "<path class=\"course-set\" d=\"M%.1f %.1fH%.1f\"/>",
                LEFT, y(set.degrees()), WIDTH - RIGHT);
        for (var day = 0; day < days; day += WEEK) {
            svg.raw(
                    "<text class=\"soft\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">%d</text>",
                    x(day), HEIGHT - BOTTOM + 20, day);
        }
        return svg.raw("</svg>");
    }

    private void line(Markup svg, Celsius limit, String style, Formats formats) {
        svg.raw(
                "<line class=\"%s\" x1=\"%.1f\" x2=\"%.1f\" y1=\"%.1f\" y2=\"%.1f\"/>",
                style, LEFT, WIDTH - RIGHT, y(limit.degrees()), y(limit.degrees()));
        svg.raw(
                "<text class=\"soft\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"end\">%s</text>",
                LEFT - 6, y(limit.degrees()) + 4, formats.warmth(limit.degrees()));
    }

    private void band(Markup svg) {
        svg.raw("<path class=\"band\" d=\"");
        for (var day = 0; day < days; day++) {
            svg.raw(day == 0 ? "M%.1f %.1f" : "L%.1f %.1f", x(day), y(egg(first, day)));
        }
        for (var day = days - 1; day >= 0; day--) {
            svg.raw("L%.1f %.1f", x(day), y(egg(second, day)));
        }
        svg.raw("z\"/>");
    }

    private void path(Markup svg, BoxCourse course, boolean eggs, String style) {
        svg.raw("<path class=\"%s\" d=\"", style);
        for (var day = 0; day < days; day++) {
            var warmth = course.days().get(day).warmth();
            svg.raw(
                    day == 0 ? "M%.1f %.1f" : "L%.1f %.1f",
                    x(day),
                    y((eggs ? warmth.egg() : warmth.box()).degrees()));
        }
        svg.raw("\"/>");
    }

    private static double egg(BoxCourse course, int day) {
        return course.days().get(day).warmth().egg().degrees();
    }

    private static double warmest(BoxCourse course) {
        return course.days().getLast().warmth().egg().degrees();
    }

    private double x(int day) {
        return LEFT + (WIDTH - LEFT - RIGHT) * day / (days - 1);
    }

    private double y(double celsius) {
        return TOP + (HEIGHT - TOP - BOTTOM) * (high - celsius) / (high - low);
    }
}
