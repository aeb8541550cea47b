package clutchwright.engine.notation;

import clutchwright.engine.genetics.Genotype.Diploid;
import clutchwright.engine.notation.Genes.Statement.Carries;
import clutchwright.engine.notation.Genes.Statement.Shows;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/// Readings as text that a table of expected readings can hold: `locus: genotype`, `+` wild type.
final class Shorthand {

    private Shorthand() {}

    /// `male; pastel Pastel/+; clown +/Clown 2/3; (remark)`
    static String of(Genes genes) {
        var parts = new ArrayList<String>();
        genes.animals()
                .ifPresent(
                        group ->
                                parts.add(
                                        "%d.%d.%d"
                                                .formatted(
                                                        group.males(),
                                                        group.females(),
                                                        group.unsexed())));
        for (var statement : genes.statements()) {
            parts.add(
                    switch (statement) {
                        case Shows shows -> of(shows);
                        case Carries(var allele, var chance) ->
                                "%s het %s %s".formatted(allele.locus(), allele, chance);
                    });
        }
        genes.remarks().forEach(remark -> parts.add("(" + remark + ")"));
        return parts.isEmpty() ? "normal" : String.join("; ", parts);
    }

    private static String of(Shows shows) {
        var pairs = shows.pairs().stream().map(Shorthand::of).collect(Collectors.joining(" or "));
        var doubt = shows.doubtful() ? "maybe " : "";
        var chance =
                shows.doubtful() ? shows.chance().map(number -> " " + number).orElse(" ?") : "";
        var phase =
                shows.phase()
                        .map(where -> " " + where.name().toLowerCase(java.util.Locale.ROOT))
                        .orElse("");
        return shows.locus() + " " + doubt + pairs + chance + phase;
    }

    private static String of(Diploid pair) {
        // The wild type stands last, as breeders write it.
        return pair.first().isWild() ? pair.second() + "/" + pair.first() : pair.toString();
    }

    /// `KIND 'found' at 3: names`, one a fault.
    static String of(Reading reading) {
        return switch (reading) {
            case Reading.Understood(var genes, var _, var _) -> of(genes);
            case Reading.Unclear(var faults, var _) ->
                    faults.stream()
                            .map(
                                    fault ->
                                            "%s '%s' at %d: %s"
                                                    .formatted(
                                                            fault.kind(),
                                                            fault.found(),
                                                            fault.start(),
                                                            String.join(", ", fault.names())))
                            .collect(Collectors.joining("; "));
        };
    }

    static List<String> notes(Reading reading) {
        return switch (reading) {
            case Reading.Understood(var _, var _, var notes) ->
                    notes.stream()
                            .map(note -> note.kind() + " " + String.join(", ", note.names()))
                            .toList();
            case Reading.Unclear _ -> List.of();
        };
    }
}
