package clutchwright.records.exchange;

import clutchwright.records.places.Address;
import clutchwright.records.places.Places;
import clutchwright.records.places.RackId;
import clutchwright.records.places.RoomId;
import clutchwright.records.places.TubId;
import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/// Finds or makes the tubs that a file names.
final class TubsByName {

    /// For a room or rack that a file does not name.
    private static final String UNNAMED = "?";

    private record Known(PlaceName name, TubId tub) {}

    private final Places places;
    private final Map<String, List<Known>> byTub = new HashMap<>();
    private final Map<String, RoomId> rooms = new HashMap<>();
    private final Map<List<String>, RackId> racks = new HashMap<>();
    private final Map<PlaceName, TubId> answered = new HashMap<>();

    TubsByName(Transaction tx) {
        this.places = new Places(tx);
        for (var room : places.rooms()) {
            rooms.put(Keys.of(room.name()), room.id());
            for (var rack : places.racks(room.id())) {
                racks.put(List.of(Keys.of(room.name()), Keys.of(rack.name())), rack.id());
            }
        }
        places.addresses().values().forEach(address -> know(nameOf(address), address.tub()));
    }

    /// A name without room or rack means the one tub that it fits; if there is none or several,
    /// one whose room or rack has no name.
    TubId find(PlaceName name) {
        return answered.computeIfAbsent(name, this::search);
    }

    private TubId search(PlaceName name) {
        var fitting =
                byTub.getOrDefault(Keys.of(name.tub()), List.of()).stream()
                        .filter(known -> name.fits(known.name()))
                        .toList();
        if (fitting.size() == 1) {
            return fitting.getFirst().tub();
        }
        var full =
                new PlaceName(
                        name.room().isEmpty() ? UNNAMED : name.room(),
                        name.rack().isEmpty() ? UNNAMED : name.rack(),
                        name.tub());
        return fitting.stream()
                .filter(known -> full.fits(known.name()))
                .map(Known::tub)
                .findFirst()
                .orElseGet(() -> made(full));
    }

    private TubId made(PlaceName name) {
        var room =
                rooms.computeIfAbsent(
                        Keys.of(name.room()), _ -> places.addRoom(name.room(), "").theSaved().id());
        var rack =
                racks.computeIfAbsent(
                        List.of(Keys.of(name.room()), Keys.of(name.rack())),
                        _ -> places.addRack(room, name.rack(), "").theSaved().id());
        var tub = places.addTub(rack, name.tub(), "").theSaved().id();
        know(name, tub);
        return tub;
    }

    private void know(PlaceName name, TubId tub) {
        byTub.computeIfAbsent(Keys.of(name.tub()), _ -> new ArrayList<>())
                .add(new Known(name, tub));
    }

    private static PlaceName nameOf(Address address) {
        return new PlaceName(address.room(), address.rack(), address.name());
    }
}
