package clutchwright.app.holding;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.notation.Reading;
import clutchwright.records.statements.GeneText;
import clutchwright.records.statements.Mention;
import java.util.LinkedHashSet;
import java.util.List;

/// A gene line that a person typed, on its way into the records.
public sealed interface LineEntry {

    /// Nothing was typed.
    record Blank() implements LineEntry {}

    /// @param text as the records keep it
    /// @param notes what deserves a word though nothing is wrong
    record Understood(GeneText text, Genes genes, List<Reading.Note> notes) implements LineEntry {

        public Understood {
            notes = List.copyOf(notes);
        }
    }

    /// @param faults all of them, at least one
    record Unclear(String written, List<Reading.Fault> faults) implements LineEntry {

        public Unclear {
            faults = List.copyOf(faults);
        }
    }

    /// Reads what was typed in one species' catalogue.
    static LineEntry read(GeneLine lines, String typed) {
        var written = typed.strip();
        if (written.isEmpty()) {
            return new Blank();
        }
        return switch (lines.read(written)) {
            case Reading.Understood(var genes, _, var notes) ->
                    new Understood(text(lines, written, genes), genes, notes);
            case Reading.Unclear(var faults, _) -> new Unclear(written, faults);
        };
    }

    /// A line that was chosen rather than typed, such as a group of a prediction.
    static GeneText of(GeneLine lines, Genes genes) {
        return text(lines, lines.write(genes), genes);
    }

    private static GeneText text(GeneLine lines, String written, Genes genes) {
        return new GeneText(
                written,
                lines.write(genes),
                lines.catalogue().species().id(),
                genes.statements().stream()
                        .flatMap(statement -> mentions(statement).stream())
                        .distinct()
                        .toList());
    }

    private static List<Mention> mentions(Genes.Statement statement) {
        return switch (statement) {
            case Genes.Statement.Carries(var allele, _) -> List.of(mention(allele, false));
            case Genes.Statement.Shows shown -> {
                var alleles = new LinkedHashSet<Allele>();
                shown.pairs().forEach(pair -> alleles.addAll(pair.alleles()));
                yield alleles.stream()
                        .filter(allele -> !allele.isWild())
                        .map(allele -> mention(allele, !shown.doubtful()))
                        .toList();
            }
        };
    }

    private static Mention mention(Allele allele, boolean shown) {
        return new Mention(allele.locus(), allele.name(), shown);
    }
}
