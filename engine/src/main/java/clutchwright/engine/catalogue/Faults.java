package clutchwright.engine.catalogue;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/// Gathers what is wrong with one text, so that a keeper sees all of it at once.
final class Faults {

    private final String file;
    private final List<CatalogueText.Fault> faults = new ArrayList<>();

    Faults(String file) {
        this.file = file;
    }

    void add(int line, String found, String expected) {
        faults.add(new CatalogueText.Fault(file, line, found, expected));
    }

    void add(TextLine line, String found, String expected) {
        add(line.number(), found, expected);
    }

    /// A word that is none of the known ones; the nearest of them stands first in what is expected.
    void unknown(TextLine line, String what, String written, Collection<String> known) {
        var nearest =
                EditDistance.nearest(written, known)
                        .map(name -> "perhaps '" + name + "'; ")
                        .orElse("");
        add(line, "unknown %s '%s'".formatted(what, written), nearest + oneOf(known));
    }

    int count() {
        return faults.size();
    }

    List<CatalogueText.Fault> inOrder() {
        return faults.stream().sorted(Comparator.comparingInt(CatalogueText.Fault::line)).toList();
    }

    private static String oneOf(Collection<String> known) {
        if (known.isEmpty()) {
            return "there is none to name here";
        }
        var shown = known.stream().limit(SHOWN).toList();
        return (known.size() == 1 ? "" : "one of ")
                + String.join(", ", shown)
                + (known.size() > shown.size() ? " ..." : "");
    }

    private static final int SHOWN = 12;
}
