package clutchwright.app.today;

import clutchwright.app.loggers.FeltSoFar;
import clutchwright.app.loggers.Pipping;
import clutchwright.app.loggers.Watched;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.LayOutlook;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Status;
import clutchwright.records.clutches.Box;
import clutchwright.records.clutches.BoxId;
import clutchwright.records.clutches.Boxes;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.ClutchId;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.husbandry.FirstDays;
import clutchwright.records.husbandry.Happening;
import clutchwright.records.husbandry.Hunger;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.pairings.SignSeen;
import clutchwright.records.places.Address;
import clutchwright.records.places.Places;
import clutchwright.records.places.TubId;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/// Everything on record that the day asks for, read at once: so many queries, however large the
/// collection is.
///
/// @param clutches that incubate, and all of this season and the last
/// @param pairings that are together, of this season and the next
/// @param signs of those seasons
/// @param expected females that are to lay
/// @param racks that somebody lives in, and how many
/// @param pippings when the clutches pip that incubate
/// @param sensors all of them, with what they call for
/// @param young that hatched in the last weeks
/// @param boxes all there are, by their ids
/// @param addresses of the tubs of those animals
/// @param hungry some of them, longest first
/// @param weights the last of each female of a pairing
/// @param animals that any of these speak of
record Found(
        LocalDate today,
        Map<Status, Integer> counts,
        List<Clutch> clutches,
        List<Pairing> pairings,
        List<SignSeen> signs,
        Map<AnimalId, LayOutlook.Expected> expected,
        List<InRack> racks,
        List<FirstDays> young,
        Map<BoxId, Box> boxes,
        Map<TubId, Address> addresses,
        List<Happening.Meal> hungry,
        Map<AnimalId, Happening.Weighing> weights,
        Map<ClutchId, Pipping> pippings,
        List<Watched> sensors,
        int countHungry,
        int unsexed,
        Map<AnimalId, Animal> animals) {

    static Found read(Transaction tx, LocalDate today, ZoneId zone, int mostHungry) {
        var year = today.getYear();
        var clutches = new LinkedHashMap<Long, Clutch>();
        var allClutches = new Clutches(tx);
        allClutches.incubating().forEach(clutch -> clutches.put(clutch.id().value(), clutch));
        for (int season = year - 1; season <= year + 1; season++) {
            allClutches.ofSeason(season).forEach(c -> clutches.putIfAbsent(c.id().value(), c));
        }
        var allPairings = new Pairings(tx);
        var pairings = new ArrayList<Pairing>();
        var signs = new ArrayList<SignSeen>();
        for (int season = year - 1; season <= year + 1; season++) {
            pairings.addAll(allPairings.ofSeason(season));
            signs.addAll(allPairings.signsOfSeason(season));
        }
        var hunger =
                new Hunger(
                        today.minusDays(RulesOfThumb.YOUNG_DAYS),
                        today.minusDays(RulesOfThumb.YOUNG_HUNGRY),
                        today.minusDays(RulesOfThumb.ADULT_HUNGRY),
                        today.minusDays(RulesOfThumb.OFFERED));
        var husbandry = new Husbandry(tx);
        var hungry = husbandry.hungry(hunger, mostHungry);
        var young =
                husbandry.firstDays(
                        today.minusDays(RulesOfThumb.FIRST_WEEKS),
                        today.minusDays(RulesOfThumb.SHED_FIRST));
        var expected = LayOutlook.now(tx);
        var boxes = new Boxes(tx).all();
        var ids = new HashSet<AnimalId>();
        young.forEach(each -> ids.add(each.animal()));
        ids.addAll(expected.keySet());
        clutches.values().forEach(clutch -> ids.add(clutch.dam()));
        pairings.forEach(pairing -> ids.addAll(List.of(pairing.dam(), pairing.sire())));
        hungry.forEach(meal -> ids.add(meal.animal()));
        var animals = new LinkedHashMap<AnimalId, Animal>();
        new Animals(tx).find(ids).forEach(animal -> animals.put(animal.id(), animal));
        return new Found(
                today,
                new Animals(tx).counts(),
                List.copyOf(clutches.values()),
                pairings,
                signs,
                expected,
                racks(tx),
                young,
                boxes.stream().collect(Collectors.toMap(Box::id, box -> box)),
                new Places(tx)
                        .addresses(
                                animals.values().stream()
                                        .flatMap(animal -> animal.place().stream())
                                        .toList()),
                hungry,
                husbandry.lastWeightsOfDams(year - 1, year + 1),
                pippings(tx, allClutches.incubating(), boxes, zone),
                Watched.all(tx),
                husbandry.countHungry(hunger),
                new Animals(tx).countUnsexed(today.minusDays(RulesOfThumb.SEXING_DAYS)),
                animals);
    }

    private static Map<ClutchId, Pipping> pippings(
            Transaction tx, List<Clutch> incubating, List<Box> boxes, ZoneId zone) {
        var felt = FeltSoFar.of(tx, incubating, boxes, zone);
        return incubating.stream()
                .collect(
                        Collectors.toMap(
                                Clutch::id,
                                clutch ->
                                        Pipping.of(
                                                clutch,
                                                Optional.ofNullable(felt.get(clutch.id())))));
    }

    /// @param name with the room
    record InRack(long id, String name, int animals) {}

    private static List<InRack> racks(Transaction tx) {
        var places = new Places(tx);
        var animals = new Animals(tx);
        var racks = new ArrayList<InRack>();
        for (var room : places.rooms()) {
            for (var rack : places.racks(room.id())) {
                var living = animals.livingIn(rack.id()).size();
                if (living > 0) {
                    racks.add(new InRack(rack.id().value(), RackMeals.name(places, rack), living));
                }
            }
        }
        return racks;
    }

    Pipping pipping(Clutch clutch) {
        return Optional.ofNullable(pippings.get(clutch.id()))
                .orElseGet(() -> Pipping.of(clutch, Optional.empty()));
    }

    /// Where an animal lives.
    Spot spot(AnimalId id) {
        return Optional.ofNullable(animals.get(id))
                .flatMap(Animal::place)
                .flatMap(tub -> Optional.ofNullable(addresses.get(tub)))
                .<Spot>map(Spot.InTub::new)
                .orElse(new Spot.Nowhere());
    }

    /// Where a clutch stands: by the first of its eggs that is in a box.
    Spot spot(Clutch clutch) {
        return clutch.eggs().stream()
                .flatMap(egg -> egg.box().stream())
                .flatMap(id -> Optional.ofNullable(boxes.get(id)).stream())
                .findFirst()
                .<Spot>map(
                        box ->
                                new Spot.InIncubator(
                                        box.incubator().isBlank()
                                                ? "Boxes in no incubator"
                                                : box.incubator(),
                                        box.label()))
                .orElse(new Spot.Nowhere());
    }

    /// The tag, with the name behind it where there is one.
    String called(AnimalId id) {
        var animal = animals.get(id);
        if (animal == null) {
            return "An animal";
        }
        return animal.name().isEmpty()
                ? animal.tag().value()
                : animal.tag().value() + " " + animal.name();
    }

    int count(Status status) {
        return counts.getOrDefault(status, 0);
    }

    boolean isEmpty() {
        return counts.isEmpty() && sensors.isEmpty();
    }
}
