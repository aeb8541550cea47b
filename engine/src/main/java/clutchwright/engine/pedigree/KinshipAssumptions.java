package clutchwright.engine.pedigree;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SequencedMap;

/// What kinship is computed with beside the pedigree.
///
/// @param secondDivision chance that a locus segregates at the second division of a meiosis, from 0
///     at the centromere to 2/3 far from it: a parthenogenetic young keeps so much of its dam's
///     heterozygosity
/// @param sires chances of the candidates of a question, by its key; a question that is not named
///     keeps its own
public record KinshipAssumptions(
        double secondDivision, SequencedMap<String, Map<AnimalId, Double>> sires) {

    /// Halfway between the two ends of a chromosome arm, and sires as likely as they are on record.
    public static final KinshipAssumptions STANDARD =
            new KinshipAssumptions(1.0 / 3, new LinkedHashMap<>());

    private static final double ROUNDING = 1e-9;

    public KinshipAssumptions {
        // Written so that NaN fails it.
        if (!(secondDivision >= 0 && secondDivision <= 1)) {
            throw new IllegalArgumentException(
                    "second-division segregation is " + secondDivision + ", not from 0 to 1");
        }
        var copy = new LinkedHashMap<String, Map<AnimalId, Double>>();
        sires.forEach((key, chances) -> copy.put(key, checked(key, chances)));
        sires = Collections.unmodifiableSequencedMap(copy);
    }

    public KinshipAssumptions withSecondDivision(double chance) {
        return new KinshipAssumptions(chance, sires);
    }

    /// @param chances by the key of the question; those of a question sum to one
    public KinshipAssumptions withSires(SequencedMap<String, Map<AnimalId, Double>> chances) {
        return new KinshipAssumptions(secondDivision, chances);
    }

    private static Map<AnimalId, Double> checked(String key, Map<AnimalId, Double> chances) {
        double sum = 0;
        for (double chance : chances.values()) {
            if (!(chance >= 0 && chance <= 1)) {
                throw new IllegalArgumentException("a chance of " + key + " is " + chance);
            }
            sum += chance;
        }
        if (!(Math.abs(sum - 1) <= ROUNDING)) {
            throw new IllegalArgumentException("chances of " + key + " sum to " + sum);
        }
        return Collections.unmodifiableMap(new LinkedHashMap<>(chances));
    }
}
