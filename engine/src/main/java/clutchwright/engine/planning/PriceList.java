package clutchwright.engine.planning;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;

/// What a breeder asks for hatchlings: by what shows, by sex, and more for each allele that is
/// carried unseen, at its chance.
///
/// A look that is not on the list has no price: it is worth nothing, and is named as such.
///
/// @param prices each look and sex once
/// @param hets what one carried copy adds, for a hatchling that surely has it
public record PriceList(List<Price> prices, SequencedMap<Allele, Double> hets) {

    public static final PriceList NONE = new PriceList(List.of(), new LinkedHashMap<>());

    public PriceList {
        prices = List.copyOf(prices);
        hets = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(hets));
        var seen = new LinkedHashSet<Look>();
        for (var price : prices) {
            if (!seen.add(price.look())) {
                throw new IllegalArgumentException("priced twice: " + price.look());
            }
        }
    }

    /// @param shows exactly these forms; none for animals that show nothing
    /// @param sex only of that sex; empty for either
    public record Look(Set<Phenotype> shows, Optional<Sex> sex) {

        public Look {
            shows = Set.copyOf(shows);
        }
    }

    /// @param steps the dearest first, at least one
    public record Price(Look look, List<PriceStep> steps) {

        public Price {
            steps = List.copyOf(steps);
            if (steps.isEmpty()) {
                throw new IllegalArgumentException("a price without a step: " + look);
            }
        }
    }

    /// A part of an outcome's hatchlings that sells at the same prices.
    ///
    /// @param kind its name, with `1.0` or `0.1` before it where only that sex is meant
    /// @param steps none where it has no price
    /// @param share of the outcome's hatchlings
    public record Sold(String kind, List<PriceStep> steps, double share) {

        public Sold {
            steps = List.copyOf(steps);
        }

        public boolean isPriced() {
            return !steps.isEmpty();
        }
    }

    /// How an outcome's hatchlings are sold: a price of a sex goes before one of either.
    public List<Sold> sold(Outcome outcome) {
        var shows = Set.copyOf(outcome.shows());
        var either = find(new Look(shows, Optional.empty()));
        var parts = new ArrayList<Sold>();
        var rest = 0.0;
        for (var sex : Sex.values()) {
            var share = Optional.ofNullable(outcome.sexes().get(sex));
            if (share.isEmpty() || share.get().isNone()) {
                continue;
            }
            var own = find(new Look(shows, Optional.of(sex)));
            if (own.isPresent()) {
                parts.add(
                        new Sold(
                                kind(outcome.name(), Optional.of(sex)),
                                own.get().steps(),
                                share.get().value()));
            } else {
                rest += share.get().value();
            }
        }
        if (rest > 0) {
            parts.add(new Sold(outcome.name(), either.map(Price::steps).orElseGet(List::of), rest));
        }
        return List.copyOf(parts);
    }

    /// What a hatchling of the outcome is worth for what it carries unseen: each allele's worth
    /// at its chance.
    public double hetWorth(Outcome outcome) {
        return outcome.carries().stream()
                .mapToDouble(held -> hets.getOrDefault(held.allele(), 0.0) * held.chance().value())
                .sum();
    }

    private Optional<Price> find(Look look) {
        return prices.stream().filter(price -> price.look().equals(look)).findFirst();
    }

    private static String kind(String name, Optional<Sex> sex) {
        return sex.map(one -> one == Sex.MALE ? "1.0 " + name : "0.1 " + name).orElse(name);
    }
}
