package clutchwright.app.wording;

import clutchwright.engine.catalogue.Species;
import java.util.Locale;

/// What a species is called.
public final class SpeciesWords {

    private SpeciesWords() {}

    /// The first of its common names: `Royal python`.
    public static String name(Species species) {
        return species.commonName().split(";", 2)[0].strip();
    }

    /// The same within a sentence: `royal python`.
    public static String within(Species species) {
        return name(species).toLowerCase(Locale.ROOT);
    }
}
