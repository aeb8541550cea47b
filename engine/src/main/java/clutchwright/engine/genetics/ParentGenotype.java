package clutchwright.engine.genetics;

import clutchwright.engine.probability.Distribution;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.SequencedMap;

/// What is held of one parent: at each locus a distribution over genotypes, independent between
/// loci.
///
/// Loci that are not named are wild type. At a sex-linked locus the genotypes of the
/// heterogametic sex
/// are [Genotype.Phased]; where the phase is not known both stand in the distribution.
public record ParentGenotype(SequencedMap<LocusId, Distribution<Genotype>> loci) {

    public static final ParentGenotype WILD = new ParentGenotype(new LinkedHashMap<>());

    public ParentGenotype {
        loci.forEach(
                (locus, genotypes) -> {
                    if (!genotypes.outcomes().stream().allMatch(g -> g.locus().equals(locus))) {
                        throw new IllegalArgumentException(
                                "genotypes of another locus at " + locus + ": " + genotypes);
                    }
                });
        loci = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(loci));
    }

    public ParentGenotype with(Distribution<Genotype> genotypes) {
        var more = new LinkedHashMap<>(loci);
        more.put(genotypes.outcomes().getFirst().locus(), genotypes);
        return new ParentGenotype(more);
    }
}
