package clutchwright.engine.incubation;

import java.util.ArrayList;
import java.util.List;

/// The eggs of a clutch in boxes.
///
/// @param boxes how many eggs each holds, as even as they can be, the fuller ones in front
public record ClutchSplit(List<Integer> boxes) {

    /// How many eggs keepers put in a box at most: common practice, no source. The model knows
    /// of no jump there.
    public static final int MOST_IN_A_BOX = 10;

    public ClutchSplit {
        boxes = List.copyOf(boxes);
    }

    /// The fewest boxes that hold no more than so many each.
    ///
    /// @param eggs 0 or more
    /// @param most one or more
    public static ClutchSplit atMost(int eggs, int most) {
        if (eggs < 0 || most < 1) {
            throw new IllegalArgumentException(eggs + " eggs, at most " + most + " in a box");
        }
        return into(eggs, (eggs + most - 1) / most);
    }

    /// @param boxes 0 only if there are no eggs
    public static ClutchSplit into(int eggs, int boxes) {
        var split = new ArrayList<Integer>();
        for (var box = 0; box < boxes; box++) {
            split.add(eggs / boxes + (box < eggs % boxes ? 1 : 0));
        }
        return new ClutchSplit(split);
    }

    /// How many eggs the fullest box holds.
    public int fullest() {
        return boxes.isEmpty() ? 0 : boxes.getFirst();
    }
}
