package clutchwright.records.exchange;

import clutchwright.records.places.Address;
import clutchwright.records.places.Places;
import clutchwright.records.places.TubId;
import clutchwright.records.store.Transaction;
import java.util.LinkedHashMap;
import java.util.Map;

/// Finds or makes the tubs that a file names.
final class TubsByName {

    /// For a room or rack that a file does not name.
    private static final String UNNAMED = "?";

    private final Places places;
    private final Map<PlaceName, TubId> found = new LinkedHashMap<>();

    TubsByName(Transaction tx) {
        this.places = new Places(tx);
        places.addresses().values().forEach(address -> found.put(nameOf(address), address.tub()));
    }

    /// A name without room or rack means the one tub that it fits; if there is none or several,
    /// one whose room or rack has no name.
    TubId find(PlaceName name) {
        var fitting =
                found.keySet().stream().filter(name::fits).map(found::get).distinct().toList();
        if (fitting.size() == 1) {
            return fitting.getFirst();
        }
        var full =
                new PlaceName(
                        name.room().isEmpty() ? UNNAMED : name.room(),
                        name.rack().isEmpty() ? UNNAMED : name.rack(),
                        name.tub());
        return found.computeIfAbsent(
                full, _ -> places.theTub(full.room(), full.rack(), full.tub()).id());
    }

    private static PlaceName nameOf(Address address) {
        return new PlaceName(address.room(), address.rack(), address.name());
    }
}
