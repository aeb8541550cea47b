package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.util.List;

/// What can be seen at some loci.
///
/// @param shown by locus, the number of the form that shows or [ActiveLocus#NOTHING]
/// @param text the forms that show, as they stand in a name; empty where nothing shows
/// @param chance among all embryos, living and dying
/// @param kinds of embryos that look so
record Look(List<Integer> shown, String text, Fraction chance, List<Embryo> kinds) {

    static String textOf(List<ActiveLocus> loci, List<Integer> shown) {
        var text = "";
        for (var i = 0; i < loci.size(); i++) {
            if (shown.get(i) != ActiveLocus.NOTHING) {
                var name = loci.get(i).forms.get(shown.get(i)).name();
                text = text.isEmpty() ? name : text + " " + name;
            }
        }
        return text;
    }
}
