package clutchwright.records.exchange;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// Where an animal lives, by the names that a file gives to room, rack and tub.
///
/// @param room blank where the file names none; so with the rack
public record PlaceName(String room, String rack, String tub) {

    public PlaceName {
        room = room.strip();
        rack = rack.strip();
        tub = tub.strip();
        if (tub.isEmpty()) {
            throw new IllegalArgumentException("a place without a tub: " + room + " " + rack);
        }
    }

    /// Whether the names given here are those of the other place; blank ones are not given.
    boolean fits(PlaceName other) {
        return same(tub, other.tub)
                && (rack.isEmpty() || same(rack, other.rack))
                && (room.isEmpty() || same(room, other.room));
    }

    private static boolean same(String one, String other) {
        return Keys.of(one).equals(Keys.of(other));
    }

    /// Takes a cell such as `Room 1 / Rack A / 12` apart; fewer parts are the inner ones.
    static Optional<PlaceName> read(String cell) {
        var parts =
                Arrays.stream(cell.split("\\s*(?:/|>|,|;|\\|)\\s*"))
                        .map(String::strip)
                        .filter(part -> !part.isEmpty())
                        .toList();
        return of(parts);
    }

    /// From the separate cells of room, rack and tub; the innermost that is given is the tub.
    static Optional<PlaceName> of(String room, String rack, String tub) {
        return tub.isBlank()
                ? of(List.of(room, rack).stream().filter(part -> !part.isBlank()).toList())
                : Optional.of(new PlaceName(room, rack, tub));
    }

    private static Optional<PlaceName> of(List<String> parts) {
        return switch (parts.size()) {
            case 0 -> Optional.empty();
            case 1 -> Optional.of(new PlaceName("", "", parts.getFirst()));
            case 2 -> Optional.of(new PlaceName("", parts.get(0), parts.get(1)));
            default ->
                    Optional.of(
                            new PlaceName(
                                    parts.get(0),
                                    parts.get(1),
                                    String.join(" / ", parts.subList(2, parts.size()))));
        };
    }
}
