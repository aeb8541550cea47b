package clutchwright.engine.genetics;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;

/// Everything about a species that a cross depends on.
///
/// @param loci in the order in which a name line lists them, which is also the order in which
///     masking
///     is read: a locus that an earlier one hides does not hide others
public record GeneticModel(
        SexDetermination sexes,
        SequencedMap<LocusId, PhenotypeMap> loci,
        LinkageMap linkage,
        List<Combination> combinations,
        List<Caution> cautions) {

    public GeneticModel {
        loci = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(loci));
        combinations = List.copyOf(combinations);
        cautions = List.copyOf(cautions);
        for (var group : linkage.groups()) {
            for (var locus : group.loci()) {
                var map = loci.get(locus);
                if (map == null || map.locus().isSexLinked()) {
                    throw new IllegalArgumentException(
                            "linked locus is not a known autosomal one: " + locus);
                }
            }
        }
    }

    public Optional<PhenotypeMap> findLocus(LocusId locus) {
        return Optional.ofNullable(loci.get(locus));
    }

    /// @throws IllegalArgumentException if the model does not know the locus
    public PhenotypeMap theLocus(LocusId locus) {
        return findLocus(locus)
                .orElseThrow(() -> new IllegalArgumentException("unknown locus " + locus));
    }

    /// Wild type at the locus, in the shape that an animal of the sex has it.
    public Genotype wildType(LocusId locus, Sex sex) {
        var wild = Allele.wildOf(locus);
        return theLocus(locus).locus().isSexLinked() && sex == sexes.heterogametic()
                ? new Genotype.Phased(wild, wild)
                : new Genotype.Diploid(wild, wild);
    }
}
