package clutchwright.app.today;

import clutchwright.app.today.RackFeedingView.Fed;
import clutchwright.app.web.Form;
import clutchwright.app.wording.Formats;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.husbandry.Happening.Meal;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.places.Address;
import clutchwright.records.places.Places;
import clutchwright.records.places.Rack;
import clutchwright.records.places.RackId;
import clutchwright.records.places.TubId;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Who lives in a rack, and what each took last.
///
/// @param name of the rack, with its room
/// @param animals in the order of their tubs
record RackMeals(
        String name,
        List<Animal> animals,
        Map<TubId, Address> addresses,
        Map<AnimalId, Meal> last) {

    static Optional<RackMeals> find(Transaction tx, RackId id) {
        var places = new Places(tx);
        return places.findRack(id).map(rack -> of(tx, places, rack));
    }

    private static RackMeals of(Transaction tx, Places places, Rack rack) {
        var animals = new Animals(tx);
        var order = animals.livingIn(rack.id());
        var byId = new LinkedHashMap<AnimalId, Animal>();
        animals.find(order).forEach(animal -> byId.put(animal.id(), animal));
        var living =
                order.stream().flatMap(id -> Optional.ofNullable(byId.get(id)).stream()).toList();
        return new RackMeals(
                name(places, rack),
                living,
                places.addresses(
                        living.stream().flatMap(animal -> animal.place().stream()).toList()),
                new Husbandry(tx).lastMealsTaken());
    }

    static String name(Places places, Rack rack) {
        return places.theRoom(rack.room()).name() + ", rack " + rack.name();
    }

    /// The form as it opens: everybody ate what most of them took last.
    Form allFed() {
        var values = new LinkedHashMap<String, List<String>>();
        values.put("fed", animals.stream().map(animal -> animal.id().toString()).toList());
        values.put("prey", List.of(usualPrey()));
        return new Form(values, new LinkedHashMap<>());
    }

    private String usualPrey() {
        var counts = new LinkedHashMap<String, Integer>();
        animals.stream()
                .flatMap(animal -> Optional.ofNullable(last.get(animal.id())).stream())
                .map(Meal::prey)
                .filter(prey -> !prey.isBlank())
                .forEach(prey -> counts.merge(prey, 1, Integer::sum));
        return counts.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("");
    }

    List<Fed> lines(LocalDate today, Formats formats) {
        return animals.stream()
                .map(
                        animal ->
                                new Fed(
                                        animal.id().value(),
                                        animal.tag().value(),
                                        animal.name(),
                                        animal.place()
                                                .flatMap(
                                                        tub ->
                                                                Optional.ofNullable(
                                                                        addresses.get(tub)))
                                                .map(Address::name)
                                                .orElse(""),
                                        words(animal.id(), today, formats)))
                .toList();
    }

    private String words(AnimalId animal, LocalDate today, Formats formats) {
        return Optional.ofNullable(last.get(animal))
                .map(
                        meal ->
                                "last %s%s"
                                        .formatted(
                                                formats.away(meal.on(), today),
                                                meal.prey().isBlank() ? "" : ", " + meal.prey()))
                .orElse("");
    }
}
