package clutchwright.app.today;

import clutchwright.records.places.Address;
import java.util.Comparator;

/// Where in the house a thing is done. In the order in which one walks: through the rooms, rack by
/// rack and tub by tub, then to the incubators, then whatever has no place.
public sealed interface Spot {

    /// Names count as people read them, so that rack 2 comes before rack 10.
    Comparator<Spot> WALK =
            Comparator.comparingInt(Spot::part)
                    .thenComparing(Spot::heading, Numbered.ORDER)
                    .thenComparing(Spot::within, Numbered.ORDER);

    record InTub(Address address) implements Spot {}

    /// @param box blank for the incubator's own air
    record InIncubator(String name, String box) implements Spot {}

    record Nowhere() implements Spot {}

    private int part() {
        return switch (this) {
            case InTub _ -> 0;
            case InIncubator _ -> 1;
            case Nowhere _ -> 2;
        };
    }

    /// Under what it stands on the round.
    default String heading() {
        return switch (this) {
            case InTub(var address) -> address.room() + ", rack " + address.rack();
            case InIncubator(var name, _) -> name;
            case Nowhere _ -> "Without a place on record";
        };
    }

    /// Where under that heading; blank if nowhere nearer.
    default String within() {
        return switch (this) {
            case InTub(var address) -> "tub " + address.name();
            case InIncubator(_, var box) -> box.isEmpty() ? "" : "box " + box;
            case Nowhere _ -> "";
        };
    }

    /// Both; blank for what has no place.
    default String inWords() {
        return switch (this) {
            case InTub _, InIncubator _ ->
                    within().isEmpty() ? heading() : heading() + ", " + within();
            case Nowhere _ -> "";
        };
    }
}
