package clutchwright.engine.planning;

import clutchwright.engine.genetics.Cross;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/// What the young of a pairing sell as: the chance of each kind for one that hatches.
///
/// @param priced chance by kind that has a price
/// @param unpriced chance by kind that has none
/// @param hetWorth what a hatchling is worth on average for what it carries unseen
/// @param steps the prices of each priced kind
/// @param seen share of the young that these kinds are: less than 1 where there are very many
public record ClutchKinds(
        SequencedMap<String, Double> priced,
        SequencedMap<String, Double> unpriced,
        double hetWorth,
        SequencedMap<String, List<PriceStep>> steps,
        double seen) {

    /// So many kinds are looked at, the likeliest first.
    public static final int MOST = 300;

    public ClutchKinds {
        priced = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(priced));
        unpriced = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(unpriced));
        steps = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(steps));
    }

    public static ClutchKinds of(Cross cross, PriceList prices) {
        var priced = new LinkedHashMap<String, Double>();
        var unpriced = new LinkedHashMap<String, Double>();
        var steps = new LinkedHashMap<String, List<PriceStep>>();
        var hetWorth = 0.0;
        var seen = 0.0;
        for (var outcome : cross.likeliest(MOST)) {
            var chance = outcome.chance().value();
            seen += chance;
            hetWorth += chance * prices.hetWorth(outcome);
            for (var part : prices.sold(outcome)) {
                if (part.isPriced()) {
                    priced.merge(part.kind(), chance * part.share(), Double::sum);
                    steps.put(part.kind(), part.steps());
                } else {
                    unpriced.merge(part.kind(), chance * part.share(), Double::sum);
                }
            }
        }
        return new ClutchKinds(priced, unpriced, hetWorth, steps, seen);
    }

    /// What one hatchling would sell for if it were the first of its kind.
    public double firstWorth() {
        var sum = hetWorth;
        for (var kind : priced.entrySet()) {
            sum +=
                    kind.getValue()
                            * steps.getOrDefault(kind.getKey(), List.of()).getFirst().price();
        }
        return sum;
    }
}
