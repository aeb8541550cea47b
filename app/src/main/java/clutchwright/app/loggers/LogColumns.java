package clutchwright.app.loggers;

import clutchwright.app.loggers.TemperatureLog.Scale;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/// Which columns of a logger's file are read, and how; said once for all files with such headings.
///
/// @param time the heading of the column that holds the time of day, with its date or without
/// @param date the heading of the column that holds the date; blank where the time has it
/// @param temperature the heading of the column that holds the temperature
/// @param order of day and month in dates with slashes
public record LogColumns(
        String time, String date, String temperature, Scale scale, DayOrder order) {

    private static final Pattern TIME = Pattern.compile("(?i).*(time|zeit|uhr|hora|heure|stamp).*");
    private static final Pattern DATE = Pattern.compile("(?i).*(date|datum|day|fecha).*");
    private static final Pattern TEMPERATURE =
            Pattern.compile("(?i).*(temp|celsius|fahrenheit|°\\s*[cf]\\b|\\bt\\b).*");
    private static final Pattern FAHRENHEIT =
            Pattern.compile("(?i).*(fahrenheit|°\\s*f\\b|\\bf\\)|\\[f]|_f$).*");
    private static final String APART = "\u001f";

    /// How a date with slashes is written.
    public enum DayOrder {
        DAY_FIRST,
        MONTH_FIRST
    }

    /// What the headings suggest; blank where they say nothing.
    public static LogColumns suggested(List<String> headings) {
        var temperature = headings.stream().filter(is(TEMPERATURE)).findFirst().orElse("");
        var time =
                headings.stream()
                        .filter(is(TIME))
                        .filter(heading -> !heading.equals(temperature))
                        .findFirst();
        var date =
                headings.stream().filter(is(DATE)).filter(is(TIME).negate()).findFirst().orElse("");
        return new LogColumns(
                time.orElse(date),
                time.isPresent() ? date : "",
                temperature,
                is(FAHRENHEIT).test(temperature) ? Scale.FAHRENHEIT : Scale.CELSIUS,
                DayOrder.DAY_FIRST);
    }

    /// Whether a heading sounds like one of a logger's file.
    static boolean isHeading(String text) {
        return is(TIME).or(is(DATE)).or(is(TEMPERATURE)).test(text);
    }

    /// As one line of a setting.
    public String held() {
        return String.join(APART, time, date, temperature, scale.name(), order.name());
    }

    public static LogColumns read(String held) {
        var parts = Arrays.asList(held.split(APART, -1));
        return new LogColumns(
                parts.get(0),
                parts.get(1),
                parts.get(2),
                Scale.valueOf(parts.get(3)),
                DayOrder.valueOf(parts.get(4)));
    }

    /// By what files with such headings are known again.
    public static String key(List<String> headings) {
        return String.join("|", headings).strip().toLowerCase(Locale.ROOT);
    }

    private static Predicate<String> is(Pattern pattern) {
        return heading -> pattern.matcher(heading.strip()).matches();
    }
}
