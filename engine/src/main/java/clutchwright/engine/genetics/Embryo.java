package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.util.List;
import java.util.Optional;

/// A kind of embryo at some of the loci.
///
/// @param parents number of what the parents are supposed to be, see [Embryos]
/// @param fromDam number of the allele at each locus
/// @param fromSire number of the allele at each locus
/// @param sex if these loci tell it
/// @param given chance of this kind among the embryos of those parents, in a [Block] times the
///     chance that it lives
record Embryo(
        int parents,
        List<Integer> fromDam,
        List<Integer> fromSire,
        Optional<Sex> sex,
        Fraction given) {}
