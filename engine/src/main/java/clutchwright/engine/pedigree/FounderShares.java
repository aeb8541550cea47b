package clutchwright.engine.pedigree;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.SequencedMap;

/// What part of an animal's genes is from which founder, as is to be expected.
///
/// @param founders   the largest share first; each above zero
/// @param unrecorded the part from parents that are not on record
public record FounderShares(SequencedMap<AnimalId, Double> founders, double unrecorded) {

    public FounderShares {
        founders = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(founders));
    }
}
