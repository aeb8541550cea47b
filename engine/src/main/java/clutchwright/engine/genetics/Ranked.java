package clutchwright.engine.genetics;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;

/// A group with its place in the order of a list.
///
/// @param weight its chance as a whole number of parts; the same parts for every group of a cross
/// @param name as in [Group#name()]
/// @param shows the visible forms in naming order
/// @param places of the loci that show, in naming order
record Ranked(BigInteger weight, String name, List<Phenotype> shows, List<Integer> places) {

    /// Falling chance, then name by code points. Two groups of one name, which a catalogue should
    /// not allow, stand in the naming order of what they show.
    static final Comparator<Ranked> ORDER =
            Comparator.comparing(Ranked::weight, Comparator.reverseOrder())
                    .thenComparing(Ranked::name, CodePoints.ORDER)
                    .thenComparing(Ranked::comparePlaces)
                    .thenComparing(Ranked::compareForms);

    private static int comparePlaces(Ranked a, Ranked b) {
        for (var i = 0; i < Math.min(a.places.size(), b.places.size()); i++) {
            var order = a.places.get(i).compareTo(b.places.get(i));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(a.places.size(), b.places.size());
    }

    private static int compareForms(Ranked a, Ranked b) {
        for (var i = 0; i < a.shows.size(); i++) {
            var order = CodePoints.ORDER.compare(a.shows.get(i).name(), b.shows.get(i).name());
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }
}
