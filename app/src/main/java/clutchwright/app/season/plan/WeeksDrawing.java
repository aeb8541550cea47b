package clutchwright.app.season.plan;

import clutchwright.app.parts.Markup;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/// How much of something a season takes up, week by week, against how much there is.
final class WeeksDrawing {

    private static final double WIDTH = 640;
    private static final double HEIGHT = 150;
    private static final double LEFT = 40;
    private static final double TOP = 12;
    private static final double BOTTOM = 26;

    private WeeksDrawing() {}

    /// @param there how much there is; empty where that is no limit
    /// @param words what the drawing shows
    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    static Markup draw(
            List<PlanOutlook.Week> weeks,
            ToDoubleFunction<PlanOutlook.Week> much,
            Optional<Integer> there,
            String words) {
        var svg = new Markup();
        if (weeks.isEmpty()) {
            return svg;
        }
        var most =
                Math.max(
                        there.orElse(1),
                        Math.max(1, weeks.stream().mapToDouble(much).max().orElse(1)));
        svg.raw(
                "<svg class=\"weeks\" viewBox=\"0 0 %.0f %.0f\" role=\"img\" aria-label=\"%s\">",
                WIDTH, HEIGHT, words);
        var step = (WIDTH - LEFT) / weeks.size();
        for (var line : List.of(0.0, Math.ceil(most / 2), Math.ceil(most))) {
            svg.raw(
                    "<line class=\"hairline\" x1=\"%.1f\" x2=\"%.1f\" y1=\"%.1f\" y2=\"%.1f\"/>",
                    LEFT, WIDTH, y(line, most), y(line, most));
            svg.raw(
                    "<text class=\"soft\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"end\">%.0f</text>",
                    LEFT - 6, y(line, most) + 4, line);
        }
        var month = 0;
        for (var i = 0; i < weeks.size(); i++) {
            var top = y(much.applyAsDouble(weeks.get(i)), most);
            svg.raw(
                    "<rect class=\"week\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>",
                    LEFT + i * step + 1, top, Math.max(1, step - 2), HEIGHT - BOTTOM - top);
            var day = LocalDate.parse(weeks.get(i).monday());
            if (day.getMonthValue() != month) {
                month = day.getMonthValue();
                svg.raw(
                        "<text class=\"soft\" x=\"%.1f\" y=\"%.1f\">%s</text>",
                        LEFT + i * step,
                        HEIGHT - 8,
                        day.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH));
            }
        }
        there.ifPresent(
                limit ->
                        svg.raw(
                                "<line class=\"limit\" x1=\"%.1f\" x2=\"%.1f\" y1=\"%.1f\""
                                        + " y2=\"%.1f\"/>",
                                LEFT, WIDTH, y(limit, most), y(limit, most)));
        return svg.raw("</svg>");
    }

    private static double y(double much, double most) {
        return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * much / Math.ceil(most);
    }
}
