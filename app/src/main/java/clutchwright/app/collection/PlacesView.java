package clutchwright.app.collection;

import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// Rooms, and the racks and tubs of one of them with the animals that live there.
///
/// @param shown the room whose racks are shown; empty where there is no room yet
/// @param form what was typed and refused
public record PlacesView(List<OfRoom> rooms, Optional<OfRoom> shown, List<OfRack> racks, Form form)
        implements View {

    public PlacesView {
        rooms = List.copyOf(rooms);
        racks = List.copyOf(racks);
    }

    public record OfRoom(String id, String version, String name, String path) {}

    public record OfRack(String id, String version, String name, List<OfTub> tubs) {

        public OfRack {
            tubs = List.copyOf(tubs);
        }

        public long inUse() {
            return tubs.stream().filter(tub -> !tub.animals().isEmpty()).count();
        }
    }

    public record OfTub(String id, String version, String name, List<Link> animals) {

        public OfTub {
            animals = List.copyOf(animals);
        }
    }

    @Override
    public String template() {
        return "collection/places.jte";
    }

    @Override
    public String title() {
        return "Places";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.COLLECTION);
    }

    public boolean isShown(OfRoom room) {
        return shown.filter(room::equals).isPresent();
    }
}
