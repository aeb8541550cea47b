package clutchwright.app.season;

import clutchwright.app.holding.Holding;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ReadinessWords;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.season.Readiness;
import clutchwright.engine.season.Readiness.Minimum;
import clutchwright.engine.season.Readiness.Weight;
import clutchwright.records.animals.Animal;
import clutchwright.records.clutches.LaidOn;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/// What speaks against pairing two animals now: a word of advice, never a bar.
public final class Ready {

    /// A clutch longer ago than that was not last season's.
    private static final int LAST_SEASON_DAYS = 400;

    private final Holding holding;
    private final Transaction tx;
    private final List<LaidOn> laid;
    private final List<Pairing> pairings;

    /// @param laid all clutches
    /// @param pairings of the season
    public Ready(Holding holding, Transaction tx, List<LaidOn> laid, List<Pairing> pairings) {
        this.holding = holding;
        this.tx = tx;
        this.laid = laid;
        this.pairings = pairings;
    }

    /// Of both, as sentences; none where nothing speaks against it.
    List<String> of(Pairing pairing, Formats formats) {
        var words = new ReadinessWords(formats);
        var sentences = new ArrayList<String>();
        for (var id : List.of(pairing.dam(), pairing.sire())) {
            holding.knowledge()
                    .find(id)
                    .ifPresent(
                            animal ->
                                    readiness(animal)
                                            .findings()
                                            .forEach(
                                                    finding ->
                                                            sentences.add(
                                                                    words.of(
                                                                            animal.tag().value(),
                                                                            finding))));
        }
        return sentences;
    }

    private Readiness readiness(Animal animal) {
        return readiness(animal, 0);
    }

    /// Of one animal by itself.
    ///
    /// @param monthsAhead from today to when it is asked about
    public Readiness readiness(Animal animal, int monthsAhead) {
        var today = holding.today();
        return Readiness.of(
                new Readiness.Animal(
                        minimum(animal),
                        months(animal, today.plusMonths(monthsAhead)),
                        new Husbandry(tx)
                                .weights(animal.id()).stream()
                                        .map(
                                                weighing ->
                                                        new Weight(
                                                                days(weighing.on(), today),
                                                                weighing.grams()))
                                        .toList(),
                        laidDaysAgo(animal.id(), today),
                        mates(animal.id())));
    }

    private static Optional<Minimum> minimum(Animal animal) {
        if (animal.sex().isEmpty() || !Catalogue.shippedSpecies().contains(animal.species())) {
            return Optional.empty();
        }
        return Catalogue.shipped(animal.species())
                .species()
                .minimumOf(animal.sex().get())
                .map(minimum -> new Minimum(minimum.grams(), minimum.months()));
    }

    /// By the latest day on which it may have hatched.
    private static OptionalInt months(Animal animal, LocalDate today) {
        return animal.hatched()
                .span()
                .map(
                        span ->
                                OptionalInt.of(
                                        Math.max(
                                                0,
                                                Math.toIntExact(
                                                        ChronoUnit.MONTHS.between(
                                                                span.latest(), today)))))
                .orElse(OptionalInt.empty());
    }

    private OptionalInt laidDaysAgo(AnimalId id, LocalDate today) {
        return laid.stream()
                .filter(each -> each.dam().equals(id))
                .map(LaidOn::day)
                .max(Comparator.naturalOrder())
                .map(day -> days(day, today))
                .filter(days -> days <= LAST_SEASON_DAYS)
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    private int mates(AnimalId id) {
        return Math.toIntExact(
                pairings.stream()
                        .filter(pairing -> pairing.sire().equals(id))
                        .map(Pairing::dam)
                        .distinct()
                        .count());
    }

    private static int days(LocalDate from, LocalDate today) {
        return Math.max(0, Math.toIntExact(ChronoUnit.DAYS.between(from, today)));
    }
}
