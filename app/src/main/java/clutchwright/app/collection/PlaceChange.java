package clutchwright.app.collection;

import clutchwright.app.web.Form;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import clutchwright.records.places.Places;
import clutchwright.records.places.Rack;
import clutchwright.records.places.RackId;
import clutchwright.records.places.Room;
import clutchwright.records.places.RoomId;
import clutchwright.records.places.Tub;
import clutchwright.records.places.TubId;
import clutchwright.records.store.Transaction;
import java.util.List;
import java.util.function.Function;

/// Renames or removes the room, rack or tub that a form speaks of.
record PlaceChange(Transaction tx, Form form) {

    /// The id of the form's field, which holds the new name.
    static String field(Form form) {
        return "name-" + form.text("kind") + "-" + form.text("id");
    }

    Edit<?> rename() {
        var places = new Places(tx);
        var name = form.text(field(form));
        return switch (form.text("kind")) {
            case "room" -> found(room(), Field.ROOM, room -> places.update(named(room, name)));
            case "rack" -> found(rack(), Field.RACK, rack -> places.update(named(rack, name)));
            default -> found(tub(), Field.TUB, tub -> places.update(named(tub, name)));
        };
    }

    Edit<?> remove() {
        var places = new Places(tx);
        return switch (form.text("kind")) {
            case "room" ->
                    found(room(), Field.ROOM, room -> places.remove(named(room, room.name())));
            case "rack" ->
                    found(rack(), Field.RACK, rack -> places.remove(named(rack, rack.name())));
            default -> found(tub(), Field.TUB, tub -> places.remove(named(tub, tub.name())));
        };
    }

    private <T> Edit<T> found(List<T> place, Field field, Function<T, Edit<T>> change) {
        return place.isEmpty()
                ? Edit.refused(new Problem.Missing(field, number("id")))
                : change.apply(place.getFirst());
    }

    private List<Room> room() {
        return new Places(tx).findRoom(new RoomId(number("id"))).stream().toList();
    }

    private List<Rack> rack() {
        return new Places(tx).findRack(new RackId(number("id"))).stream().toList();
    }

    private List<Tub> tub() {
        return new Places(tx).findTub(new TubId(number("id"))).stream().toList();
    }

    /// Of the version that was on the page, so that what somebody else did meanwhile is noticed.
    private Room named(Room room, String name) {
        return new Room(room.id(), number("version"), name, room.notes());
    }

    private Rack named(Rack rack, String name) {
        return new Rack(rack.id(), number("version"), rack.room(), name, rack.notes());
    }

    private Tub named(Tub tub, String name) {
        return new Tub(tub.id(), number("version"), tub.rack(), name, tub.notes());
    }

    private long number(String field) {
        var text = form.text(field);
        return text.matches("[0-9]{1,18}") ? Long.parseLong(text) : 0;
    }
}
