package clutchwright.engine.pedigree;

import java.util.HashMap;
import java.util.SequencedMap;
import java.util.TreeMap;

/// In which ancestor a gene of one node and a gene of another first meet, each traced to where it
/// came from.
///
/// Wright's paths, added up without listing them: the chance of being at a pair of nodes is moved
/// on to the parents of the younger until both are the same.
final class MeetingPoints {

    private final Descent descent;

    /// The chance of each pair, the younger first in the key.
    private final TreeMap<Long, Double> pairs = new TreeMap<>();

    private final HashMap<Integer, Double> met = new HashMap<>();

    MeetingPoints(Descent descent) {
        this.descent = descent;
    }

    /// The chance of meeting in each node, youngest first; never in a mixture, but in the
    /// candidates.
    SequencedMap<Integer, Double> of(int one, int other) {
        arrive(one, other, 1);
        var found = new TreeMap<Integer, Double>((a, b) -> Integer.compare(b, a));
        while (!pairs.isEmpty()) {
            var youngest = pairs.pollLastEntry();
            int younger = (int) (youngest.getKey() >>> 32);
            int older = youngest.getKey().intValue();
            if (younger == older) {
                meet(younger, youngest.getValue());
            } else {
                moveOn(younger, older, youngest.getValue());
            }
        }
        found.putAll(met);
        return found;
    }

    private void meet(int node, double chance) {
        if (descent.first(node) != Descent.MIXTURE) {
            met.merge(node, chance, Double::sum);
            return;
        }
        var candidates = descent.candidates(descent.second(node));
        var chances = descent.chances(descent.second(node));
        for (int i = 0; i < candidates.length; i++) {
            met.merge(candidates[i], chance * chances[i], Double::sum);
        }
    }

    private void moveOn(int younger, int older, double chance) {
        int first = descent.first(younger);
        int second = descent.second(younger);
        if (first == Descent.MIXTURE) {
            var candidates = descent.candidates(second);
            var chances = descent.chances(second);
            for (int i = 0; i < candidates.length; i++) {
                arrive(candidates[i], older, chance * chances[i]);
            }
            return;
        }
        if (first >= 0) {
            arrive(first, older, chance / 2);
        }
        if (second >= 0) {
            arrive(second, older, chance / 2);
        }
    }

    private void arrive(int one, int other, double chance) {
        if (chance > 0) {
            long pair = (long) Math.max(one, other) << 32 | Math.min(one, other);
            pairs.merge(pair, chance, Double::sum);
        }
    }
}
