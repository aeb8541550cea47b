package clutchwright.app.parts;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.inference.Held;
import clutchwright.engine.probability.Distribution;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.SequencedMap;
import java.util.stream.Collectors;

/// The two strands: two rows, from the dam and from the sire, and a column a locus. Ink where
/// an allele that is not wild is certain, hatched to its chance where not, open where it is
/// wild.
///
/// It is the same drawing wherever a genotype is shown. What it shows stands in its label as
/// words.
///
/// @param columns in naming order
public record Strands(List<Column> columns) {

    private static final double HEIGHT = 11;
    private static final double ROW = 15.5;

    public Strands {
        columns = List.copyOf(columns);
    }

    /// @param name of the alleles that may stand there
    /// @param fromDam chance of an allele that is not wild on the strand from the dam
    /// @param fromSire the same on the strand from the sire
    public record Column(String name, double fromDam, double fromSire) {}

    public static Strands of(Outcome outcome) {
        return new Strands(
                outcome.loci().stream().map(at -> column(at.fromDam(), at.fromSire())).toList());
    }

    public static Strands of(SequencedMap<LocusId, Held.Strands> loci) {
        return new Strands(
                loci.values().stream().map(at -> column(at.fromDam(), at.fromSire())).toList());
    }

    private static Column column(Distribution<Allele> dam, Distribution<Allele> sire) {
        var names = new LinkedHashSet<String>();
        for (var strand : List.of(dam, sire)) {
            strand.outcomes().stream()
                    .filter(allele -> !allele.isWild())
                    .forEach(allele -> names.add(allele.name()));
        }
        return new Column(
                names.isEmpty() ? Allele.WILD : String.join(" / ", names),
                dam.chanceThat(allele -> !allele.isWild()).value(),
                sire.chanceThat(allele -> !allele.isWild()).value());
    }

    /// A drawing for a table row.
    public Markup small() {
        return draw(16, 24);
    }

    /// A drawing for the head of a page.
    public Markup large() {
        return draw(32, 40);
    }

    private Markup draw(double width, double step) {
        if (columns.isEmpty()) {
            return new Markup();
        }
        var whole = columns.size() * step + 4;
        var svg = new Markup();
        svg.raw(
                "<svg class=\"strands\" width=\"%.0f\" height=\"35\" viewBox=\"0 0 %.0f 35\""
                        + " role=\"img\" aria-label=\"%s\">",
                whole, whole, inWords());
        for (int row = 0; row < 2; row++) {
            var y = 4 + row * (ROW + 0.5);
            svg.raw(
                    "<line class=\"strand\" x1=\"0\" x2=\"%.0f\" y1=\"%.1f\" y2=\"%.1f\"/>",
                    whole, y + HEIGHT / 2, y + HEIGHT / 2);
            for (int i = 0; i < columns.size(); i++) {
                var column = columns.get(i);
                var x = 4 + i * step;
                bead(svg, x, y, width, row == 0 ? column.fromDam() : column.fromSire());
            }
        }
        for (int i = 0; i < columns.size(); i++) {
            svg.raw(
                    "<rect class=\"strand-place\" x=\"%.1f\" y=\"0\" width=\"%.0f\" height=\"35\">"
                            + "<title>%s</title></rect>",
                    4 + i * step, width, inWords(columns.get(i)));
        }
        return svg.raw("</svg>");
    }

    private static void bead(Markup svg, double x, double y, double width, double chance) {
        var shape = chance >= 1 ? "bead-ink" : "bead-open";
        svg.raw(
                "<rect class=\"%s\" x=\"%.1f\" y=\"%.1f\" width=\"%.0f\" height=\"11\""
                        + " rx=\"5.5\"/>",
                shape, x, y, width);
        if (chance > 0 && chance < 1) {
            // A viewport of its own cuts the hatching at the chance; it needs no name on the page.
            svg.raw(
                    "<svg x=\"%.1f\" y=\"%.1f\" width=\"%.2f\" height=\"11\"><rect"
                            + " class=\"bead-hatch\" width=\"%.0f\" height=\"11\""
                            + " rx=\"5.5\"/></svg>",
                    x, y, width * chance, width);
        }
    }

    /// What the drawing shows, as words.
    public String inWords() {
        return "two strands: "
                + columns.stream().map(Strands::inWords).collect(Collectors.joining("; "));
    }

    private static String inWords(Column column) {
        var strands = new ArrayList<String>();
        strand(strands, "from the dam", column.fromDam());
        strand(strands, "from the sire", column.fromSire());
        return strands.isEmpty()
                ? column.name() + " wild type"
                : column.name() + " " + String.join(", ", strands);
    }

    private static void strand(List<String> strands, String from, double chance) {
        if (chance >= 1) {
            strands.add(from);
        } else if (chance > 0) {
            strands.add(String.format(Locale.ROOT, "%s at %.3g %%", from, chance * 100));
        }
    }

    /// The pattern that every drawing hatches with; once on a page, in its layout.
    public static Markup pattern() {
        return new Markup()
                .raw(
                        "<svg class=\"patterns\" width=\"0\" height=\"0\" aria-hidden=\"true\""
                                + " focusable=\"false\"><defs><pattern id=\"hatch\" width=\"4\""
                                + " height=\"4\" patternUnits=\"userSpaceOnUse\""
                                + " patternTransform=\"rotate(45)\"><rect class=\"hatch-line\""
                                + " width=\"1.6\" height=\"4\"/></pattern></defs></svg>");
    }
}
