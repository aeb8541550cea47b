package clutchwright.app.proofs;

import clutchwright.app.parts.Markup;
import clutchwright.app.wording.Chances;
import clutchwright.app.wording.ProofWords;
import clutchwright.engine.proof.TestMating;

/// The chance after each further hatchling without the trait, over hairlines.
final class ChanceCurve {

    private static final double WIDTH = 420;
    private static final double HEIGHT = 190;
    private static final double LEFT = 44;
    private static final double TOP = 10;
    private static final double BOTTOM = 34;
    private static final int FEWEST = 10;
    private static final int MOST = 30;

    private ChanceCurve() {}

    static Markup draw(TestMating mating, String tag, String gene, String mate) {
        var to = hatchlings(mating);
        var svg = new Markup();
        svg.raw(
                "<svg class=\"chance-curve\" viewBox=\"0 0 %.0f %.0f\" role=\"img\" aria-label=\"%s\">",
                WIDTH, HEIGHT, ProofWords.curve(mating, tag, gene, mate, to));
        for (var line : new double[] {0, 0.05, 0.25, 0.5, 0.75, 1}) {
            svg.raw(
                    "<line class=\"%s\" x1=\"%.1f\" x2=\"%.1f\" y1=\"%.1f\" y2=\"%.1f\"/>",
                    line == 0.05 ? "threshold" : "hairline", LEFT, WIDTH, y(line), y(line));
            if (line != 0) {
                svg.raw(
                        "<text class=\"soft\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"end\">%s</text>",
                        LEFT - 6, y(line) + 4, Chances.percent(line));
            }
        }
        svg.raw("<path class=\"course-line\" d=\"");
        for (var n = 0; n <= to; n++) {
            svg.raw(n == 0 ? "M%.1f %.1f" : "L%.1f %.1f", x(n, to), y(chance(mating, n)));
        }
        svg.raw("\"/>");
        for (var n = 0; n <= to; n++) {
            svg.raw(
                    "<circle class=\"course-dot\" cx=\"%.1f\" cy=\"%.1f\" r=\"2.4\"><title>%s</title>"
                            + "</circle>",
                    x(n, to), y(chance(mating, n)), ProofWords.after(n, chance(mating, n)));
        }
        for (var n = 0; n <= to; n += to > 15 ? 5 : 2) {
            svg.raw(
                    "<text class=\"soft\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">%d</text>",
                    x(n, to), HEIGHT - BOTTOM + 18, n);
        }
        return svg.raw("</svg>");
    }

    /// As far as 0.1 %, or where it comes no further down, a little beyond 5 %.
    private static int hatchlings(TestMating mating) {
        var settled = mating.needed(TestMating.RULED_OUT);
        var doubtful = mating.needed(TestMating.DOUBTFUL);
        var to = settled.isPresent() ? settled.getAsInt() : 2 * doubtful.orElse(FEWEST);
        return Math.clamp(to, FEWEST, MOST);
    }

    private static double chance(TestMating mating, int hatchlings) {
        return mating.chanceAfter(0, hatchlings).orElse(0);
    }

    private static double x(int hatchlings, int to) {
        return LEFT + 6 + (WIDTH - LEFT - 12) * hatchlings / to;
    }

    private static double y(double chance) {
        return TOP + (HEIGHT - TOP - BOTTOM) * (1 - chance);
    }
}
