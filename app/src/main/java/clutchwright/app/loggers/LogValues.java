package clutchwright.app.loggers;

import clutchwright.app.loggers.TemperatureLog.Line;
import clutchwright.app.loggers.TemperatureLog.Scale;
import clutchwright.engine.incubation.Celsius;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;

/// The values of a logger's file: which are numbers, of which scale, and which a sensor made up.
final class LogValues {

    static final int MOST_FAULTS = 20;

    private static final Set<String> NOTHING =
            Set.of("", "nan", "na", "n/a", "null", "-", "--", "error", "err", "fault");

    /// What an incubator or a room can have; a broken sensor says -127 or 85.
    private static final double COLDEST_CELSIUS = -10;

    private static final double HOTTEST_CELSIUS = 60;

    /// Of an incubator in °F, which as °C nothing lives at; and the other way round.
    private static final double LEAST_LIKE_FAHRENHEIT = 65;

    private static final double MOST_LIKE_CELSIUS = 50;

    private LogValues() {}

    static boolean isNothing(String text) {
        return NOTHING.contains(text.toLowerCase(Locale.ROOT));
    }

    /// With a point or a comma.
    static OptionalDouble number(String text) {
        try {
            var value = Double.parseDouble(text.replace(',', '.'));
            return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    static Celsius celsius(double value, Scale scale) {
        return switch (scale) {
            case CELSIUS -> new Celsius(value);
            case FAHRENHEIT -> Celsius.ofFahrenheit(value);
        };
    }

    /// The middle value, where it looks like one of the other scale.
    static OptionalDouble wrongScale(List<Line> lines, Scale scale) {
        var middle =
                lines.stream()
                        .mapToDouble(Line::value)
                        .sorted()
                        .skip(lines.size() / 2)
                        .findFirst()
                        .orElseThrow();
        var wrong =
                scale == Scale.CELSIUS
                        ? middle >= LEAST_LIKE_FAHRENHEIT
                        : middle <= MOST_LIKE_CELSIUS;
        return wrong ? OptionalDouble.of(middle) : OptionalDouble.empty();
    }

    static List<Line> plausible(List<Line> lines, Scale scale, List<String> notes) {
        var sound =
                lines.stream()
                        .filter(
                                line -> {
                                    var celsius = celsiusDegrees(line.value(), scale);
                                    return celsius > COLDEST_CELSIUS && celsius < HOTTEST_CELSIUS;
                                })
                        .toList();
        if (sound.size() < lines.size()) {
            notes.add(
                    "%d readings that no room has are left out, as a broken sensor's."
                            .formatted(lines.size() - sound.size()));
        }
        return sound;
    }

    private static double celsiusDegrees(double value, Scale scale) {
        return scale == Scale.CELSIUS ? value : (value - 32) / 1.8;
    }
}
