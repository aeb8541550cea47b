package clutchwright.app.labels;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.clutches.ClutchId;
import clutchwright.records.places.RackId;
import clutchwright.records.places.RoomId;
import java.util.Optional;
import java.util.regex.Pattern;

/// For what labels are printed, and how that is written in an address.
sealed interface Wanted {

    /// Each animal that lives in a room.
    record AnimalsOfRoom(RoomId room) implements Wanted {}

    /// Each animal that lives in a rack.
    record AnimalsOfRack(RackId rack) implements Wanted {}

    /// One animal.
    record OneAnimal(AnimalId animal) implements Wanted {}

    /// Each animal that the collection's filters let through.
    ///
    /// @param filters the end of the list's address; empty for everybody
    record Filtered(String filters) implements Wanted {}

    /// Each tub of a room, whoever lives in it.
    record TubsOfRoom(RoomId room) implements Wanted {}

    /// Each tub of a rack, whoever lives in it.
    record TubsOfRack(RackId rack) implements Wanted {}

    /// Each box in which eggs of a season are waited for.
    record BoxesOfSeason(int season) implements Wanted {}

    /// Each box in which eggs of a clutch are waited for.
    record BoxesOfClutch(ClutchId clutch) implements Wanted {}

    Pattern NUMBERED = Pattern.compile("([a-z-]+)-([0-9]{1,18})");
    String FILTER = "filter";
    int LAST_SEASON = 9999;

    default String code() {
        return switch (this) {
            case AnimalsOfRoom(var room) -> "room-" + room.value();
            case AnimalsOfRack(var rack) -> "rack-" + rack.value();
            case OneAnimal(var animal) -> "animal-" + animal.value();
            case Filtered(var filters) -> FILTER + filters;
            case TubsOfRoom(var room) -> "tubs-of-room-" + room.value();
            case TubsOfRack(var rack) -> "tubs-of-rack-" + rack.value();
            case BoxesOfSeason(var season) -> "boxes-of-season-" + season;
            case BoxesOfClutch(var clutch) -> "boxes-of-clutch-" + clutch.value();
        };
    }

    static Optional<Wanted> find(String code) {
        if (code.equals(FILTER) || code.startsWith(FILTER + "?")) {
            return Optional.of(new Filtered(code.substring(FILTER.length())));
        }
        var parts = NUMBERED.matcher(code);
        if (!parts.matches()) {
            return Optional.empty();
        }
        var number = Long.parseLong(parts.group(2));
        return switch (parts.group(1)) {
            case "room" -> Optional.of(new AnimalsOfRoom(new RoomId(number)));
            case "rack" -> Optional.of(new AnimalsOfRack(new RackId(number)));
            case "animal" -> Optional.of(new OneAnimal(new AnimalId(number)));
            case "tubs-of-room" -> Optional.of(new TubsOfRoom(new RoomId(number)));
            case "tubs-of-rack" -> Optional.of(new TubsOfRack(new RackId(number)));
            case "boxes-of-season" ->
                    number <= LAST_SEASON
                            ? Optional.of(new BoxesOfSeason((int) number))
                            : Optional.empty();
            case "boxes-of-clutch" -> Optional.of(new BoxesOfClutch(new ClutchId(number)));
            default -> Optional.empty();
        };
    }
}
