package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.util.List;
import java.util.Optional;

/// A kind of young of a pairing, at every locus that the pairing touches.
///
/// @param fromDam the allele at each locus on the strand from the dam, in naming order
/// @param fromSire the allele at each locus on the strand from the sire
/// @param sex where the loci tell it; else either sex alike
/// @param shows the visible forms in naming order; empty where nothing shows
/// @param chance among the embryos that live, above zero
public record Young(
        List<Allele> fromDam,
        List<Allele> fromSire,
        Optional<Sex> sex,
        List<Phenotype> shows,
        Fraction chance) {

    public Young {
        fromDam = List.copyOf(fromDam);
        fromSire = List.copyOf(fromSire);
        shows = List.copyOf(shows);
    }
}
