package clutchwright.app.incubators;

import clutchwright.app.parts.Markup;
import clutchwright.app.wording.Formats;
import clutchwright.engine.incubation.EggLimits;
import clutchwright.records.incubators.Stretch;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/// What a sensor said over some days: its mean as a line, lowest to highest as a band, over what is
/// common practice for eggs. A stretch without a reading stays empty.
final class TraceDrawing {

    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final double WIDTH = 640;
    private static final double HEIGHT = 220;
    private static final double LEFT = 62;
    private static final double RIGHT = 8;
    private static final double TOP = 10;
    private static final double BOTTOM = 28;
    private static final double MARGIN_KELVIN = 0.4;
    private static final int MOST_LABELS = 8;

    private final Instant from;
    private final Instant to;
    private final Duration length;
    private final double low;
    private final double high;

    private TraceDrawing(List<Stretch> course, Instant from, Instant to, Duration length) {
        this.from = from;
        this.to = to;
        this.length = length;
        this.low =
                Math.min(
                                EggLimits.COOL_AT.degrees(),
                                course.stream().mapToDouble(Stretch::low).min().orElse(30))
                        - MARGIN_KELVIN;
        this.high =
                Math.max(
                                EggLimits.TOO_WARM_AT.degrees(),
                                course.stream().mapToDouble(Stretch::high).max().orElse(30))
                        + MARGIN_KELVIN;
    }

    /// @param length of each stretch
    /// @param setPoint in °C
    /// @param words what the drawing shows
    static Markup draw(
            List<Stretch> course,
            Instant from,
            Instant to,
            Duration length,
            double setPoint,
            String words,
            ZoneId zone,
            Formats formats) {
        var drawing = new TraceDrawing(course, from, to, length);
        var svg =
                new Markup()
                        .raw(
                                "<svg class=\"trace\" viewBox=\"0 0 %.0f %.0f\" role=\"img\" aria-label=\"%s\">",
                                WIDTH, HEIGHT, Markup.escape(words));
        drawing.limits(svg, formats);
        svg.raw(
                "<path class=\"course-set\" d=\"M%.1f %.1fH%.1f\"/>",
                LEFT, drawing.y(setPoint), WIDTH - RIGHT);
        drawing.course(svg, course);
        drawing.days(svg, zone);
        return svg.raw("</svg>");
    }

    private void limits(Markup svg, Formats formats) {
        svg.raw(
                "<rect class=\"safe\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>",
                LEFT,
                y(EggLimits.WARM_AT.degrees()),
                WIDTH - LEFT - RIGHT,
                y(EggLimits.COOL_AT.degrees()) - y(EggLimits.WARM_AT.degrees()));
        for (var limit : List.of(EggLimits.COOL_AT, EggLimits.WARM_AT, EggLimits.TOO_WARM_AT)) {
            var at = y(limit.degrees());
            svg.raw(
                    "<line class=\"%s\" x1=\"%.1f\" x2=\"%.1f\" y1=\"%.1f\" y2=\"%.1f\"/>",
                    limit.equals(EggLimits.TOO_WARM_AT) ? "limit" : "hairline",
                    LEFT,
                    WIDTH - RIGHT,
                    at,
                    at);
            // The two upper limits are half a degree apart: one label each side of the line.
            svg.raw(
                    "<text class=\"soft\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"end\">%s</text>",
                    LEFT - 6,
                    limit.equals(EggLimits.WARM_AT) ? at + 11 : at + 2,
                    formats.warmth(limit.degrees()));
        }
    }

    private void course(Markup svg, List<Stretch> course) {
        var start = 0;
        for (var i = 1; i <= course.size(); i++) {
            if (i == course.size() || isApart(course.get(i - 1), course.get(i))) {
                piece(svg, course.subList(start, i));
                start = i;
            }
        }
    }

    private boolean isApart(Stretch one, Stretch next) {
        return Duration.between(one.from(), next.from()).compareTo(length.multipliedBy(3)) > 0;
    }

    private void piece(Markup svg, List<Stretch> piece) {
        svg.raw("<path class=\"band\" d=\"");
        for (var i = 0; i < piece.size(); i++) {
            svg.raw(i == 0 ? "M%.1f %.1f" : "L%.1f %.1f", x(piece.get(i)), y(piece.get(i).high()));
        }
        for (var stretch : piece.reversed()) {
            svg.raw("L%.1f %.1f", x(stretch), y(stretch.low()));
        }
        svg.raw("z\"/><path class=\"course-line\" d=\"");
        for (var i = 0; i < piece.size(); i++) {
            svg.raw(i == 0 ? "M%.1f %.1f" : "L%.1f %.1f", x(piece.get(i)), y(piece.get(i).mean()));
        }
        // A single stretch is a dot.
        svg.raw(piece.size() == 1 ? "h1\"/>" : "\"/>");
    }

    private void days(Markup svg, ZoneId zone) {
        var first = LocalDate.ofInstant(from, zone).plusDays(1);
        var days = Math.max(1, Duration.between(from, to).toDays());
        var step = Math.max(1, Math.ceilDiv(days, MOST_LABELS));
        for (var day = first; day.atStartOfDay(zone).toInstant().isBefore(to); ) {
            var at = x(day.atStartOfDay(zone).toInstant());
            svg.raw(
                    "<line class=\"hairline\" x1=\"%.1f\" x2=\"%.1f\" y1=\"%.1f\" y2=\"%.1f\"/>",
                    at, at, HEIGHT - BOTTOM, HEIGHT - BOTTOM + 5);
            if (at > LEFT + 20 && at < WIDTH - RIGHT - 20) {
                svg.raw(
                        "<text class=\"soft\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">%s</text>",
                        at, HEIGHT - 8, DAY.format(day));
            }
            day = day.plusDays(step);
        }
    }

    private double x(Stretch stretch) {
        return x(stretch.from().plus(length.dividedBy(2)));
    }

    private double x(Instant at) {
        var share =
                (double) Duration.between(from, at).toSeconds()
                        / Math.max(1, Duration.between(from, to).toSeconds());
        return LEFT + (WIDTH - LEFT - RIGHT) * Math.clamp(share, 0, 1);
    }

    private double y(double celsius) {
        return TOP + (HEIGHT - TOP - BOTTOM) * (high - celsius) / (high - low);
    }
}
