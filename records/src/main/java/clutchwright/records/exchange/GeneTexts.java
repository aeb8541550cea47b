package clutchwright.records.exchange;

import clutchwright.engine.notation.Genes;
import clutchwright.engine.notation.Reading;
import clutchwright.records.statements.GeneText;
import clutchwright.records.statements.Mention;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/// Gene lines as they are kept: as written, as understood, and the alleles they speak of.
final class GeneTexts {

    private final SpeciesLines lines;
    private final Map<String, GeneText> read = new HashMap<>();

    GeneTexts(SpeciesLines lines) {
        this.lines = lines;
    }

    GeneText of(String species, String written) {
        return read.computeIfAbsent(species + '\n' + written, _ -> understood(species, written));
    }

    private GeneText understood(String species, String written) {
        var line = lines.find(species);
        if (line.isPresent()
                && line.get().read(written) instanceof Reading.Understood(var genes, _, _)) {
            return new GeneText(written, line.get().write(genes), species, mentions(genes));
        }
        return new GeneText(written, "", species, List.of());
    }

    private static List<Mention> mentions(Genes genes) {
        var mentions = new LinkedHashSet<Mention>();
        for (var statement : genes.statements()) {
            switch (statement) {
                case Genes.Statement.Shows shows ->
                        shows.pairs().stream()
                                .flatMap(pair -> List.of(pair.first(), pair.second()).stream())
                                .filter(allele -> !allele.isWild())
                                .forEach(
                                        allele ->
                                                mentions.add(
                                                        new Mention(
                                                                allele.locus(),
                                                                allele.name(),
                                                                true)));
                case Genes.Statement.Carries(var allele, _) ->
                        mentions.add(new Mention(allele.locus(), allele.name(), false));
            }
        }
        return List.copyOf(mentions);
    }
}
