package clutchwright.engine.inference;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.SequencedMap;

/// What is held of one animal: at each locus a distribution over genotypes.
///
/// @param loci in naming order; loci that are surely wild type are left out
public record Held(SequencedMap<LocusId, AtLocus> loci) {

    public static final Held WILD = new Held(new LinkedHashMap<>());

    public Held {
        loci = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(loci));
    }

    /// @param fromDam the allele on the strand from the dam; for an animal without recorded
    ///     parents the first of its two
    /// @param fromSire the allele on the strand from the sire; else the second
    public record AtLocus(
            Distribution<Genotype> genotypes,
            Distribution<Allele> fromDam,
            Distribution<Allele> fromSire,
            Basis basis) {}

    /// What the figures at a locus rest on.
    public enum Basis {
        /// What was said of the animal.
        CLAIM,
        /// What was seen of it.
        SIGHTING,
        /// Mendel's law from its parents, given what was seen of it.
        PARENTS,
        /// What was seen cannot come from the recorded parents: the sighting is kept.
        SIGHTING_AGAINST_PARENTS,
        /// What was said cannot come from the recorded parents: the claim is kept.
        CLAIM_AGAINST_PARENTS
    }

    public Fraction chanceOfCarrying(Allele allele) {
        var at = loci.get(allele.locus());
        return at == null
                ? Fraction.NONE
                : at.genotypes().chanceThat(genotype -> genotype.carries(allele));
    }

    public ParentGenotype asParent() {
        var genotypes = new LinkedHashMap<LocusId, Distribution<Genotype>>();
        loci.forEach((locus, at) -> genotypes.put(locus, at.genotypes()));
        return new ParentGenotype(genotypes);
    }
}
