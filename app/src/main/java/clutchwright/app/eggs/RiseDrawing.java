package clutchwright.app.eggs;

import clutchwright.app.parts.Markup;
import clutchwright.app.wording.Formats;
import clutchwright.engine.incubation.HeatBalance;

/// By the hour, how much warmer a box was than its incubator, and what the fitted conductance makes
/// of the eggs' heat.
final class RiseDrawing {

    private static final double WIDTH = 640;
    private static final double HEIGHT = 220;
    private static final double LEFT = 62;
    private static final double RIGHT = 8;
    private static final double TOP = 10;
    private static final double BOTTOM = 30;
    private static final double MARGIN_KELVIN = 0.1;

    private final HeatBalance balance;
    private final double kelvinPerWatt;
    private final double low;
    private final double high;

    private RiseDrawing(HeatBalance balance, double kelvinPerWatt) {
        this.balance = balance;
        this.kelvinPerWatt = kelvinPerWatt;
        var read = balance.hours().stream().mapToDouble(HeatBalance.Hour::riseKelvin);
        var stats = read.summaryStatistics();
        this.low = Math.min(0, stats.getMin()) - MARGIN_KELVIN;
        this.high = stats.getMax() + MARGIN_KELVIN;
    }

    /// @param words what the drawing shows
    static Markup draw(HeatBalance balance, double kelvinPerWatt, String words, Formats formats) {
        return new RiseDrawing(balance, kelvinPerWatt).draw(words, formats);
    }

    private Markup draw(String words, Formats formats) {
        var svg =
                new Markup()
                        .raw(
                                "<svg class=\"box-course\" viewBox=\"0 0 %.0f %.0f\" role=\"img\" aria-label=\"%s\">",
                                WIDTH, HEIGHT, words);
        for (double kelvin = 0; kelvin < high; kelvin += high > 1.2 ? 0.5 : 0.2) {
            svg.raw(
                    "<line class=\"hairline\" x1=\"%.1f\" x2=\"%.1f\" y1=\"%.1f\" y2=\"%.1f\"/>",
                    LEFT, WIDTH - RIGHT, y(kelvin), y(kelvin));
            svg.raw(
                    "<text class=\"soft\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"end\">%s</text>",
                    LEFT - 6, y(kelvin) + 4, formats.warmthDifference(kelvin));
        }
        path(svg, "course-box", false);
        path(svg, "course-line", true);
        for (int hour = 0; hour < balance.hours().size(); hour += every()) {
            svg.raw(
                    "<text class=\"soft\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">%d h</text>",
                    x(hour), HEIGHT - BOTTOM + 20, hour);
        }
        return svg.raw("</svg>");
    }

    private int every() {
        return Math.max(6, balance.hours().size() / 8 / 6 * 6);
    }

    private void path(Markup svg, String style, boolean fitted) {
        svg.raw("<path class=\"%s\" d=\"", style);
        for (int i = 0; i < balance.hours().size(); i++) {
            var hour = balance.hours().get(i);
            svg.raw(
                    i == 0 ? "M%.1f %.1f" : "L%.1f %.1f",
                    x(i),
                    y(fitted ? hour.watts() * kelvinPerWatt : hour.riseKelvin()));
        }
        svg.raw("\"/>");
    }

    private double x(int hour) {
        return LEFT + (WIDTH - LEFT - RIGHT) * hour / Math.max(1, balance.hours().size() - 1);
    }

    private double y(double kelvin) {
        return TOP + (HEIGHT - TOP - BOTTOM) * (high - kelvin) / (high - low);
    }
}
