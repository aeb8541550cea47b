package clutchwright.engine.genetics;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/// Puts names together, look by look in naming order; one name after the other.
final class NameBuilder {

    private final StringBuilder text = new StringBuilder(512);
    private List<Phenotype> shows = new ArrayList<>();

    void add(Stage stage, int look) {
        var forms = stage.shown().get(look);
        if (forms.isEmpty()) {
            return;
        }
        if (!text.isEmpty()) {
            text.append(' ');
        }
        text.append(stage.texts().get(look));
        for (var i = 0; i < forms.size(); i++) {
            shows.add(forms.get(i));
        }
    }

    /// The name so far; the next begins anew.
    Ranked build(BigInteger weight, String nameOfNothing) {
        var ranked = new Ranked(weight, text.isEmpty() ? nameOfNothing : text.toString(), shows);
        text.setLength(0);
        shows = new ArrayList<>(shows.size() + 1);
        return ranked;
    }
}
