package clutchwright.engine.incubation;

import java.util.List;

/// What a logger read in a box of eggs, beside the incubator's air.
///
/// @param samples in the order of their hours, none twice
public record BoxTrace(Probe probe, Beside beside, List<Sample> samples) {

    /// Where the box's sensor lies.
    public enum Probe {
        BOX,
        EGGS
    }

    /// What is known of the incubator's air.
    public enum Beside {
        SENSOR,
        SET_POINT
    }

    /// @param hours from any moment on
    public record Sample(double hours, Celsius incubator, Celsius read) {}

    public BoxTrace {
        samples = List.copyOf(samples);
        for (var i = 1; i < samples.size(); i++) {
            if (!(samples.get(i).hours() > samples.get(i - 1).hours())) {
                throw new IllegalArgumentException(
                        "hour %s after hour %s"
                                .formatted(samples.get(i).hours(), samples.get(i - 1).hours()));
            }
        }
    }
}
