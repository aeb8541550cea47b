package clutchwright.app.parts;

import clutchwright.engine.genetics.Sex;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// An animal, its parents and grandparents in the standard symbols: square male, circle female,
/// diamond not sexed; a stroke through a dead animal, a double line between related parents, a
/// broken line where a parent is in doubt, an arrow at the animal the drawing is about.
///
/// Source of the symbols: R. L. Bennett et al., J Genet Couns 4 (1995) 267, updated in 17 (2008)
/// 424 and 31 (2022) 1238.
public record PedigreeDrawing(Slot subject) {

    private static final double WIDTH = 360;
    private static final double SYMBOL = 26;
    private static final double[] ROWS = {20, 100, 180};

    /// One place in the drawing.
    public sealed interface Slot {

        /// Nobody is recorded there.
        record Empty() implements Slot {}

        /// @param relatedParents whether its parents share an ancestor on record
        record Filled(List<Individual> candidates, Slot sire, Slot dam, boolean relatedParents)
                implements Slot {

            /// @param candidates one, or several where it is in doubt which of them it was
            public Filled {
                candidates = List.copyOf(candidates);
                if (candidates.isEmpty()) {
                    throw new IllegalArgumentException("a place without an animal");
                }
            }
        }
    }

    /// @param link the animal's page
    /// @param words its genes in words
    /// @param ink chance of what the drawing is inked by, 0 to 1
    public record Individual(
            String tag, String link, Optional<Sex> sex, boolean dead, String words, double ink) {}

    public Markup draw() {
        var svg = new Markup();
        svg.raw(
                "<svg class=\"pedigree\" viewBox=\"0 0 %.0f 226\" role=\"group\" aria-label=\"%s\">",
                WIDTH, "pedigree: " + inWords(subject));
        lines(svg, subject, WIDTH / 2, WIDTH / 4, 2);
        symbols(svg, subject, WIDTH / 2, WIDTH / 4, 2);
        svg.raw(
                "<path class=\"pedigree-arrow\" d=\"M%.1f %.1f l-13 10 m13 -10 l-8 1.5 m8 -1.5"
                        + " l-3.6 7.4\"/>",
                WIDTH / 2 - SYMBOL / 2 - 4, ROWS[2] + 8);
        return svg.raw("</svg>");
    }

    private static void lines(Markup svg, Slot slot, double x, double spread, int row) {
        if (row == 0 || !(slot instanceof Slot.Filled filled)) {
            return;
        }
        var sireIsThere = filled.sire() instanceof Slot.Filled;
        var damIsThere = filled.dam() instanceof Slot.Filled;
        if (!sireIsThere && !damIsThere) {
            return;
        }
        var parentY = ROWS[row - 1];
        var inDoubt =
                filled.sire() instanceof Slot.Filled(var candidates, _, _, _)
                        && candidates.size() > 1;
        var style = inDoubt ? "pedigree-line doubt" : "pedigree-line";
        var offsets = filled.relatedParents() ? new double[] {-2, 2} : new double[] {0};
        for (var offset : offsets) {
            svg.raw(
                    "<path class=\"%s\" d=\"M%.1f %.1fH%.1f\"/>",
                    style, x - spread, parentY + offset, x + spread);
        }
        svg.raw(
                "<path class=\"pedigree-line\" d=\"M%.1f %.1fV%.1f\"/>",
                x, parentY + (filled.relatedParents() ? 2 : 0), ROWS[row] - SYMBOL / 2);
        lines(svg, filled.sire(), x - spread, spread / 2, row - 1);
        lines(svg, filled.dam(), x + spread, spread / 2, row - 1);
    }

    private static void symbols(Markup svg, Slot slot, double x, double spread, int row) {
        switch (slot) {
            case Slot.Empty() -> {
                if (row < 2) {
                    svg.raw(
                            "<circle class=\"pedigree-empty\" cx=\"%.1f\" cy=\"%.1f\" r=\"3\"/>",
                            x, ROWS[row]);
                }
            }
            case Slot.Filled(var candidates, var sire, var dam, _) -> {
                symbol(svg, candidates, x, ROWS[row]);
                if (row > 0) {
                    symbols(svg, sire, x - spread, spread / 2, row - 1);
                    symbols(svg, dam, x + spread, spread / 2, row - 1);
                }
            }
        }
    }

    private static void symbol(Markup svg, List<Individual> candidates, double x, double y) {
        var first = candidates.getFirst();
        svg.raw(
                "<a href=\"%s\"><title>%s</title>",
                first.link(), first.tag() + " " + first.words());
        var shape = shape(first.sex());
        svg.raw("<g class=\"pedigree-open\">").raw(shape, x, y, SYMBOL / 2).raw("</g>");
        if (first.ink() > 0) {
            var height = SYMBOL * Math.min(1, first.ink());
            svg.raw(
                    "<svg x=\"%.1f\" y=\"%.2f\" width=\"%.0f\" height=\"%.2f\"><g"
                            + " class=\"pedigree-ink\">",
                    x - SYMBOL / 2, y + SYMBOL / 2 - height, SYMBOL, height);
            svg.raw(shape, SYMBOL / 2, height - SYMBOL / 2, SYMBOL / 2).raw("</g></svg>");
        }
        if (first.dead()) {
            svg.raw("<path class=\"pedigree-line\" d=\"M%.1f %.1fl34 -34\"/>", x - 17, y + 17);
        }
        svg.raw(
                "<text class=\"pedigree-tag\" x=\"%.1f\" y=\"%.1f\">%s</text></a>",
                x, y + SYMBOL / 2 + 13, label(candidates));
    }

    /// A shape as markup with places for its centre and half its width.
    private static String shape(Optional<Sex> sex) {
        if (sex.isEmpty()) {
            return "<path d=\"M%1$.1f %2$.1fm0 -%3$.1fl%3$.1f %3$.1fl-%3$.1f %3$.1fl-%3$.1f -%3$.1fz\"/>";
        }
        return switch (sex.get()) {
            case FEMALE -> "<circle cx=\"%1$.1f\" cy=\"%2$.1f\" r=\"%3$.1f\"/>";
            case MALE -> "<path d=\"M%1$.1f %2$.1fm-%3$.1f -%3$.1fh26v26h-26z\"/>";
        };
    }

    private static String label(List<Individual> candidates) {
        var tag = candidates.getFirst().tag();
        if (candidates.size() > 1) {
            return shortened(tag, 8) + " or …";
        }
        return shortened(tag, 12);
    }

    private static String shortened(String tag, int most) {
        return tag.length() <= most ? tag : tag.substring(0, most - 1) + "…";
    }

    private static String inWords(Slot slot) {
        return switch (slot) {
            case Slot.Empty() -> "not recorded";
            case Slot.Filled(var candidates, var sire, var dam, var related) -> {
                var words = new StringBuilder();
                words.append(
                        String.join(" or ", candidates.stream().map(Individual::tag).toList()));
                candidates
                        .getFirst()
                        .sex()
                        .ifPresent(
                                sex ->
                                        words.append(", ")
                                                .append(sex.name().toLowerCase(Locale.ROOT)));
                if (!(sire instanceof Slot.Empty && dam instanceof Slot.Empty)) {
                    words.append(" (sire ")
                            .append(inWords(sire))
                            .append("; dam ")
                            .append(inWords(dam))
                            .append(related ? "; the parents are related" : "")
                            .append(")");
                }
                yield words.toString();
            }
        };
    }
}
