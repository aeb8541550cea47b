package clutchwright.app.projects;

import clutchwright.app.parts.Markup;
import java.util.List;

/// The chance of having reached the goal, year by year, against the chance that is asked for.
final class ChanceDrawing {

    private static final double WIDTH = 640;
    private static final double HEIGHT = 170;
    private static final double LEFT = 66;
    private static final double TOP = 10;
    private static final double BOTTOM = 26;
    private static final int MOST_NAMED = 12;

    private ChanceDrawing() {}

    /// @param chances by the end of each season
    /// @param firstYear of the first of them
    /// @param confidence the chance that is asked for
    /// @param words what it shows
    static Markup draw(List<Double> chances, int firstYear, double confidence, String words) {
        var svg =
                new Markup()
                        .raw(
                                "<svg class=\"chances\" viewBox=\"0 0 %.0f %.0f\" role=\"img\""
                                        + " aria-label=\"%s\">",
                                WIDTH, HEIGHT, words);
        for (var line : List.of(0.0, 0.5, 1.0)) {
            svg.raw(
                    "<line class=\"hairline\" x1=\"%.1f\" x2=\"%.1f\" y1=\"%.1f\" y2=\"%.1f\"/>",
                    LEFT, WIDTH, y(line), y(line));
            svg.raw(
                    "<text class=\"soft\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"end\">%.0f %%</text>",
                    LEFT - 6, y(line) + 4, 100 * line);
        }
        var step = (WIDTH - LEFT) / chances.size();
        var every = Math.max(1, Math.ceilDiv(chances.size(), MOST_NAMED));
        for (var i = 0; i < chances.size(); i++) {
            var top = y(chances.get(i));
            svg.raw(
                    "<rect class=\"%s\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>",
                    chances.get(i) >= confidence ? "reached" : "chance",
                    LEFT + i * step + 2,
                    top,
                    Math.max(1, step - 4),
                    HEIGHT - BOTTOM - top);
            if (i % every == 0) {
                svg.raw(
                        "<text class=\"soft\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">%d</text>",
                        LEFT + (i + 0.5) * step, HEIGHT - 8, firstYear + i);
            }
        }
        svg.raw(
                "<line class=\"asked\" x1=\"%.1f\" x2=\"%.1f\" y1=\"%.1f\" y2=\"%.1f\"/>",
                LEFT, WIDTH, y(confidence), y(confidence));
        return svg.raw("</svg>");
    }

    private static double y(double chance) {
        return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * chance;
    }
}
