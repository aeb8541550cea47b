package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// What an egg or a sperm brings at loci that travel together.
///
/// @param alleles number of the allele at each of the loci
/// @param chance among the gametes of a parent of whom genotype and phase are given
/// @param decides the sex of the offspring, if this gamete decides it
record Gamete(List<Integer> alleles, Fraction chance, Optional<Sex> decides) {

    /// A genotype, and a phase where it matters, that a parent may have, with its gametes.
    ///
    /// @param weight its chance
    record Source(Fraction weight, List<Gamete> gametes) {}

    static final Gamete EMPTY = new Gamete(List.of(), Fraction.WHOLE, Optional.empty());

    Gamete with(int allele, Fraction factor) {
        var more = new ArrayList<>(alleles);
        more.add(allele);
        return new Gamete(List.copyOf(more), chance.times(factor), decides);
    }
}
