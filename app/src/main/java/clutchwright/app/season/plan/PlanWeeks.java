package clutchwright.app.season.plan;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.season.EggBoxesInUse;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;

/// The weeks of a season, by their Mondays, and what a clutch of each female takes up in them.
///
/// @param boxesByDam boxes that her eggs are expected to stand in, by week
/// @param placesByDam share of her young that are expected to need a place, by week
record PlanWeeks(
        List<LocalDate> mondays,
        Map<AnimalId, SequencedMap<String, Double>> boxesByDam,
        Map<AnimalId, SequencedMap<String, Double>> placesByDam) {

    /// Days to hatching at 31.7 °C and their spread: common practice and the incubation model's.
    private static final double INCUBATION_DAYS = 57;

    private static final double INCUBATION_SD_DAYS = 2.4;
    private static final int WEEK = 7;
    private static final int MOST_WEEKS = 60;
    private static final double NEXT_TO_NONE = 0.005;

    PlanWeeks {
        mondays = List.copyOf(mondays);
        boxesByDam = Map.copyOf(boxesByDam);
        placesByDam = Map.copyOf(placesByDam);
    }

    /// @param mostInBox eggs that share a box at most
    /// @param placeWeeks that a hatchling needs its place
    static PlanWeeks of(Collection<PlanAnimal> females, int mostInBox, int placeWeeks) {
        var mondays = mondays(females, placeWeeks);
        var boxes = new HashMap<AnimalId, SequencedMap<String, Double>>();
        var places = new HashMap<AnimalId, SequencedMap<String, Double>>();
        for (var female : females) {
            female.laying()
                    .ifPresent(
                            laying -> {
                                boxes.put(female.id(), boxes(laying, mondays, mostInBox));
                                places.put(female.id(), places(laying, mondays, placeWeeks));
                            });
        }
        return new PlanWeeks(mondays, boxes, places);
    }

    SequencedMap<String, Double> boxes(PlanAnimal dam) {
        return boxesByDam.getOrDefault(dam.id(), new LinkedHashMap<>());
    }

    SequencedMap<String, Double> places(PlanAnimal dam) {
        return placesByDam.getOrDefault(dam.id(), new LinkedHashMap<>());
    }

    /// From the first that any female may have laid by to when the last young have left their
    /// places.
    private static List<LocalDate> mondays(Collection<PlanAnimal> females, int placeWeeks) {
        var layings = females.stream().flatMap(female -> female.laying().stream()).toList();
        if (layings.isEmpty()) {
            return List.of();
        }
        var first =
                layings.stream()
                        .map(laying -> laying.expected().by(0.01))
                        .min(LocalDate::compareTo)
                        .orElseThrow();
        var last =
                layings.stream()
                        .map(laying -> laying.expected().by(0.99))
                        .max(LocalDate::compareTo)
                        .orElseThrow()
                        .plusDays(Math.round(INCUBATION_DAYS) + (long) WEEK * placeWeeks);
        var mondays = new ArrayList<LocalDate>();
        for (var week = first.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
                !week.isAfter(last) && mondays.size() < MOST_WEEKS;
                week = week.plusDays(WEEK)) {
            mondays.add(week);
        }
        return mondays;
    }

    private static SequencedMap<String, Double> boxes(
            PlanAnimal.Laying laying, List<LocalDate> mondays, int mostInBox) {
        var clutch = clutch(laying);
        var each =
                laying.eggs().entrySet().stream()
                        .mapToDouble(one -> one.getValue() * Math.ceilDiv(one.getKey(), mostInBox))
                        .sum();
        var boxes = new LinkedHashMap<String, Double>();
        for (var week : mondays) {
            var day = laying.expected().year().number(week);
            put(boxes, week, laying.lays() * each * clutch.inIncubator(day));
        }
        return boxes;
    }

    private static SequencedMap<String, Double> places(
            PlanAnimal.Laying laying, List<LocalDate> mondays, int placeWeeks) {
        var hatched = clutch(laying).hatched();
        var places = new LinkedHashMap<String, Double>();
        for (var week : mondays) {
            var day = laying.expected().year().number(week);
            put(places, week, hatched.by(day) - hatched.by(day - (double) WEEK * placeWeeks));
        }
        return places;
    }

    private static EggBoxesInUse.Expected clutch(PlanAnimal.Laying laying) {
        return new EggBoxesInUse.Expected(
                laying.expected().forecast().laid(), INCUBATION_DAYS, INCUBATION_SD_DAYS);
    }

    private static void put(SequencedMap<String, Double> use, LocalDate week, double much) {
        if (much > NEXT_TO_NONE) {
            use.put(week.toString(), much);
        }
    }
}
