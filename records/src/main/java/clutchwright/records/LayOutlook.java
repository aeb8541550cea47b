package clutchwright.records;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.probability.Forecast;
import clutchwright.engine.season.CollectionMean;
import clutchwright.engine.season.DayOfYear;
import clutchwright.engine.season.LayForecast;
import clutchwright.engine.season.LayModel;
import clutchwright.engine.season.LayModel.Female;
import clutchwright.engine.season.LayModel.Other;
import clutchwright.engine.season.LayPriors;
import clutchwright.engine.season.SeasonYear;
import clutchwright.engine.season.Sign;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.clutches.LaidOn;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.pairings.SignSeen;
import clutchwright.records.settings.Settings;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SequencedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// When the females that are paired in a season, and have not laid yet, will lay.
public final class LayOutlook {

    /// From the first day together to laying: common practice, no source. It only tells which of
    /// two years is meant.
    private static final int TOGETHER_TO_LAY_DAYS = 105;

    /// Common practice, no source. It only tells which of two years is meant.
    private static final int LAY_TO_HATCH_DAYS = 57;

    /// A female that has no clutch on record and is younger than that has not laid before.
    private static final int YOUNG_YEARS = 5;

    private static final int OVER_DAYS = 60;

    /// Another that laid further off than that, in standard deviations, says nothing of the season.
    private static final double FAR_OFF = 3.5;

    private final LocalDate today;
    private final LayPriors priors;
    private final LayModel model;
    private final Map<AnimalId, List<LaidOn>> laid;
    private final double anchor;
    private final Map<SeasonYear, Map<AnimalId, Other>> othersOfYear = new HashMap<>();

    private LayOutlook(LocalDate today, LayPriors priors, List<LaidOn> laid) {
        this.today = today;
        this.priors = priors;
        this.model = new LayModel(priors);
        this.laid = laid.stream().collect(Collectors.groupingBy(LaidOn::dam));
        this.anchor =
                DayOfYear.mean(
                                laid.stream()
                                        .map(each -> (double) each.day().getDayOfYear())
                                        .toList())
                        .orElse(priors.meanDay());
    }

    /// One female's forecast.
    ///
    /// @param year along whose days it is counted
    public record Expected(SeasonYear year, LayForecast forecast) {

        /// The day by which she has laid with that chance.
        public LocalDate by(double chance) {
            return year.date(forecast.laid().quantile(chance));
        }

        /// The last of the likely days, before she was late: 95 in 100 are over.
        public LocalDate lastBefore() {
            var laid = forecast.laid();
            return year.date(Forecast.of(laid.centre(), laid.spreadDays()).quantile(0.95));
        }

        /// The likeliest day, about.
        public LocalDate about() {
            return year.date(forecast.laid().mean());
        }
    }

    /// @return by female, whoever is expected first in front
    public static SequencedMap<AnimalId, Expected> of(Transaction tx, int season) {
        var pairings = new Pairings(tx);
        var outlook =
                new LayOutlook(
                        tx.today(), LayAssumed.read(new Settings(tx)), new Clutches(tx).days());
        var byDam =
                pairings.ofSeason(season).stream()
                        .collect(
                                Collectors.groupingBy(
                                        Pairing::dam, LinkedHashMap::new, Collectors.toList()));
        var signs = pairings.signsOfSeason(season);
        var tried = pairings.seasonsTried();
        var hatched = new HashMap<AnimalId, Optional<Integer>>();
        new Animals(tx)
                .find(byDam.keySet())
                .forEach(animal -> hatched.put(animal.id(), animal.hatched().season()));
        var found = new ArrayList<Map.Entry<AnimalId, Expected>>();
        byDam.forEach(
                (dam, hers) -> {
                    var seen = signsOf(hers, signs);
                    if (!outlook.hasLaid(dam, hers, seen)) {
                        var expected =
                                outlook.expected(
                                        dam,
                                        outlook.today.plusDays(TOGETHER_TO_LAY_DAYS),
                                        hers,
                                        seen,
                                        tried.getOrDefault(dam, 0),
                                        hatched.getOrDefault(dam, Optional.empty()));
                        if (!outlook.isOver(expected)) {
                            found.add(Map.entry(dam, expected));
                        }
                    }
                });
        found.sort(Comparator.comparing(each -> each.getValue().about()));
        var sorted = new LinkedHashMap<AnimalId, Expected>();
        found.forEach(each -> sorted.put(each.getKey(), each.getValue()));
        return Collections.unmodifiableSequencedMap(sorted);
    }

    /// Females that are not paired yet, as if they were this season.
    ///
    /// @param season by the year in which their young would hatch
    public static Map<AnimalId, Expected> ifPaired(
            Transaction tx, int season, Collection<Animal> dams) {
        var outlook =
                new LayOutlook(
                        tx.today(), LayAssumed.read(new Settings(tx)), new Clutches(tx).days());
        var tried = new Pairings(tx).seasonsTried();
        var roughly = outlook.aboutLaying(season);
        var expected = new LinkedHashMap<AnimalId, Expected>();
        for (var dam : dams) {
            expected.put(
                    dam.id(),
                    outlook.expected(
                            dam.id(),
                            roughly,
                            List.of(),
                            List.of(),
                            tried.getOrDefault(dam.id(), 0),
                            dam.hatched().season()));
        }
        return expected;
    }

    /// The house's usual day before a season's clutches hatch: a season is named by the year in
    /// which they do.
    private LocalDate aboutLaying(int season) {
        var day = LocalDate.of(season, 1, 1).plusDays(Math.round(anchor) - 1);
        return day.plusDays(LAY_TO_HATCH_DAYS).getYear() > season ? day.minusYears(1) : day;
    }

    /// The same over all seasons that may be under way.
    public static Map<AnimalId, Expected> now(Transaction tx) {
        var expected = new LinkedHashMap<AnimalId, Expected>();
        int year = tx.today().getYear();
        for (int season = year - 1; season <= year + 1; season++) {
            expected.putAll(of(tx, season));
        }
        return expected;
    }

    /// So long after her days she has skipped the season, or her clutch was not written down.
    private boolean isOver(Expected expected) {
        return today.isAfter(expected.lastBefore().plusDays(OVER_DAYS));
    }

    private static List<SignSeen> signsOf(List<Pairing> hers, List<SignSeen> signs) {
        var ids = hers.stream().map(Pairing::id).toList();
        return signs.stream().filter(sign -> ids.contains(sign.pairing())).toList();
    }

    /// Of one of these pairings, or since the first that is on record of them.
    private boolean hasLaid(AnimalId dam, List<Pairing> hers, List<SignSeen> signs) {
        var ids = hers.stream().map(Pairing::id).toList();
        var since =
                Stream.concat(together(hers).stream(), signs.stream().map(SignSeen::on))
                        .min(Comparator.naturalOrder());
        return laid.getOrDefault(dam, List.of()).stream()
                .anyMatch(
                        clutch ->
                                since.filter(day -> !clutch.day().isBefore(day)).isPresent()
                                        || clutch.pairing().filter(ids::contains).isPresent());
    }

    /// @param otherwise about when she lays where nothing of her own tells
    private Expected expected(
            AnimalId dam,
            LocalDate otherwise,
            List<Pairing> hers,
            List<SignSeen> signs,
            int tried,
            Optional<Integer> hatched) {
        var ovulated = last(signs, SignSeen.Kind.OVULATION);
        var shed =
                last(signs, SignSeen.Kind.PRE_LAY_SHED)
                        .filter(day -> ovulated.isEmpty() || !day.isBefore(ovulated.get()));
        var together = together(hers);
        var roughly =
                shed.map(day -> plus(day, priors.shedToLay()))
                        .or(() -> ovulated.map(day -> plus(day, priors.ovulationToLay())))
                        .orElseGet(
                                () ->
                                        together.map(day -> day.plusDays(TOGETHER_TO_LAY_DAYS))
                                                .orElse(otherwise));
        var year = SeasonYear.about(roughly, anchor);
        var days = days(dam, year);
        var female =
                new Female(
                        days,
                        Math.max(0, tried - days.size()),
                        days.isEmpty()
                                && hatched.filter(born -> roughly.getYear() - born < YOUNG_YEARS)
                                        .isPresent(),
                        together.map(year::number)
                                .map(OptionalDouble::of)
                                .orElse(OptionalDouble.empty()),
                        // The swelling shows for a day, two at most: it was not there the day
                        // before. Common practice, no source.
                        ovulated.map(
                                day -> new Sign.Ovulation(year.number(day) - 1, year.number(day))),
                        shed.map(day -> new Sign.PreLayShed(year.number(day))));
        return new Expected(
                year,
                model.forecast(
                        meanWithout(dam, year),
                        female,
                        others(year, dam),
                        OptionalDouble.of(year.number(today))));
    }

    /// The days of a female's clutches in other seasons, along the line of this one.
    private List<Double> days(AnimalId dam, SeasonYear year) {
        return laid.getOrDefault(dam, List.of()).stream()
                .filter(each -> !SeasonYear.about(each.day(), anchor).equals(year))
                .map(each -> DayOfYear.near(each.day().getDayOfYear(), anchor))
                .toList();
    }

    private CollectionMean meanWithout(AnimalId dam, SeasonYear year) {
        return model.meanOf(
                laid.keySet().stream()
                        .filter(other -> !other.equals(dam))
                        .map(other -> days(other, year))
                        .toList());
    }

    private Collection<Other> others(SeasonYear year, AnimalId dam) {
        return othersOfYear.computeIfAbsent(year, this::allOthers).entrySet().stream()
                .filter(other -> !other.getKey().equals(dam))
                .map(Map.Entry::getValue)
                .toList();
    }

    /// Who has laid in a season, and how far from what was expected.
    private Map<AnimalId, Other> allOthers(SeasonYear year) {
        var others = new LinkedHashMap<AnimalId, Other>();
        var seasonVariance = priors.seasonSdDays() * priors.seasonSdDays();
        laid.forEach(
                (dam, clutches) -> {
                    var now =
                            clutches.stream()
                                    .map(LaidOn::day)
                                    .filter(day -> SeasonYear.about(day, anchor).equals(year))
                                    .min(Comparator.naturalOrder());
                    // Without an earlier year of hers she says too little.
                    var before = days(dam, year);
                    if (now.isEmpty() || before.isEmpty()) {
                        return;
                    }
                    var female =
                            new Female(
                                    before,
                                    0,
                                    false,
                                    OptionalDouble.empty(),
                                    Optional.empty(),
                                    Optional.empty());
                    var off = model.offBy(meanWithout(dam, year), female, year.number(now.get()));
                    if (Math.abs(off.laterDays())
                            <= FAR_OFF * Math.sqrt(off.variance() + seasonVariance)) {
                        others.put(dam, off);
                    }
                });
        return others;
    }

    private static LocalDate plus(LocalDate day, LayPriors.Gap gap) {
        return day.plusDays(Math.round(gap.days()));
    }

    private static Optional<LocalDate> together(List<Pairing> pairings) {
        return pairings.stream()
                .flatMap(pairing -> pairing.putTogether().stream())
                .min(Comparator.naturalOrder());
    }

    private static Optional<LocalDate> last(List<SignSeen> signs, SignSeen.Kind kind) {
        return signs.stream()
                .filter(sign -> sign.kind() == kind)
                .map(SignSeen::on)
                .max(Comparator.naturalOrder());
    }
}
