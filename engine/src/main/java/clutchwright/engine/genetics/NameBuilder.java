package clutchwright.engine.genetics;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/// Puts a name together, look by look in naming order.
final class NameBuilder {

    private final StringBuilder text = new StringBuilder(128);
    private final List<Phenotype> shows = new ArrayList<>();
    private final List<Integer> places = new ArrayList<>();

    void add(Stage stage, int look) {
        var words = stage.texts().get(look);
        if (words.isEmpty()) {
            return;
        }
        if (!text.isEmpty()) {
            text.append(' ');
        }
        text.append(words);
        var shown = stage.shown().get(look);
        for (var i = 0; i < shown.size(); i++) {
            if (shown.get(i) != ActiveLocus.NOTHING) {
                var locus = stage.loci().get(i);
                shows.add(locus.forms.get(shown.get(i)));
                places.add(locus.place);
            }
        }
    }

    Ranked build(BigInteger weight, String nameOfNothing) {
        return new Ranked(weight, text.isEmpty() ? nameOfNothing : text.toString(), shows, places);
    }
}
