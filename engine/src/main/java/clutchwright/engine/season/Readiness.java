package clutchwright.engine.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/// What speaks against pairing an animal now, by what is common practice.
///
/// Advice, and no permission; a veterinarian decides on health.
///
/// @param findings none where nothing speaks against it
public record Readiness(List<Finding> findings) {

    /// A weight older than that says little.
    private static final int STALE_DAYS = 60;

    /// So far back a loss of weight is looked for.
    private static final int TREND_DAYS = 180;

    /// From this share on a loss counts: 10 to 15 %.
    private static final double LOSS = 0.1;

    /// What she should have of her best weight before the last clutch.
    private static final double REGAINED = 0.9;

    /// 3 to 5 females are usual for a male.
    private static final int MOST_MATES = 5;

    public Readiness {
        findings = List.copyOf(findings);
    }

    /// One thing that speaks against it.
    public sealed interface Finding {

        record TooLight(double grams, double leastGrams) implements Finding {}

        record TooYoung(int months, int leastMonths) implements Finding {}

        record NeverWeighed() implements Finding {}

        record WeighedLongAgo(int days) implements Finding {}

        /// @param share of the best weight of the last half year
        record LosingWeight(double share) implements Finding {}

        /// She laid in the season before.
        ///
        /// @param share of her best weight before that, which she has now
        record NotRegained(double share) implements Finding {}

        record ManyMates(int females) implements Finding {}
    }

    /// @param grams from when on; above zero
    /// @param months from when on
    public record Minimum(double grams, int months) {}

    /// @param daysAgo 0 or more
    public record Weight(int daysAgo, double grams) {}

    /// What is on record of an animal.
    ///
    /// @param months of age, where it is known
    /// @param weights in any order
    /// @param laidDaysAgo since a female's last clutch
    /// @param mates females of a male this season, this one among them; 0 of a female
    public record Animal(
            Optional<Minimum> minimum,
            OptionalInt months,
            List<Weight> weights,
            OptionalInt laidDaysAgo,
            int mates) {

        public Animal {
            weights = List.copyOf(weights);
        }
    }

    public static Readiness of(Animal animal) {
        var findings = new ArrayList<Finding>();
        animal.minimum()
                .ifPresent(
                        minimum ->
                                animal.months().stream()
                                        .filter(months -> months < minimum.months())
                                        .forEach(
                                                months ->
                                                        findings.add(
                                                                new Finding.TooYoung(
                                                                        months,
                                                                        minimum.months()))));
        weights(animal, findings);
        if (animal.mates() > MOST_MATES) {
            findings.add(new Finding.ManyMates(animal.mates()));
        }
        return new Readiness(findings);
    }

    private static void weights(Animal animal, List<Finding> findings) {
        var last = animal.weights().stream().min(Comparator.comparingInt(Weight::daysAgo));
        if (last.isEmpty()) {
            findings.add(new Finding.NeverWeighed());
            return;
        }
        var now = last.get();
        if (now.daysAgo() > STALE_DAYS) {
            findings.add(new Finding.WeighedLongAgo(now.daysAgo()));
        }
        animal.minimum()
                .filter(minimum -> now.grams() < minimum.grams())
                .ifPresent(
                        minimum ->
                                findings.add(new Finding.TooLight(now.grams(), minimum.grams())));
        if (animal.laidDaysAgo().isPresent()) {
            var laid = animal.laidDaysAgo().getAsInt();
            // Eggs are a third of her: that she is lighter than before them is no loss of condition
            // by itself, but she should have made it up.
            best(animal, laid, laid + TREND_DAYS)
                    .filter(before -> now.daysAgo() < laid && now.grams() < REGAINED * before)
                    .ifPresent(
                            before -> findings.add(new Finding.NotRegained(now.grams() / before)));
        }
        var since = animal.laidDaysAgo().orElse(Integer.MAX_VALUE);
        best(animal, now.daysAgo(), Math.min(TREND_DAYS, since))
                .filter(before -> now.grams() <= (1 - LOSS) * before)
                .ifPresent(
                        before -> findings.add(new Finding.LosingWeight(1 - now.grams() / before)));
    }

    /// The best weight between two days ago, the later one excluded.
    private static Optional<Double> best(Animal animal, int fromDaysAgo, int toDaysAgo) {
        return animal.weights().stream()
                .filter(weight -> weight.daysAgo() >= fromDaysAgo && weight.daysAgo() < toDaysAgo)
                .map(Weight::grams)
                .max(Double::compare);
    }
}
