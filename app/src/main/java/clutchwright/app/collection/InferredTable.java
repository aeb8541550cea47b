package clutchwright.app.collection;

import clutchwright.app.cli.TextTable;
import clutchwright.app.wording.Chances;
import clutchwright.engine.genetics.Allele;
import java.util.ArrayList;
import java.util.List;

/// What every animal carries, as a person reads it in the terminal: a line for each pair of
/// alleles that is not surely wild type.
final class InferredTable {

    private InferredTable() {}

    static List<String> lines(Inferred inferred) {
        var lines = new ArrayList<String>();
        inferred.contradictions()
                .forEach(
                        found ->
                                lines.add(
                                        "%s, %s: %s"
                                                .formatted(
                                                        found.animal(),
                                                        found.locus(),
                                                        found.text())));
        var rows = new ArrayList<List<String>>();
        for (var animal : inferred.animals()) {
            var tag = animal.tag();
            for (var at : animal.loci()) {
                for (var pair : at.genotypes()) {
                    if (!isSurelyWild(at)) {
                        rows.add(
                                List.of(
                                        tag,
                                        at.locus(),
                                        String.join("/", pair.alleles()),
                                        Chances.percent(pair.chance())));
                        tag = "";
                    }
                }
            }
        }
        lines.addAll(
                new TextTable(
                                List.of("Animal", "Locus", "Has", "Chance"),
                                List.of(false, false, false, true),
                                rows)
                        .lines());
        for (var animal : inferred.animals()) {
            for (var at : animal.loci()) {
                at.why().forEach(why -> lines.addAll(why.lines(animal.tag())));
            }
        }
        lines.add("");
        lines.add(footer(inferred));
        return lines;
    }

    private static boolean isSurelyWild(Inferred.Chances at) {
        return at.genotypes().size() == 1
                && at.genotypes().getFirst().alleles().stream().allMatch(Allele.WILD::equals);
    }

    private static String footer(Inferred inferred) {
        return switch (inferred.method()) {
            case "exact" -> "All chances are exact. What is not listed is wild type for certain.";
            default ->
                    "Method: %s; a chance may be off by %s. What is not listed is wild type."
                            .formatted(inferred.method(), Chances.percent(inferred.error()));
        };
    }
}
