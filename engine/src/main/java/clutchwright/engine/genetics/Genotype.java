package clutchwright.engine.genetics;

import clutchwright.engine.probability.Distribution;
import java.util.List;

/// What an animal has at one locus: two alleles of its series.
public sealed interface Genotype {

    /// Autosomal, or sex-linked in the homogametic sex. Unordered: `Clown/+` equals `+/Clown`.
    record Diploid(Allele first, Allele second) implements Genotype {

        public Diploid {
            requireSameLocus(first, second);
            if (first.name().compareTo(second.name()) > 0) {
                var swapped = first;
                first = second;
                second = swapped;
            }
        }

        /// The allele that one gamete receives: Mendel's first law, each copy alike.
        public Distribution<Allele> segregation() {
            return Distribution.uniform(List.of(first, second));
        }

        /// The zygotes of this dam by that sire at an autosomal locus, before viability.
        public Distribution<Diploid> crossedWith(Diploid sire) {
            return segregation().combine(sire.segregation(), Diploid::new);
        }

        @Override
        public List<Allele> alleles() {
            return List.of(first, second);
        }

        @Override
        public Diploid pair() {
            return this;
        }

        @Override
        public String toString() {
            return first + "/" + second;
        }
    }

    /// Sex-linked in the heterogametic sex, where it matters which chromosome carries which
    /// allele: an
    /// allele travels with its sex chromosome unless it recombines.
    ///
    /// @param shared on the chromosome that both sexes have, X or Z
    /// @param limited on the chromosome that only this sex has, Y or W
    record Phased(Allele shared, Allele limited) implements Genotype {

        public Phased {
            requireSameLocus(shared, limited);
        }

        @Override
        public List<Allele> alleles() {
            return List.of(shared, limited);
        }

        @Override
        public Diploid pair() {
            return new Diploid(shared, limited);
        }

        @Override
        public String toString() {
            return shared + "|" + limited;
        }
    }

    /// Both copies, a repeated allele twice.
    List<Allele> alleles();

    /// The two alleles without regard to the chromosome that carries them.
    Diploid pair();

    default LocusId locus() {
        return alleles().getFirst().locus();
    }

    default boolean carries(Allele allele) {
        return alleles().contains(allele);
    }

    /// How many of the two copies are that allele: 0, 1 or 2.
    default int copiesOf(Allele allele) {
        return (int) alleles().stream().filter(allele::equals).count();
    }

    default boolean isHomozygous() {
        return alleles().getFirst().equals(alleles().getLast());
    }

    private static void requireSameLocus(Allele first, Allele second) {
        if (!first.locus().equals(second.locus())) {
            throw new IllegalArgumentException(
                    "alleles of two loci: %s of %s, %s of %s"
                            .formatted(first, first.locus(), second, second.locus()));
        }
    }
}
