package clutchwright.engine.genetics;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/// Alleles of linked loci that stand together on one chromosome of a parent: its phase, as far as
/// it is known.
///
/// @param alleles at least two, each of another locus of one linkage group
public record Haplotype(SequencedMap<LocusId, Allele> alleles) {

    public Haplotype {
        alleles = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(alleles));
        if (alleles.size() < 2) {
            throw new IllegalArgumentException("fewer than two alleles together: " + alleles);
        }
        alleles.forEach(
                (locus, allele) -> {
                    if (!allele.locus().equals(locus)) {
                        throw new IllegalArgumentException(
                                "allele " + allele + " of " + allele.locus() + " at " + locus);
                    }
                });
    }

    /// @throws IllegalArgumentException if there are fewer than two, or two of one locus
    public static Haplotype of(List<Allele> together) {
        var alleles = new LinkedHashMap<LocusId, Allele>();
        for (var allele : together) {
            if (alleles.put(allele.locus(), allele) != null) {
                throw new IllegalArgumentException("two alleles of one locus: " + together);
            }
        }
        return new Haplotype(alleles);
    }
}
