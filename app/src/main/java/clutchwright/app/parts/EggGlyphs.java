package clutchwright.app.parts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/// The eggs of a clutch in a row, as they were counted, each drawn by what has become of it.
///
/// What the drawing shows stands in its label as words.
public record EggGlyphs(List<Look> eggs) {

    /// What has become of an egg, as far as the drawing tells it apart.
    public enum Look {
        WAITING("waiting", "waiting"),
        DOUBTFUL("doubtful", "doubtful"),
        SLUG("slug", "slugs"),
        LOST("lost", "lost"),
        HATCHED("hatched", "hatched"),
        TWINS("hatched with twins", "hatched with twins");

        private final String words;
        private final String several;

        Look(String words, String several) {
            this.words = words;
            this.several = several;
        }

        /// Where it is more than one.
        public String several() {
            return several;
        }

        public String words() {
            return words;
        }
    }

    public EggGlyphs {
        eggs = List.copyOf(eggs);
    }

    /// All of them, as one picture.
    public Markup row() {
        var row = new Markup().raw("<span class=\"eggs\" role=\"img\" aria-label=\"%s\">", words());
        eggs.forEach(egg -> row.add(glyph(egg)));
        return row.raw("</span>");
    }

    /// One egg, beside its words.
    public static Markup glyph(Look look) {
        var svg =
                new Markup()
                        .raw(
                                "<svg class=\"egg egg-%s\" width=\"18\" height=\"24\" viewBox=\"0 0"
                                        + " 18 24\" aria-hidden=\"true\" focusable=\"false\">",
                                look.name().toLowerCase(Locale.ROOT));
        switch (look) {
            case WAITING, DOUBTFUL -> shell(svg, "egg-shell");
            case SLUG ->
                    svg.raw(
                            "<ellipse class=\"egg-small\" cx=\"9\" cy=\"15\" rx=\"5\" ry=\"6.5\"/>");
            case LOST -> {
                shell(svg, "egg-shell");
                svg.raw("<path class=\"egg-stroke\" d=\"M3 21L15 4\"/>");
            }
            case HATCHED, TWINS -> {
                svg.raw(
                        "<path class=\"egg-full\" d=\"M1.6 13.6l3.2-2.4 2.6 2.6 2.8-3 2.6 2.8"
                                + " 3.6-2.2c0 6.8-2.8 11-7.4 11s-7.3-4-7.4-8.8z\"/>");
                svg.raw(
                        "<path class=\"egg-shell\" d=\"M2.2 9.2c.9-4.7 3.6-8 6.8-8s5.9"
                                + " 3.3 6.8 8\"/>");
                if (look == Look.TWINS) {
                    svg.raw("<circle class=\"egg-eye\" cx=\"6.4\" cy=\"17\" r=\"1.3\"/>");
                    svg.raw("<circle class=\"egg-eye\" cx=\"11.6\" cy=\"17\" r=\"1.3\"/>");
                }
            }
        }
        return svg.raw("</svg>");
    }

    /// How many of each: `5 waiting, 1 slug`.
    public String words() {
        var words = new ArrayList<String>();
        Arrays.stream(Look.values())
                .forEach(
                        look -> {
                            var count = eggs.stream().filter(look::equals).count();
                            if (count > 0) {
                                words.add(
                                        count + " " + (count > 1 ? look.several() : look.words()));
                            }
                        });
        return words.isEmpty() ? "no eggs" : String.join(", ", words);
    }

    private static void shell(Markup svg, String style) {
        svg.raw(
                "<path class=\"%s\" d=\"M9 1.2c4 0 7.4 5.6 7.4 11.6S13.5 22.8 9"
                        + " 22.8 1.6 18.8 1.6 12.8 5 1.2 9 1.2z\"/>",
                style);
    }
}
