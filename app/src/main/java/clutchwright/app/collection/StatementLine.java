package clutchwright.app.collection;

import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.app.parts.Markup;
import clutchwright.app.wording.Chances;
import clutchwright.app.wording.Formats;
import clutchwright.engine.inference.Held;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.notation.Reading;
import clutchwright.records.statements.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// Something that was said or seen of the animal.
///
/// @param genes as it was understood
/// @param written in the writer's own words, where they differ
/// @param witness by whom, when and where
/// @param differences from what follows from the records, one sentence each
public record StatementLine(
        long id,
        long version,
        Markup genes,
        String written,
        String witness,
        boolean doubted,
        List<String> differences) {

    public StatementLine {
        differences = List.copyOf(differences);
    }

    /// @param latest whether it is the last of its kind
    static StatementLine of(
            GeneLine lines, Statement statement, Held held, boolean latest, Formats formats) {
        var genes = understood(lines, statement);
        return new StatementLine(
                statement.id().value(),
                statement.version(),
                genes.map(read -> GeneLineMarkup.of(read).line())
                        .orElseGet(() -> new Markup().text(statement.genes().written())),
                genes.isPresent()
                                && statement
                                        .genes()
                                        .written()
                                        .equalsIgnoreCase(statement.genes().canonical())
                        ? ""
                        : statement.genes().written(),
                witness(statement, formats),
                statement instanceof Statement.Sighting sighting && sighting.doubted(),
                latest && statement instanceof Statement.Claim
                        ? genes.map(read -> differences(read, held)).orElse(List.of())
                        : List.of());
    }

    private static Optional<Genes> understood(GeneLine lines, Statement statement) {
        var line = statement.genes().canonical();
        return lines.read(line.isBlank() ? statement.genes().written() : line)
                        instanceof Reading.Understood(var genes, _, _)
                ? Optional.of(genes)
                : Optional.empty();
    }

    private static String witness(Statement statement, Formats formats) {
        var parts = new ArrayList<String>();
        parts.add(statement.witness().on().map(formats::date).orElse("no date"));
        if (!statement.witness().by().isEmpty()) {
            parts.add("by " + statement.witness().by());
        }
        if (!statement.witness().source().isEmpty()) {
            parts.add(statement.witness().source());
        }
        return String.join(", ", parts);
    }

    private static List<String> differences(Genes genes, Held held) {
        var differences = new ArrayList<String>();
        for (var statement : genes.statements()) {
            if (statement instanceof Genes.Statement.Carries(var allele, var said)) {
                var follows = held.chanceOfCarrying(allele);
                if (!Chances.asTraded(follows).equals(Chances.asTraded(said))) {
                    differences.add(
                            "Said to be %s het %s; by all that is on record %s."
                                    .formatted(
                                            Chances.het(said),
                                            allele.name(),
                                            follows.isNone()
                                                    ? "nothing speaks for it"
                                                    : "it is "
                                                            + Chances.het(
                                                                    Chances.asTraded(follows))));
                }
            }
        }
        return differences;
    }
}
