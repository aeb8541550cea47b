package clutchwright.app.season.plan;

import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Fate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/// What the house's own clutches say of the size of the next one and of how many eggs hatch.
///
/// @param usual eggs of a usual clutch of the species, for a female without a history
/// @param spread standard deviation of a female's clutches about her mean, in eggs
/// @param hatches share of good eggs that hatch
/// @param finished good eggs whose fate is known, and which that share rests on
record ClutchSizes(int usual, double spread, double hatches, int finished, int hatched) {

    /// From memory, until the house has enough clutches of its own.
    private static final double USUAL_SPREAD = 1.6;

    private static final int ENOUGH = 10;

    /// Nine of ten hatch, as if that had been seen of ten eggs: common practice, no source.
    private static final double BELIEVED = 10;

    private static final double BELIEVED_HATCHED = 9;
    private static final int MOST = 20;

    static ClutchSizes of(Collection<List<Clutch>> byDam, int usual) {
        var squares = 0.0;
        var freedom = 0;
        var finished = 0;
        var hatched = 0;
        for (var hers : byDam) {
            var sizes = sizes(hers);
            if (sizes.size() > 1) {
                var mean = mean(sizes, usual);
                squares += sizes.stream().mapToDouble(n -> (n - mean) * (n - mean)).sum();
                freedom += sizes.size() - 1;
            }
            for (var clutch : hers) {
                for (var egg : clutch.eggs()) {
                    switch (egg.fate()) {
                        case Fate.Hatched _ -> {
                            finished++;
                            hatched++;
                        }
                        case Fate.Lost _ -> finished++;
                        case Fate.Incubating _, Fate.Slug _ -> {}
                    }
                }
            }
        }
        return new ClutchSizes(
                usual,
                freedom >= ENOUGH ? Math.sqrt(squares / freedom) : USUAL_SPREAD,
                (hatched + BELIEVED_HATCHED) / (finished + BELIEVED),
                finished,
                hatched);
    }

    static List<Integer> sizes(List<Clutch> clutches) {
        return clutches.stream().map(Clutch::goodEggs).filter(n -> n > 0).toList();
    }

    private static double mean(List<Integer> sizes, double usual) {
        return sizes.stream().mapToInt(Integer::intValue).average().orElse(usual);
    }

    /// The chance of each number of good eggs of a female's next clutch: her own mean, or the
    /// usual where she has no clutch on record, with the spread of the house, whole numbers.
    SequencedMap<Integer, Double> of(List<Clutch> hers) {
        var mean = mean(sizes(hers), usual);
        var weights = new ArrayList<Double>();
        var sum = 0.0;
        for (var n = 1; n <= MOST; n++) {
            var off = (n - mean) / Math.max(0.3, spread);
            var weight = Math.exp(-off * off / 2);
            weights.add(weight);
            sum += weight;
        }
        var chances = new LinkedHashMap<Integer, Double>();
        for (var n = 1; n <= MOST; n++) {
            chances.put(n, weights.get(n - 1) / sum);
        }
        return chances;
    }
}
