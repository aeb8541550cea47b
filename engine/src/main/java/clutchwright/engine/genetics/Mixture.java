package clutchwright.engine.genetics;

import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.LinkedHashMap;
import java.util.List;

/// One of several distributions, chosen by weight.
final class Mixture {

    private Mixture() {}

    /// @param weights above zero; they need not sum to one
    static <T> Distribution<T> of(List<Distribution<T>> parts, List<Fraction> weights) {
        var sums = new LinkedHashMap<T, Fraction>();
        for (var i = 0; i < parts.size(); i++) {
            var weight = weights.get(i);
            parts.get(i)
                    .chances()
                    .forEach(
                            (outcome, chance) ->
                                    sums.merge(outcome, chance.times(weight), Fraction::plus));
        }
        return Distribution.proportionalTo(sums).orElseThrow();
    }
}
