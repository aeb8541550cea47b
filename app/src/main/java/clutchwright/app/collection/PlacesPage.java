package clutchwright.app.collection;

import clutchwright.app.collection.PlacesView.OfRack;
import clutchwright.app.collection.PlacesView.OfRoom;
import clutchwright.app.collection.PlacesView.OfTub;
import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Query;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import clutchwright.records.places.Places;
import clutchwright.records.places.Rack;
import clutchwright.records.places.Room;
import clutchwright.records.places.RoomId;
import clutchwright.records.places.TubId;
import clutchwright.records.store.Transaction;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/// Rooms, racks and tubs: what is where, added, renamed, taken away.
@Controller
public class PlacesPage {

    private static final String PATH = "/collection/places";
    private static final int MOST_IN_A_ROOM = 5000;

    private final Holding holding;
    private final Problems problems;

    PlacesPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.problems = new Problems(holding, preferring);
    }

    @GetMapping(PATH)
    public Reply show(Form form) {
        return Reply.show(view(form.text("room"), Form.EMPTY));
    }

    @PostMapping(PATH + "/rooms")
    public Reply addRoom(Form form) {
        return save(
                form,
                "newRoom",
                "Added the room " + form.text("newRoom"),
                tx -> new Places(tx).addRoom(form.text("newRoom"), ""));
    }

    @PostMapping(PATH + "/racks")
    public Reply addRack(Form form) {
        return save(
                form, "newRack", "Added the rack " + form.text("newRack"), tx -> addRack(tx, form));
    }

    private static Edit<Rack> addRack(Transaction tx, Form form) {
        var places = new Places(tx);
        var room = number(form, "room");
        return places.findRoom(new RoomId(room))
                .map(found -> places.addRack(found.id(), form.text("newRack"), ""))
                .orElseGet(() -> Edit.refused(new Problem.Missing(Field.ROOM, room)));
    }

    /// One tub by its name, or a run of them: `1-12`.
    @PostMapping(PATH + "/tubs")
    public Reply addTubs(Form form) {
        var field = "newTubs" + form.text("rack");
        return save(
                form,
                field,
                "Added the tubs " + form.text(field),
                tx -> new TubRun(tx, number(form, "rack"), form.text(field)).add());
    }

    @PostMapping(PATH + "/rename")
    public Reply rename(Form form) {
        return save(
                form,
                PlaceChange.field(form),
                "Renamed a place to " + form.text(PlaceChange.field(form)),
                tx -> new PlaceChange(tx, form).rename());
    }

    @PostMapping(PATH + "/remove")
    public Reply remove(Form form) {
        return save(
                form,
                PlaceChange.field(form),
                "Removed a place",
                tx -> new PlaceChange(tx, form).remove());
    }

    private Reply save(
            Form form, String field, String what, Function<Transaction, Edit<?>> writing) {
        var written =
                Written.<Edit<?>>to(
                        holding,
                        what,
                        tx -> {
                            var edit = writing.apply(tx);
                            if (edit.saved().isEmpty()) {
                                tx.abandon();
                            }
                            return edit;
                        });
        return switch (written.result()) {
            case Edit.Saved<?>(var saved) ->
                    written.going(PATH + "?room=" + roomAfter(saved, form), what + ".");
            case Edit.Stale<?> _ ->
                    Reply.conflict("Somebody else changed this place in the meantime.");
            case Edit.Refused<?>(var refused) ->
                    Reply.faulty(
                            view(form.text("room"), problems.beside(form, refused, _ -> field)));
        };
    }

    private static String roomAfter(Object saved, Form form) {
        return saved instanceof Room room
                ? Long.toString(room.id().value())
                : Long.toString(number(form, "room"));
    }

    private static long number(Form form, String field) {
        var text = form.text(field);
        return text.matches("[0-9]{1,18}") ? Long.parseLong(text) : 0;
    }

    private PlacesView view(String asked, Form form) {
        return holding.database()
                .read(
                        tx -> {
                            var places = new Places(tx);
                            var rooms = places.rooms();
                            var shown =
                                    rooms.stream()
                                            .filter(
                                                    room ->
                                                            Long.toString(room.id().value())
                                                                    .equals(asked))
                                            .findFirst()
                                            .or(() -> rooms.stream().findFirst());
                            return new PlacesView(
                                    rooms.stream().map(PlacesPage::ofRoom).toList(),
                                    shown.map(PlacesPage::ofRoom),
                                    shown.map(room -> racks(tx, places, room)).orElse(List.of()),
                                    form);
                        });
    }

    private static OfRoom ofRoom(Room room) {
        return new OfRoom(
                Long.toString(room.id().value()),
                Long.toString(room.version()),
                room.name(),
                PATH + "?room=" + room.id().value());
    }

    private static List<OfRack> racks(Transaction tx, Places places, Room room) {
        Map<TubId, List<Animal>> animals =
                new Animals(tx)
                                .find(
                                        Query.everything()
                                                .withRoom(room.id())
                                                .page(0, MOST_IN_A_ROOM))
                                .animals()
                                .stream()
                                .collect(
                                        Collectors.groupingBy(
                                                animal -> animal.place().orElseThrow()));
        return places.racks(room.id()).stream().map(rack -> ofRack(places, rack, animals)).toList();
    }

    private static OfRack ofRack(Places places, Rack rack, Map<TubId, List<Animal>> animals) {
        return new OfRack(
                Long.toString(rack.id().value()),
                Long.toString(rack.version()),
                rack.name(),
                places.tubs(rack.id()).stream()
                        .map(
                                tub ->
                                        new OfTub(
                                                Long.toString(tub.id().value()),
                                                Long.toString(tub.version()),
                                                tub.name(),
                                                animals.getOrDefault(tub.id(), List.of()).stream()
                                                        .map(PlacesPage::link)
                                                        .toList()))
                        .toList());
    }

    private static Link link(Animal animal) {
        return new Link(animal.tag().value(), AnimalHead.path(animal));
    }
}
