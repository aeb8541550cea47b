package clutchwright.engine.probability;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.SequencedSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;

/// A finite probability distribution with exact weights, in the order its outcomes were first met.
///
/// @param chances each outcome once, every chance above zero, the sum exactly one
public record Distribution<T>(SequencedMap<T, Fraction> chances) {

    public Distribution {
        if (!chances.values().stream().allMatch(chance -> chance.compareTo(Fraction.NONE) > 0)) {
            throw new IllegalArgumentException("a chance is not above zero: " + chances);
        }
        var sum = chances.values().stream().reduce(Fraction.NONE, Fraction::plus);
        if (!sum.equals(Fraction.WHOLE)) {
            throw new IllegalArgumentException("chances sum to " + sum + ", not 1/1: " + chances);
        }
        // Not Map.copyOf: its order changes from run to run, and this order reaches the user.
        chances = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(chances));
    }

    public static <T> Distribution<T> certain(T outcome) {
        var chances = new LinkedHashMap<T, Fraction>();
        chances.put(outcome, Fraction.WHOLE);
        return new Distribution<>(chances);
    }

    /// Each entry alike; an outcome that stands twice counts twice.
    ///
    /// @throws IllegalArgumentException if there is no outcome
    public static <T> Distribution<T> uniform(Collection<? extends T> outcomes) {
        if (outcomes.isEmpty()) {
            throw new IllegalArgumentException("no outcome to choose from");
        }
        var each = Fraction.of(1, outcomes.size());
        var chances = new LinkedHashMap<T, Fraction>();
        outcomes.forEach(outcome -> chances.merge(outcome, each, Fraction::plus));
        return new Distribution<>(chances);
    }

    /// Weights scaled to sum to one; outcomes of weight zero are left out. Empty if all are zero.
    public static <T> Optional<Distribution<T>> proportionalTo(SequencedMap<T, Fraction> weights) {
        var sum = weights.values().stream().reduce(Fraction.NONE, Fraction::plus);
        if (sum.isNone()) {
            return Optional.empty();
        }
        var chances = new LinkedHashMap<T, Fraction>();
        weights.forEach(
                (outcome, weight) -> {
                    if (!weight.isNone()) {
                        chances.put(outcome, weight.dividedBy(sum));
                    }
                });
        return Optional.of(new Distribution<>(chances));
    }

    public SequencedSet<T> outcomes() {
        return chances.sequencedKeySet();
    }

    public Fraction chanceOf(T outcome) {
        return chances.getOrDefault(outcome, Fraction.NONE);
    }

    public Fraction chanceThat(Predicate<? super T> event) {
        return chances.entrySet().stream()
                .filter(entry -> event.test(entry.getKey()))
                .map(entry -> entry.getValue())
                .reduce(Fraction.NONE, Fraction::plus);
    }

    /// The distribution given that the event happened; empty if it cannot happen.
    public Optional<Distribution<T>> given(Predicate<? super T> event) {
        var left = new LinkedHashMap<T, Fraction>();
        chances.forEach(
                (outcome, chance) -> {
                    if (event.test(outcome)) {
                        left.put(outcome, chance);
                    }
                });
        return proportionalTo(left);
    }

    public <R> Distribution<R> map(Function<? super T, ? extends R> function) {
        var image = new LinkedHashMap<R, Fraction>();
        chances.forEach(
                (outcome, chance) -> image.merge(function.apply(outcome), chance, Fraction::plus));
        return new Distribution<>(image);
    }

    /// The distribution of `function(this, that)` for independent draws.
    public <U, R> Distribution<R> combine(
            Distribution<U> that, BiFunction<? super T, ? super U, ? extends R> function) {
        var joint = new LinkedHashMap<R, Fraction>();
        chances.forEach(
                (a, p) ->
                        that.chances.forEach(
                                (b, q) ->
                                        joint.merge(
                                                function.apply(a, b), p.times(q), Fraction::plus)));
        return new Distribution<>(joint);
    }

    /// Draws from `function(outcome)` after drawing the outcome.
    public <R> Distribution<R> then(Function<? super T, Distribution<R>> function) {
        var mixed = new LinkedHashMap<R, Fraction>();
        chances.forEach(
                (a, p) ->
                        function.apply(a)
                                .chances
                                .forEach((b, q) -> mixed.merge(b, p.times(q), Fraction::plus)));
        return new Distribution<>(mixed);
    }

    /// The outcome that is certain, if one is.
    public Optional<T> theCertain() {
        return chances.size() == 1 ? Optional.of(outcomes().getFirst()) : Optional.empty();
    }
}
