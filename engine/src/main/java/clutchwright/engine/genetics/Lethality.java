package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.util.BitSet;
import java.util.List;

/// A combination that not every embryo survives and that the pairing may give.
///
/// @param parts those at active loci; parts at other loci hold for every embryo
/// @param places of the active loci that it speaks of
record Lethality(List<Caution.Part> parts, BitSet places, Fraction viability) {

    static List<Lethality> allOf(GeneticModel model, List<ActiveLocus> loci) {
        return model.combinations().stream()
                .filter(combination -> !combination.viability().counted().isWhole())
                .filter(combination -> isPossible(combination.parts(), loci))
                .map(combination -> of(combination, loci))
                .toList();
    }

    private static Lethality of(Combination combination, List<ActiveLocus> loci) {
        var places = new BitSet();
        var parts =
                combination.parts().stream()
                        .filter(part -> loci.stream().anyMatch(locus -> isAt(part, locus)))
                        .toList();
        for (var part : parts) {
            loci.stream()
                    .filter(locus -> isAt(part, locus))
                    .forEach(locus -> places.set(locus.place));
        }
        return new Lethality(parts, places, combination.viability().counted());
    }

    private static boolean isPossible(List<Caution.Part> parts, List<ActiveLocus> loci) {
        return parts.stream()
                .allMatch(
                        part ->
                                loci.stream()
                                        .filter(locus -> isAt(part, locus))
                                        .findFirst()
                                        .map(locus -> locus.numberOf(part.allele()) >= 0)
                                        .orElse(part.allele().isWild()));
    }

    private static boolean isAt(Caution.Part part, ActiveLocus locus) {
        return part.allele().locus().equals(locus.id);
    }

    boolean holdsFor(Embryo kind, List<ActiveLocus> loci) {
        return holdFor(parts, kind, loci);
    }

    /// Whether an embryo has all parts that concern these loci.
    static boolean holdFor(List<Caution.Part> parts, Embryo kind, List<ActiveLocus> loci) {
        for (var part : parts) {
            for (var i = 0; i < loci.size(); i++) {
                if (isAt(part, loci.get(i))) {
                    var allele = loci.get(i).numberOf(part.allele());
                    var copies =
                            (kind.fromDam().get(i) == allele ? 1 : 0)
                                    + (kind.fromSire().get(i) == allele ? 1 : 0);
                    if (copies < part.copies()) {
                        return false;
                    }
                }
            }
        }
        return true;
    }
}
