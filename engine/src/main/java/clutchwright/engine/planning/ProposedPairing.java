package clutchwright.engine.planning;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.SequencedMap;
import java.util.SequencedSet;

/// A female and a male that may be put together this season, and what that is expected to bring.
///
/// @param worth of the clutch beyond its hatchlings of a kind that is priced: what the breeder
///     counts for progress and proof
/// @param hatchlings expected of each kind; what is not listed has no price
/// @param kinship of the two, which is the inbreeding of their young, 0 to 1
/// @param boxes expected to stand in use by week
/// @param places of hatchlings expected to be in use by week
/// @param projects that it is a step of
/// @param hindrance why it is not to be made; blank if nothing speaks against it
/// @param overruled the breeder's written reason to make it all the same; may be blank
public record ProposedPairing(
        String dam,
        String sire,
        double worth,
        SequencedMap<String, Double> hatchlings,
        double kinship,
        SequencedMap<String, Double> boxes,
        SequencedMap<String, Double> places,
        SequencedSet<String> projects,
        String hindrance,
        String overruled) {

    public ProposedPairing {
        if (!(kinship >= 0 && kinship <= 1) || !Double.isFinite(worth)) {
            throw new IllegalArgumentException(dam + " x " + sire + ": kinship " + kinship);
        }
        hatchlings = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(hatchlings));
        boxes = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(boxes));
        places = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(places));
        projects = Collections.unmodifiableSequencedSet(new LinkedHashSet<>(projects));
    }

    /// Hindered, and not overruled in writing.
    public boolean isExcluded() {
        return !hindrance.isBlank() && overruled.isBlank();
    }

    @Override
    public String toString() {
        return dam + " x " + sire;
    }
}
