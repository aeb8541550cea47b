package clutchwright.app.incubators;

import clutchwright.app.loggers.FeltSoFar;
import clutchwright.app.loggers.Pipping;
import clutchwright.engine.season.EggBoxesInUse;
import clutchwright.records.LayOutlook;
import clutchwright.records.clutches.Boxes;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.ClutchId;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.clutches.Fate;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/// How many clutches are in the incubators, day by day: those that were or are there, and those
/// that are expected.
///
/// @param days in their order, at least one
/// @param boxes that are on record
record Occupancy(List<Day> days, int boxes) {

    /// Days to hatching at 31.7 °C and their spread: common practice and the model's.
    private static final double INCUBATION_DAYS = 57;

    private static final double INCUBATION_SD_DAYS = 2.4;
    private static final int LOOK_BACK_DAYS = 30;
    private static final int MOST_DAYS = 400;
    private static final int EVERY_DAYS = 3;

    Occupancy {
        days = List.copyOf(days);
    }

    /// @param from in 19 of 20 cases there are no fewer
    /// @param to in 19 of 20 cases there are no more
    record Day(LocalDate on, int from, double mean, int to) {}

    /// Empty where nothing is or is expected in any incubator.
    static Optional<Occupancy> of(Transaction tx, LocalDate today, ZoneId zone) {
        var clutches = clutches(tx, today);
        var expected = List.copyOf(LayOutlook.now(tx).values());
        var boxes = new Boxes(tx).all();
        var felt =
                FeltSoFar.of(
                        tx, clutches.stream().filter(c -> !c.isComplete()).toList(), boxes, zone);
        var chances =
                Stream.<Chances>concat(
                                clutches.stream().map(clutch -> known(clutch, felt)),
                                expected.stream().map(Occupancy::expected))
                        .toList();
        if (chances.isEmpty()) {
            return Optional.empty();
        }
        var days = new ArrayList<Day>();
        var first = today.minusDays(LOOK_BACK_DAYS);
        for (int day = 0; day <= MOST_DAYS; day += EVERY_DAYS) {
            var on = first.plusDays(day);
            var use = EggBoxesInUse.of(chances.stream().map(each -> each.on(on)).toList());
            days.add(new Day(on, use.quantile(0.05), use.mean(), use.quantile(0.95)));
        }
        while (days.size() > 2 && isEmpty(days.getLast()) && isEmpty(days.get(days.size() - 2))) {
            days.removeLast();
        }
        return days.stream().allMatch(Occupancy::isEmpty)
                ? Optional.empty()
                : Optional.of(new Occupancy(days, boxes.size()));
    }

    private static boolean isEmpty(Day day) {
        return day.mean() < 0.05;
    }

    /// The chance that one clutch is in an incubator on a day.
    private interface Chances {
        double on(LocalDate day);
    }

    private static List<Clutch> clutches(Transaction tx, LocalDate today) {
        var all = new Clutches(tx);
        return Stream.concat(
                        all.incubating().stream(),
                        Stream.of(today.getYear() - 1, today.getYear())
                                .flatMap(season -> all.ofSeason(season).stream())
                                .filter(Clutch::isComplete))
                .toList();
    }

    private static Chances known(Clutch clutch, Map<ClutchId, FeltSoFar> felt) {
        if (clutch.isComplete()) {
            var last =
                    clutch.eggs().stream()
                            .flatMap(egg -> ended(egg.fate()).stream())
                            .max(LocalDate::compareTo);
            return day ->
                    !day.isBefore(clutch.laid()) && last.filter(day::isBefore).isPresent() ? 1 : 0;
        }
        var pipping = Pipping.of(clutch, Optional.ofNullable(felt.get(clutch.id())));
        return day -> {
            double since = ChronoUnit.DAYS.between(clutch.laid(), day);
            return since < 0 ? 0 : 1 - pipping.forecast().by(since);
        };
    }

    private static Optional<LocalDate> ended(Fate fate) {
        return switch (fate) {
            case Fate.Incubating(), Fate.Slug() -> Optional.empty();
            case Fate.Lost(var noticed, _) -> Optional.of(noticed);
            case Fate.Hatched(var pipped, _) -> Optional.of(pipped);
        };
    }

    private static Chances expected(LayOutlook.Expected expected) {
        var clutch =
                new EggBoxesInUse.Expected(
                        expected.forecast().laid(), INCUBATION_DAYS, INCUBATION_SD_DAYS);
        return day ->
                (1 - expected.forecast().skips()) * clutch.inIncubator(expected.year().number(day));
    }

    /// The day on which most are expected.
    Day fullest() {
        var fullest = days.getFirst();
        for (var day : days) {
            if (day.mean() > fullest.mean()) {
                fullest = day;
            }
        }
        return fullest;
    }

    /// The first of each month, and what there is then.
    List<Day> months() {
        return days.stream().filter(day -> day.on().getDayOfMonth() <= EVERY_DAYS).toList();
    }
}
