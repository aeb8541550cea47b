package clutchwright.engine.genetics;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;

/// A group with its place in the order of a list.
///
/// @param weight its chance as a whole number of parts; the same parts for every group of a cross
/// @param name as in [Group#name()]
/// @param shows the visible forms in naming order
record Ranked(BigInteger weight, String name, List<Phenotype> shows) {

    /// Falling chance, then name by code points. Two groups of one name, which a catalogue should
    /// not allow, stand in the order of the loci's names.
    static final Comparator<Ranked> ORDER =
            Comparator.comparing(Ranked::weight, Comparator.reverseOrder())
                    .thenComparing(Ranked::name, CodePoints.ORDER)
                    .thenComparing(Ranked::compareForms);

    private static int compareForms(Ranked a, Ranked b) {
        for (var i = 0; i < Math.min(a.shows.size(), b.shows.size()); i++) {
            var one = a.shows.get(i);
            var other = b.shows.get(i);
            var order = one.locus().compareTo(other.locus());
            if (order == 0) {
                order = CodePoints.ORDER.compare(one.name(), other.name());
            }
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(a.shows.size(), b.shows.size());
    }
}
