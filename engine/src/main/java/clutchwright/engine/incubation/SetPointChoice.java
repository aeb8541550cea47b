package clutchwright.engine.incubation;

import java.util.ArrayList;
import java.util.List;

/// The highest set point of an incubator at which no egg in any of its boxes gets warmer than it
/// may, until the last has hatched.
///
/// The warmer the incubator, the warmer every egg on every day, so that one box decides.
///
/// @param setPoint to 0.001 K; no higher than the limit itself
/// @param courses of each box at it, in the order in which they were given
/// @param decides the box whose eggs come closest to the limit, from 0
public record SetPointChoice(Celsius setPoint, List<SharedCourse> courses, int decides) {

    private static final double FINE_KELVIN = 0.001;

    /// Lower than that below the limit nobody sets an incubator.
    private static final double DEEPEST_KELVIN = 15;

    public SetPointChoice {
        courses = List.copyOf(courses);
    }

    /// @param boxes at least one, each with an egg in it
    /// @param warmest that an egg may get
    /// @throws ArithmeticException if the heat of a box does not settle however cool it stands
    public static SetPointChoice of(List<SharedBox> boxes, Celsius warmest) {
        if (boxes.isEmpty()) {
            throw new IllegalArgumentException("no box");
        }
        var low = warmest.degrees() - DEEPEST_KELVIN;
        var high = warmest.degrees();
        while (high - low > FINE_KELVIN) {
            var middle = (low + high) / 2;
            if (allow(boxes, new Celsius(middle), warmest)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return at(boxes, new Celsius(low));
    }

    /// What comes of a set point that was chosen otherwise.
    ///
    /// @throws ArithmeticException if the heat of a box does not settle at it
    public static SetPointChoice at(List<SharedBox> boxes, Celsius setPoint) {
        var courses = new ArrayList<SharedCourse>();
        for (var box : boxes) {
            courses.add(SharedCourse.of(box, setPoint));
        }
        var decides = 0;
        for (var i = 1; i < courses.size(); i++) {
            if (courses.get(i).warmest().compareTo(courses.get(decides).warmest()) > 0) {
                decides = i;
            }
        }
        return new SetPointChoice(setPoint, courses, decides);
    }

    private static boolean allow(List<SharedBox> boxes, Celsius setPoint, Celsius warmest) {
        try {
            return boxes.stream()
                    .map(box -> SharedCourse.of(box, setPoint))
                    .allMatch(course -> course.warmest().compareTo(warmest) <= 0);
        } catch (ArithmeticException e) {
            return false;
        }
    }

    /// The warmest that any egg gets.
    public Celsius warmest() {
        return courses.get(decides).warmest();
    }
}
