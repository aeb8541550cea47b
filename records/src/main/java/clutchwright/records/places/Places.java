package clutchwright.records.places;

import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Findings;
import clutchwright.records.checks.Problem;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import clutchwright.records.store.Words;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;
import java.util.function.Supplier;

/// Where animals live.
public final class Places {

    private final Transaction tx;

    public Places(Transaction tx) {
        this.tx = tx;
    }

    public Edit<Room> addRoom(String name, String notes) {
        var taken = tx.number("select count(*) from room where name_key = ?", Words.key(name)) > 0;
        return named(Field.ROOM, name, taken)
                .<Edit<Room>>map(Edit.Refused::new)
                .orElseGet(
                        () -> {
                            long id = tx.insert("room", values(name, notes));
                            return new Edit.Saved<>(theRoom(new RoomId(id)));
                        });
    }

    public Edit<Rack> addRack(RoomId room, String name, String notes) {
        theRoom(room);
        var taken =
                tx.number(
                                "select count(*) from rack where room = ? and name_key = ?",
                                room.value(),
                                Words.key(name))
                        > 0;
        return named(Field.RACK, name, taken)
                .<Edit<Rack>>map(Edit.Refused::new)
                .orElseGet(
                        () -> {
                            long id =
                                    tx.insert(
                                            "rack", values(name, notes).set("room", room.value()));
                            return new Edit.Saved<>(theRack(new RackId(id)));
                        });
    }

    public Edit<Tub> addTub(RackId rack, String name, String notes) {
        theRack(rack);
        var taken =
                tx.number(
                                "select count(*) from tub where rack = ? and name_key = ?",
                                rack.value(),
                                Words.key(name))
                        > 0;
        return named(Field.TUB, name, taken)
                .<Edit<Tub>>map(Edit.Refused::new)
                .orElseGet(
                        () -> {
                            long id =
                                    tx.insert("tub", values(name, notes).set("rack", rack.value()));
                            return new Edit.Saved<>(theTub(new TubId(id)));
                        });
    }

    /// The tub of those names, made with its rack and room where they are not there yet.
    ///
    /// @throws IllegalArgumentException if a name is blank
    public Tub theTub(String room, String rack, String tub) {
        var roomId =
                rooms().stream()
                        .filter(found -> same(found.name(), room))
                        .findFirst()
                        .orElseGet(() -> addRoom(room, "").theSaved())
                        .id();
        var rackId =
                racks(roomId).stream()
                        .filter(found -> same(found.name(), rack))
                        .findFirst()
                        .orElseGet(() -> addRack(roomId, rack, "").theSaved())
                        .id();
        return tubs(rackId).stream()
                .filter(found -> same(found.name(), tub))
                .findFirst()
                .orElseGet(() -> addTub(rackId, tub, "").theSaved());
    }

    public Edit<Room> update(Room room) {
        var taken =
                tx.number(
                                "select count(*) from room where name_key = ? and id <> ?",
                                Words.key(room.name()),
                                room.id().value())
                        > 0;
        return rewrite(
                "room",
                room.id().value(),
                room.version(),
                values(room.name(), room.notes()),
                named(Field.ROOM, room.name(), taken),
                () -> theRoom(room.id()));
    }

    /// Its name, notes and the room it stands in.
    public Edit<Rack> update(Rack rack) {
        theRoom(rack.room());
        var taken =
                tx.number(
                                "select count(*) from rack"
                                        + " where room = ? and name_key = ? and id <> ?",
                                rack.room().value(),
                                Words.key(rack.name()),
                                rack.id().value())
                        > 0;
        return rewrite(
                "rack",
                rack.id().value(),
                rack.version(),
                values(rack.name(), rack.notes()).set("room", rack.room().value()),
                named(Field.RACK, rack.name(), taken),
                () -> theRack(rack.id()));
    }

    /// Its name, notes and the rack it is in.
    public Edit<Tub> update(Tub tub) {
        theRack(tub.rack());
        var taken =
                tx.number(
                                "select count(*) from tub"
                                        + " where rack = ? and name_key = ? and id <> ?",
                                tub.rack().value(),
                                Words.key(tub.name()),
                                tub.id().value())
                        > 0;
        return rewrite(
                "tub",
                tub.id().value(),
                tub.version(),
                values(tub.name(), tub.notes()).set("rack", tub.rack().value()),
                named(Field.TUB, tub.name(), taken),
                () -> theTub(tub.id()));
    }

    /// Not while it has racks.
    public Edit<Room> remove(Room room) {
        return take("room", room.id().value(), room.version(), () -> theRoom(room.id()));
    }

    /// Not while it has tubs.
    public Edit<Rack> remove(Rack rack) {
        return take("rack", rack.id().value(), rack.version(), () -> theRack(rack.id()));
    }

    /// Not while an animal is in it.
    public Edit<Tub> remove(Tub tub) {
        return take("tub", tub.id().value(), tub.version(), () -> theTub(tub.id()));
    }

    /// By name.
    public List<Room> rooms() {
        return tx.list(Places::room, "select * from room order by name_key");
    }

    /// Those of a room, by name.
    public List<Rack> racks(RoomId room) {
        return tx.list(
                Places::rack, "select * from rack where room = ? order by name_key", room.value());
    }

    /// Those of a rack, by name.
    public List<Tub> tubs(RackId rack) {
        return tx.list(
                Places::tub, "select * from tub where rack = ? order by name_key", rack.value());
    }

    /// Every tub and where it is, room by room.
    public SequencedMap<TubId, Address> addresses() {
        var found = new LinkedHashMap<TubId, Address>();
        tx.list(Places::address, ADDRESS + " order by m.name_key, r.name_key, t.name_key")
                .forEach(address -> found.put(address.tub(), address));
        return found;
    }

    /// Those of some tubs.
    public Map<TubId, Address> addresses(Collection<TubId> tubs) {
        if (tubs.isEmpty()) {
            return Map.of();
        }
        var wanted = Set.copyOf(tubs);
        if (wanted.size() > 500) {
            return addresses();
        }
        var found = new HashMap<TubId, Address>();
        tx.list(
                        Places::address,
                        ADDRESS + " where t.id in (" + "?, ".repeat(wanted.size() - 1) + "?)",
                        wanted.stream().map(TubId::value).toArray())
                .forEach(address -> found.put(address.tub(), address));
        return found;
    }

    public Optional<Address> address(TubId tub) {
        return tx.first(Places::address, ADDRESS + " where t.id = ?", tub.value());
    }

    public Optional<Room> findRoom(RoomId id) {
        return tx.first(Places::room, "select * from room where id = ?", id.value());
    }

    public Optional<Rack> findRack(RackId id) {
        return tx.first(Places::rack, "select * from rack where id = ?", id.value());
    }

    public Optional<Tub> findTub(TubId id) {
        return tx.first(Places::tub, "select * from tub where id = ?", id.value());
    }

    /// @throws IllegalArgumentException if there is none
    public Room theRoom(RoomId id) {
        return findRoom(id).orElseThrow(() -> new IllegalArgumentException("no room " + id));
    }

    /// @throws IllegalArgumentException if there is none
    public Rack theRack(RackId id) {
        return findRack(id).orElseThrow(() -> new IllegalArgumentException("no rack " + id));
    }

    /// @throws IllegalArgumentException if there is none
    public Tub theTub(TubId id) {
        return findTub(id).orElseThrow(() -> new IllegalArgumentException("no tub " + id));
    }

    private static final String ADDRESS =
            "select t.id as id, m.name as room, r.name as rack, t.name as name from tub t"
                    + " join rack r on r.id = t.rack join room m on m.id = r.room";

    private <T> Edit<T> rewrite(
            String table,
            long id,
            long version,
            Values values,
            Optional<List<Problem>> refusal,
            Supplier<T> current) {
        if (refusal.isPresent()) {
            return new Edit.Refused<>(refusal.get());
        }
        return tx.update(table, id, version, values)
                ? new Edit.Saved<>(current.get())
                : new Edit.Stale<>(current.get());
    }

    private <T> Edit<T> take(String table, long id, long version, Supplier<T> current) {
        var now = current.get();
        if (tx.number(
                        "select count(*) from " + table + " where id = ? and version = ?",
                        id,
                        version)
                == 0) {
            return new Edit.Stale<>(now);
        }
        var uses = new LinkedHashMap<String, Integer>();
        tx.pointingAt(table, id)
                .forEach(use -> uses.merge(use.table(), use.rows().size(), Integer::sum));
        if (!uses.isEmpty()) {
            return Edit.refused(new Problem.StillUsed(uses));
        }
        tx.delete(table, id);
        return new Edit.Saved<>(now);
    }

    private Optional<List<Problem>> named(Field field, String name, boolean taken) {
        var findings =
                new Findings(tx.today())
                        .notBlank(field, name)
                        .addIf(taken, new Problem.NameTaken(field, name.strip()))
                        .all();
        return findings.isEmpty() ? Optional.empty() : Optional.of(findings);
    }

    private static Values values(String name, String notes) {
        return Values.of()
                .set("name", name.strip())
                .set("name_key", Words.key(name))
                .set("notes", notes.strip());
    }

    private static boolean same(String one, String other) {
        return Words.key(one).equals(Words.key(other));
    }

    private static Room room(Row row) {
        return new Room(
                new RoomId(row.number("id")),
                row.number("version"),
                row.text("name"),
                row.text("notes"));
    }

    private static Rack rack(Row row) {
        return new Rack(
                new RackId(row.number("id")),
                row.number("version"),
                new RoomId(row.number("room")),
                row.text("name"),
                row.text("notes"));
    }

    private static Tub tub(Row row) {
        return new Tub(
                new TubId(row.number("id")),
                row.number("version"),
                new RackId(row.number("rack")),
                row.text("name"),
                row.text("notes"));
    }

    private static Address address(Row row) {
        return new Address(
                new TubId(row.number("id")), row.text("room"), row.text("rack"), row.text("name"));
    }
}
