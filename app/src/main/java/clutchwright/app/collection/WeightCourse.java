package clutchwright.app.collection;

import clutchwright.app.parts.Markup;
import clutchwright.app.wording.Formats;
import clutchwright.records.husbandry.Happening.Weighing;
import java.util.List;

/// Weights as a line over the days on which they were taken.
final class WeightCourse {

    private static final double WIDTH = 300;
    private static final double HEIGHT = 72;
    private static final double EDGE = 5;

    private WeightCourse() {}

    /// @param weighings oldest first; fewer than two are no line
    static Markup draw(List<Weighing> weighings, Formats formats) {
        var svg = new Markup();
        if (weighings.size() < 2) {
            return svg;
        }
        var first = weighings.getFirst();
        var last = weighings.getLast();
        svg.raw(
                "<svg class=\"course\" viewBox=\"0 0 300 72\" role=\"img\" aria-label=\"%s\">",
                "weight from %s on %s to %s on %s"
                        .formatted(
                                formats.weight(first.grams()),
                                formats.date(first.on()),
                                formats.weight(last.grams()),
                                formats.date(last.on())));
        svg.raw("<path class=\"course-line\" d=\"");
        for (int i = 0; i < weighings.size(); i++) {
            var at = weighings.get(i);
            svg.raw(i == 0 ? "M%.1f %.1f" : "L%.1f %.1f", x(i, weighings), y(at, weighings));
        }
        svg.raw("\"/>");
        for (int i = 0; i < weighings.size(); i++) {
            var at = weighings.get(i);
            svg.raw(
                    "<circle class=\"course-dot\" cx=\"%.1f\" cy=\"%.1f\" r=\"2.4\"><title>%s</title>"
                            + "</circle>",
                    x(i, weighings),
                    y(at, weighings),
                    formats.weight(at.grams()) + ", " + formats.date(at.on()));
        }
        return svg.raw("</svg>");
    }

    private static double x(int place, List<Weighing> all) {
        double from = all.getFirst().on().toEpochDay();
        double to = all.getLast().on().toEpochDay();
        // All on one day: side by side, in the order in which they were taken.
        var share =
                to > from
                        ? (all.get(place).on().toEpochDay() - from) / (to - from)
                        : (double) place / (all.size() - 1);
        return EDGE + share * (WIDTH - 2 * EDGE);
    }

    private static double y(Weighing at, List<Weighing> all) {
        var least = all.stream().mapToDouble(Weighing::grams).min().orElseThrow();
        var most = all.stream().mapToDouble(Weighing::grams).max().orElseThrow();
        var share = most > least ? (at.grams() - least) / (most - least) : 0.5;
        return HEIGHT - EDGE - share * (HEIGHT - 2 * EDGE);
    }
}
