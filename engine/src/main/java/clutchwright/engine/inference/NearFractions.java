package clutchwright.engine.inference;

import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Optional;
import java.util.SequencedMap;

/// Chances in floating point as an exact distribution: `0.66666666666666` is two thirds.
final class NearFractions {

    private static final int PARTS = 1_000_000_000;
    private static final int SMALL = 1_000;
    private static final double NEAR = 1e-9;

    private NearFractions() {}

    /// Each chance as the fraction of a denominator up to 1,000 that lies within 1e-9, if that
    /// holds for all of them and they sum to one; else all in parts of 10^9, to the nearest.
    /// What is left of an outcome below one part is nothing.
    ///
    /// @param chances above zero, their sum one within rounding
    static <T> Distribution<T> of(SequencedMap<T, Double> chances) {
        var small = new LinkedHashMap<T, Fraction>();
        chances.forEach(
                (outcome, chance) -> small(chance).ifPresent(near -> small.put(outcome, near)));
        var sum = small.values().stream().reduce(Fraction.NONE, Fraction::plus);
        return small.size() == chances.size() && sum.isWhole()
                ? new Distribution<>(small)
                : inParts(chances);
    }

    private static Optional<Fraction> small(double chance) {
        // The convergents of the continued fraction: no other fractions are as near.
        long before = 0;
        long denominator = 1;
        var rest = chance;
        while (denominator <= SMALL) {
            var numerator = Math.round(chance * denominator);
            if (numerator > 0 && Math.abs(chance - (double) numerator / denominator) < NEAR) {
                return Optional.of(Fraction.of(numerator, denominator));
            }
            var left = rest - Math.floor(rest);
            if (left < NEAR) {
                return Optional.empty();
            }
            rest = 1 / left;
            var next = (long) Math.floor(rest) * denominator + before;
            before = denominator;
            denominator = next;
        }
        return Optional.empty();
    }

    private static <T> Distribution<T> inParts(SequencedMap<T, Double> chances) {
        var parts = new LinkedHashMap<T, Long>();
        chances.forEach((outcome, chance) -> parts.put(outcome, (long) (chance * PARTS)));
        var left = PARTS - parts.values().stream().mapToLong(Long::longValue).sum();
        var byRemainder = new ArrayList<>(chances.sequencedKeySet());
        byRemainder.sort(
                Comparator.comparingDouble(
                                (T outcome) ->
                                        chances.getOrDefault(outcome, 0.0) * PARTS
                                                - parts.getOrDefault(outcome, 0L))
                        .reversed());
        // Rounding may leave the sum of the chances a little above one as well.
        for (var i = 0; left != 0; i++) {
            parts.merge(byRemainder.get(i % byRemainder.size()), left > 0 ? 1L : -1L, Long::sum);
            left -= left > 0 ? 1 : -1;
        }
        var weights = new LinkedHashMap<T, Fraction>();
        parts.forEach(
                (outcome, count) -> {
                    if (count > 0) {
                        weights.put(outcome, Fraction.of(count, PARTS));
                    }
                });
        return Distribution.proportionalTo(weights).orElseThrow();
    }
}
