package clutchwright.engine.pedigree;

import clutchwright.engine.genetics.SexDetermination;
import java.util.Optional;

/// How closely animals are related at loci of the sex chromosome that both sexes have, X or Z,
/// where it does not recombine with the other.
///
/// The sex with two different chromosomes has one copy, from the parent of the other sex; a son
/// under XY has nothing of his sire's X. Source: Fernando and Grossman (1990);
/// `docs/mathematics.md`, section "Kinship".
public final class SexChromosomeKinship {

    private final NumberedPedigree numbered;
    private final Inbreeding inbreeding;

    private SexChromosomeKinship(NumberedPedigree numbered, double secondDivision) {
        this.numbered = numbered;
        this.inbreeding = Inbreeding.of(numbered.descent(), secondDivision);
    }

    public static SexChromosomeKinship of(
            Pedigree pedigree, SexDetermination sexes, KinshipAssumptions assumptions) {
        return new SexChromosomeKinship(
                Numbering.sexChromosome(pedigree, sexes, assumptions),
                assumptions.secondDivision());
    }

    /// Unordered; of an animal with a single copy with itself, one.
    ///
    /// @return empty where the sex of one of them is not known
    public Optional<Double> between(AnimalId one, AnimalId other) {
        if (!numbered.has(one) || !numbered.has(other)) {
            return Optional.empty();
        }
        int a = numbered.theNode(one);
        int b = numbered.theNode(other);
        return Optional.of(
                a == b ? (1 + inbreeding.of(a)) / 2 : inbreeding.walk().relationship(a, b) / 2);
    }
}
