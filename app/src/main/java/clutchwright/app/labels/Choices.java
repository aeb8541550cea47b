package clutchwright.app.labels;

import clutchwright.app.holding.Holding;
import clutchwright.app.labels.Wanted.AnimalsOfRack;
import clutchwright.app.labels.Wanted.AnimalsOfRoom;
import clutchwright.app.labels.Wanted.BoxesOfClutch;
import clutchwright.app.labels.Wanted.BoxesOfSeason;
import clutchwright.app.labels.Wanted.Filtered;
import clutchwright.app.labels.Wanted.OneAnimal;
import clutchwright.app.labels.Wanted.TubsOfRack;
import clutchwright.app.labels.Wanted.TubsOfRoom;
import clutchwright.app.web.Choice;
import clutchwright.records.animals.Animals;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.places.Places;
import clutchwright.records.places.Rack;
import clutchwright.records.places.Room;
import clutchwright.records.settings.Settings;
import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// What labels can be printed for, in groups.
final class Choices {

    private Choices() {}

    /// @param asked what is chosen: it is among the choices also where no list has it
    static List<ChoiceGroup> of(Holding holding, Optional<Wanted> asked) {
        return holding.database()
                .read(
                        tx -> {
                            var groups = new ArrayList<ChoiceGroup>();
                            asked.flatMap(wanted -> single(tx, wanted)).ifPresent(groups::add);
                            groups.addAll(ofPlaces(tx));
                            groups.add(new ChoiceGroup("Animals of saved filters", filters(tx)));
                            groups.add(new ChoiceGroup("Egg boxes", seasons(tx)));
                            return groups.stream()
                                    .filter(group -> !group.choices().isEmpty())
                                    .toList();
                        });
    }

    private static Optional<ChoiceGroup> single(Transaction tx, Wanted asked) {
        var words =
                switch (asked) {
                    case OneAnimal(var id) ->
                            new Animals(tx)
                                    .find(id)
                                    .map(animal -> (animal.tag() + " " + animal.name()).strip());
                    case BoxesOfClutch(var id) ->
                            new Clutches(tx)
                                    .find(id)
                                    .map(clutch -> "Boxes of clutch " + clutch.number());
                    case Filtered(var filters) ->
                            Optional.of(
                                    filters.isEmpty()
                                            ? "All animals on record"
                                            : "Animals of the filters just used");
                    case AnimalsOfRoom _,
                            AnimalsOfRack _,
                            TubsOfRoom _,
                            TubsOfRack _,
                            BoxesOfSeason _ ->
                            Optional.<String>empty();
                };
        return words.map(
                text -> new ChoiceGroup("As asked for", List.of(new Choice(asked.code(), text))));
    }

    private static List<ChoiceGroup> ofPlaces(Transaction tx) {
        var animals = new ArrayList<Choice>();
        var tubs = new ArrayList<Choice>();
        var places = new Places(tx);
        for (var room : places.rooms()) {
            animals.add(choice(new AnimalsOfRoom(room.id()), "Animals of ", room));
            tubs.add(choice(new TubsOfRoom(room.id()), "Tubs of ", room));
            for (var rack : places.racks(room.id())) {
                animals.add(choice(new AnimalsOfRack(rack.id()), "Animals of ", room, rack));
                tubs.add(choice(new TubsOfRack(rack.id()), "Tubs of ", room, rack));
            }
        }
        return List.of(
                new ChoiceGroup("Animals by place", animals),
                new ChoiceGroup("Tubs, whoever lives in them", tubs));
    }

    private static Choice choice(Wanted wanted, String what, Room room) {
        return new Choice(wanted.code(), what + room.name());
    }

    private static Choice choice(Wanted wanted, String what, Room room, Rack rack) {
        return new Choice(wanted.code(), what + room.name() + " / " + rack.name());
    }

    private static List<Choice> filters(Transaction tx) {
        return new Settings(tx)
                .under(Settings.FILTERS).entrySet().stream()
                        .map(
                                kept ->
                                        new Choice(
                                                new Filtered(kept.getValue()).code(),
                                                "Animals of “"
                                                        + kept.getKey()
                                                                .substring(
                                                                        Settings.FILTERS.length())
                                                        + "”"))
                        .toList();
    }

    private static List<Choice> seasons(Transaction tx) {
        return new Clutches(tx)
                .incubating().stream()
                        .map(clutch -> clutch.number().season())
                        .distinct()
                        .sorted((one, other) -> Integer.compare(other, one))
                        .map(
                                season ->
                                        new Choice(
                                                new BoxesOfSeason(season).code(),
                                                "Egg boxes of " + season))
                        .toList();
    }
}
