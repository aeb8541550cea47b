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

    /// @param genotypes given that the animal looks as it was recorded
    /// @param asRecorded the chance that it does look so; 1 where nobody could see
    /// @param error how far a chance may be off, absolute; 0 where all is exact
    public record AtLocus(
            Distribution<Genotype> genotypes, Basis basis, double asRecorded, double error) {}

    /// What the figures at a locus rest on.
    public enum Basis {
        /// What was said of the animal.
        CLAIM,
        /// What was seen of it.
        SIGHTING,
        /// All records of it and of its relatives together.
        ALL_RECORDS,
        /// As seen; all records together make it likelier than not that it was misread.
        SIGHTING_AGAINST_RECORDS,
        /// Its own records alone: what is recorded of all animals cannot be true together.
        CONTRADICTED,
        /// Its own records alone, until all records together are worked out.
        FOR_NOW
    }

    /// The two strands of an animal at a locus, told apart by the parent each came from.
    ///
    /// @param fromDam the allele on the strand from the dam; for an animal without recorded
    ///     parents the first of its two
    /// @param fromSire the allele on the strand from the sire; else the second
    public record Strands(Distribution<Allele> fromDam, Distribution<Allele> fromSire) {}

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
