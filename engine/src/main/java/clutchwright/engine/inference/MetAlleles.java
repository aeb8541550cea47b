package clutchwright.engine.inference;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/// The alleles of a locus that somebody in a collection is said, seen or tested to have.
///
/// A series of a dozen alleles has seventy-eight genotypes, of which a collection with three of
/// the alleles needs six.
final class MetAlleles {

    private MetAlleles() {}

    /// In the order of the locus, the wild type first; all of them where the assumptions say so.
    static List<Allele> of(CollectionRecords records, LocusId locus, Assumptions assumptions) {
        return assumptions.onlyAllelesMet()
                ? of(records, locus)
                : records.model().theLocus(locus).locus().alleles();
    }

    static List<Allele> of(CollectionRecords records, LocusId locus) {
        var map = records.model().theLocus(locus);
        var met = new HashSet<Allele>();
        met.add(map.locus().wildType());
        var looks = new LinkedHashSet<Set<Phenotype>>();
        for (var own : records.own().values()) {
            var claim = own.claims().get(locus);
            if (claim != null) {
                claim.genotypes().outcomes().forEach(genotype -> met.addAll(genotype.alleles()));
            }
            own.seen().map(seen -> seen.looks().get(locus)).ifPresent(looks::add);
            own.tests().stream()
                    .map(OwnRecords.AlleleTest::allele)
                    .filter(allele -> allele.locus().equals(locus))
                    .forEach(met::add);
        }
        var rest = new ArrayList<>(looks);
        // What a look leaves no choice in comes first: it may explain the looks that leave one.
        rest.removeIf(look -> addShared(map, look, met));
        rest.stream()
                .filter(look -> !isExplained(map, look, met))
                .toList()
                .forEach(
                        look ->
                                LocusWeights.plainest(map, look)
                                        .outcomes()
                                        .forEach(pair -> met.addAll(pair.alleles())));
        return map.locus().alleles().stream().filter(met::contains).toList();
    }

    /// Adds the alleles that every pair has which looks so.
    ///
    /// @return whether the look is explained by that
    private static boolean addShared(PhenotypeMap map, Set<Phenotype> look, Set<Allele> met) {
        var pairs = showing(map, look);
        var shared = new HashSet<>(pairs.getFirst().alleles());
        pairs.forEach(pair -> shared.retainAll(pair.alleles()));
        met.addAll(shared);
        return isExplained(map, look, met);
    }

    private static boolean isExplained(PhenotypeMap map, Set<Phenotype> look, Set<Allele> met) {
        return showing(map, look).stream().anyMatch(pair -> met.containsAll(pair.alleles()));
    }

    private static List<Genotype.Diploid> showing(PhenotypeMap map, Set<Phenotype> look) {
        return map.locus().allPairs().stream()
                .filter(pair -> look.contains(map.phenotypeOf(pair)))
                .toList();
    }
}
