package clutchwright.app.labels;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Selecting;
import clutchwright.app.web.Form;
import clutchwright.app.wording.AnimalWords;
import clutchwright.app.wording.Formats;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.clutches.Box;
import clutchwright.records.clutches.BoxId;
import clutchwright.records.clutches.Boxes;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.places.Address;
import clutchwright.records.places.Places;
import clutchwright.records.places.RackId;
import clutchwright.records.places.RoomId;
import clutchwright.records.places.TubId;
import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/// Writes the labels of what is wanted.
///
/// @param address with which the codes begin
record Stock(Holding holding, Selecting selecting, Formats formats, String address) {

    private static final Pattern DIGITS = Pattern.compile("[0-9]+");
    private static final int LONG = 9;

    /// The labels in the order in which one walks along the places.
    List<Label> labels(Wanted wanted) {
        return switch (wanted) {
            case Wanted.OneAnimal(var animal) -> ofAnimals(List.of(animal));
            case Wanted.Filtered(var filters) ->
                    ofAnimals(selecting.select(Form.ofAddress(filters)));
            case Wanted.AnimalsOfRoom(var room) ->
                    ofAnimals(
                            read(
                                    tx ->
                                            racks(tx, room).stream()
                                                    .flatMap(rack -> living(tx, rack).stream())
                                                    .toList()));
            case Wanted.AnimalsOfRack(var rack) -> ofAnimals(read(tx -> living(tx, rack)));
            case Wanted.TubsOfRoom(var room) ->
                    read(
                            tx ->
                                    racks(tx, room).stream()
                                            .flatMap(rack -> ofTubs(tx, rack).stream())
                                            .toList());
            case Wanted.TubsOfRack(var rack) -> read(tx -> ofTubs(tx, rack));
            case Wanted.BoxesOfSeason(var season) ->
                    read(tx -> ofBoxes(tx, new Clutches(tx).ofSeason(season)));
            case Wanted.BoxesOfClutch(var clutch) ->
                    read(tx -> ofBoxes(tx, new Clutches(tx).find(clutch).stream().toList()));
        };
    }

    private <T> T read(Function<Transaction, T> reading) {
        return holding.database().read(reading::apply);
    }

    private static List<RackId> racks(Transaction tx, RoomId room) {
        return new Places(tx)
                .racks(room).stream()
                        .sorted(Comparator.comparing(rack -> inOrder(rack.name())))
                        .map(rack -> rack.id())
                        .toList();
    }

    private static List<AnimalId> living(Transaction tx, RackId rack) {
        var animals = new Animals(tx);
        var living = animals.find(animals.livingIn(rack));
        var places = addresses(tx, living);
        return living.stream()
                .sorted(Comparator.comparing(animal -> order(place(places, animal))))
                .map(Animal::id)
                .toList();
    }

    private List<Label> ofAnimals(List<AnimalId> ids) {
        var found =
                read(
                        tx -> {
                            var animals = new Animals(tx).find(ids);
                            return new Found(byId(animals), addresses(tx, animals));
                        });
        return ids.stream()
                .map(found.animals()::get)
                .filter(Objects::nonNull)
                .map(animal -> ofAnimal(animal, place(found.places(), animal)))
                .toList();
    }

    private Label ofAnimal(Animal animal, Optional<Address> place) {
        var tag = animal.tag().value();
        var sex = animal.sex().map(_ -> AnimalWords.sign(animal)).orElse("not sexed");
        return new Label(
                address + "/a/" + animal.id().value(),
                animal.name().isEmpty() ? tag : animal.name(),
                animal.name().isEmpty() ? sex : tag + "  " + sex,
                List.of(
                        holding.line(animal.id()).inWords(),
                        place.map(Address::toString).orElse("")));
    }

    private List<Label> ofTubs(Transaction tx, RackId rack) {
        var places = new Places(tx);
        return places.tubs(rack).stream()
                .sorted(Comparator.comparing(tub -> inOrder(tub.name())))
                .flatMap(tub -> places.address(tub.id()).stream())
                .map(
                        at ->
                                new Label(
                                        address + "/t/" + at.tub().value(),
                                        at.name(),
                                        at.rack(),
                                        List.of(at.room())))
                .toList();
    }

    private List<Label> ofBoxes(Transaction tx, List<Clutch> clutches) {
        return new Boxes(tx)
                .all().stream()
                        .map(box -> ofBox(tx, box, clutchesIn(box.id(), clutches)))
                        .flatMap(Optional::stream)
                        .toList();
    }

    static List<Clutch> clutchesIn(BoxId box, List<Clutch> clutches) {
        return clutches.stream().filter(clutch -> eggsIn(box, clutch) > 0).toList();
    }

    private static long eggsIn(BoxId box, Clutch clutch) {
        return clutch.incubating().stream()
                .filter(egg -> egg.box().filter(box::equals).isPresent())
                .count();
    }

    private Optional<Label> ofBox(Transaction tx, Box box, List<Clutch> clutches) {
        if (clutches.isEmpty()) {
            return Optional.empty();
        }
        var lines = new ArrayList<String>();
        for (var clutch : clutches) {
            if (clutches.size() > 1) {
                lines.add("Clutch " + clutch.number());
            }
            lines.add("laid " + formats.date(clutch.laid()));
            lines.add("pips about " + formats.dayOfYear(new PipDay(clutch.laid()).expected()));
            lines.add(
                    formats.count(eggsIn(box.id(), clutch), "egg", "eggs")
                            + " of "
                            + tag(tx, clutch.dam()));
        }
        return Optional.of(
                new Label(
                        address + "/b/" + box.id().value(),
                        clutches.stream()
                                .map(clutch -> clutch.number().toString())
                                .collect(Collectors.joining(", ")),
                        "Box " + box.label(),
                        lines));
    }

    private static String tag(Transaction tx, AnimalId animal) {
        return new Animals(tx)
                .find(animal)
                .map(found -> found.tag().value())
                .orElse("a female no longer on record");
    }

    private static Map<TubId, Address> addresses(Transaction tx, List<Animal> animals) {
        return new Places(tx)
                .addresses(animals.stream().flatMap(animal -> animal.place().stream()).toList());
    }

    private static Map<AnimalId, Animal> byId(List<Animal> animals) {
        return animals.stream().collect(Collectors.toMap(Animal::id, Function.identity()));
    }

    private static Optional<Address> place(Map<TubId, Address> places, Animal animal) {
        return animal.place().flatMap(tub -> Optional.ofNullable(places.get(tub)));
    }

    private static String order(Optional<Address> place) {
        return place.map(at -> inOrder(at.name())).orElse("");
    }

    /// Tub 2 before tub 10.
    private static String inOrder(String name) {
        return DIGITS.matcher(name)
                .replaceAll(
                        digits ->
                                "0".repeat(Math.max(0, LONG - digits.group().length()))
                                        + digits.group());
    }

    private record Found(Map<AnimalId, Animal> animals, Map<TubId, Address> places) {}
}
