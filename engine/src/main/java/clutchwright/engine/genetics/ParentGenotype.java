package clutchwright.engine.genetics;

import clutchwright.engine.probability.Distribution;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/// What is held of one parent: at each locus a distribution over genotypes, independent between
/// loci.
///
/// Loci that are not named are wild type. At a sex-linked locus the genotypes of the
/// heterogametic sex are [Genotype.Phased]; where the phase is not known both stand in the
/// distribution. Of linked autosomal loci every phase that the genotypes allow is equally likely,
/// unless a haplotype is stated.
///
/// @param haplotypes what is known to stand together; where the parent has all the alleles of a
///     haplotype, they are on one chromosome
public record ParentGenotype(
        SequencedMap<LocusId, Distribution<Genotype>> loci, List<Haplotype> haplotypes) {

    public static final ParentGenotype WILD = new ParentGenotype(new LinkedHashMap<>());

    public ParentGenotype {
        loci.forEach(
                (locus, genotypes) -> {
                    for (var genotype : genotypes.outcomes()) {
                        if (!genotype.locus().equals(locus)) {
                            throw new IllegalArgumentException(
                                    "genotypes of another locus at " + locus + ": " + genotypes);
                        }
                    }
                });
        loci = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(loci));
        haplotypes = List.copyOf(haplotypes);
    }

    /// A parent of whose phase nothing is known.
    public ParentGenotype(SequencedMap<LocusId, Distribution<Genotype>> loci) {
        this(loci, List.of());
    }

    public ParentGenotype with(Distribution<Genotype> genotypes) {
        var more = new LinkedHashMap<>(loci);
        more.put(genotypes.outcomes().getFirst().locus(), genotypes);
        return new ParentGenotype(more, haplotypes);
    }

    /// The same parent, of which it is also known that these alleles stand on one chromosome.
    public ParentGenotype withTogether(Haplotype haplotype) {
        var more = new ArrayList<>(haplotypes);
        more.add(haplotype);
        return new ParentGenotype(loci, more);
    }

    /// Whether it may have an allele of the locus that is not wild.
    public boolean mayHave(LocusId locus) {
        var genotypes = loci.get(locus);
        return genotypes != null
                && genotypes.outcomes().stream()
                        .flatMap(genotype -> genotype.alleles().stream())
                        .anyMatch(allele -> !allele.isWild());
    }
}
