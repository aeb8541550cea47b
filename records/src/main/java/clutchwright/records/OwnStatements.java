package clutchwright.records;

import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.notation.Reading;
import clutchwright.records.statements.Latest;
import clutchwright.records.statements.Statement;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;
import java.util.stream.Collectors;

/// What was said and seen of one animal, as the engine takes it.
///
/// The visible part of a claim counts as seen unless a sighting is on record.
final class OwnStatements {

    private OwnStatements() {}

    static OwnRecords of(GeneLine lines, Latest latest, Optional<Sex> sex) {
        var claim = latest.claim().flatMap(found -> genes(lines, found));
        var sighting = latest.sighting().flatMap(found -> genes(lines, found));
        var claims = claim.map(genes -> claims(lines, genes, sex)).orElseGet(LinkedHashMap::new);
        // Hets alone say nothing of what is to be seen.
        var shown = claim.filter(genes -> saysWhatShows(genes));
        var seen = sighting.or(() -> shown).map(genes -> seen(lines, genes));
        return new OwnRecords(claims, seen);
    }

    private static Optional<Genes> genes(GeneLine lines, Statement statement) {
        var text = statement.genes().canonical();
        // A line that was not understood when it was written may be understood by now.
        var reading = lines.read(text.isBlank() ? statement.genes().written() : text);
        return reading instanceof Reading.Understood(var genes, _, _)
                ? Optional.of(genes)
                : Optional.empty();
    }

    private static boolean saysWhatShows(Genes genes) {
        return genes.statements().isEmpty()
                || genes.statements().stream().anyMatch(Genes.Statement.Shows.class::isInstance);
    }

    private static SequencedMap<LocusId, OwnRecords.Claim> claims(
            GeneLine lines, Genes genes, Optional<Sex> sex) {
        // Without a sex no phase is known: the shape of the sex that has two alike carries less.
        var as = sex.orElse(lines.catalogue().model().sexes().heterogametic().opposite());
        var carried =
                genes.statements().stream()
                        .filter(Genes.Statement.Carries.class::isInstance)
                        .map(Genes.Statement::locus)
                        .collect(Collectors.toSet());
        var claims = new LinkedHashMap<LocusId, OwnRecords.Claim>();
        lines.asParent(genes, as)
                .parent()
                .loci()
                .forEach(
                        (locus, genotypes) ->
                                claims.put(
                                        locus,
                                        new OwnRecords.Claim(genotypes, !carried.contains(locus))));
        return claims;
    }

    private static OwnRecords.Seen seen(GeneLine lines, Genes genes) {
        var looks = new LinkedHashMap<LocusId, Set<Phenotype>>();
        for (var statement : genes.statements()) {
            if (statement instanceof Genes.Statement.Shows shown) {
                var map = lines.catalogue().model().theLocus(shown.locus());
                var possible = new LinkedHashSet<Phenotype>();
                shown.pairs().forEach(pair -> possible.add(map.phenotypeOf(pair)));
                if (shown.doubtful()) {
                    possible.add(Phenotype.normalOf(shown.locus()));
                }
                looks.put(shown.locus(), possible);
            }
        }
        return new OwnRecords.Seen(looks);
    }
}
