package clutchwright.app.loggers;

import clutchwright.app.wording.FileWords;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.Preferences;
import clutchwright.engine.incubation.Development.Reading;
import clutchwright.records.exchange.sheets.Limits;
import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.exchange.sheets.SheetFile;
import clutchwright.records.exchange.sheets.SheetReading;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;

/// The readings of a logger's file, from the day on which eggs were laid; or why it cannot be read.
public sealed interface TemperatureLog {

    Set<String> TIMES = Set.of("time", "timestamp", "datetime", "date time", "date/time");
    Set<String> TEMPERATURES = Set.of("temperature", "temp", "celsius", "fahrenheit");

    /// @param readings in days from laying
    /// @param notes what was left out or put right, as sentences
    record Understood(List<Reading> readings, List<String> notes) implements TemperatureLog {

        public Understood {
            readings = List.copyOf(readings);
            notes = List.copyOf(notes);
        }
    }

    /// @param faults as sentences that name the place and what was expected
    record Refused(List<String> faults) implements TemperatureLog {

        public Refused {
            faults = List.copyOf(faults);
        }
    }

    /// The scale of a sensor.
    enum Scale {
        CELSIUS,
        FAHRENHEIT
    }

    /// @param clock in UTC, where the file says how far it is from it
    /// @param local as it stands in the file
    record Line(int row, LocalDateTime clock, LocalDateTime local, double value) {}

    static TemperatureLog read(Path file, LocalDate laid, Scale scale) {
        var reading =
                new SheetFile(text -> isTime(text) || isTemperature(text), Limits.USUAL)
                        .read(file, file.getFileName().toString(), "");
        return switch (reading) {
            case SheetReading.Unreadable(var fault) ->
                    new Refused(List.of(FileWords.of(fault, new Formats(Preferences.FIRST))));
            case SheetReading.Read(var sheet) -> read(sheet, laid, scale);
        };
    }

    private static TemperatureLog read(Sheet sheet, LocalDate laid, Scale scale) {
        var time = column(sheet, TemperatureLog::isTime);
        var temperature = column(sheet, TemperatureLog::isTemperature);
        if (time.isEmpty() || temperature.isEmpty()) {
            return new Refused(
                    List.of(
                            "line %d: expected the columns time and temperature, not %s."
                                    .formatted(
                                            sheet.headerRow(), String.join(", ", sheet.header()))));
        }
        var faults = new ArrayList<String>();
        var notes = new ArrayList<String>();
        var lines = lines(sheet, time.getAsInt(), temperature.getAsInt(), faults, notes);
        if (!faults.isEmpty()) {
            return new Refused(faults);
        }
        if (lines.isEmpty()) {
            return new Refused(List.of("no line has a temperature."));
        }
        var wrongScale = LogValues.wrongScale(lines, scale);
        if (wrongScale.isPresent()) {
            return new Refused(
                    List.of(
                            scale == Scale.CELSIUS
                                    ? "line %d: temperatures about %s look like °F, not °C; say --clock fahrenheit if they are."
                                            .formatted(
                                                    lines.getFirst().row(),
                                                    wrongScale.getAsDouble())
                                    : "line %d: temperatures about %s look like °C, not °F; say --clock celsius if they are."
                                            .formatted(
                                                    lines.getFirst().row(),
                                                    wrongScale.getAsDouble())));
        }
        var sound = LogValues.plausible(lines, scale, notes);
        return switch (LogOrder.of(sound, notes)) {
            case LogOrder.Backwards(var fault) -> new Refused(List.of(fault));
            case LogOrder.InOrder(var ordered) -> sinceLaying(ordered, laid, scale, notes);
        };
    }

    private static TemperatureLog sinceLaying(
            List<Line> ordered, LocalDate laid, Scale scale, List<String> notes) {
        var begin = laid.atStartOfDay();
        var since = ordered.stream().filter(line -> !line.local().isBefore(begin)).toList();
        if (since.isEmpty()) {
            return new Refused(
                    List.of(
                            "the readings end on %s, before the clutch was laid on %s."
                                    .formatted(ordered.getLast().local().toLocalDate(), laid)));
        }
        if (since.size() < ordered.size()) {
            notes.add(
                    "%d readings of before %s are left out."
                            .formatted(ordered.size() - since.size(), laid));
        }
        // The hour of laying is seldom known: a log that begins on the day begins with the eggs.
        var first = since.getFirst();
        var start =
                first.local().toLocalDate().equals(laid)
                        ? first.clock()
                        : first.clock().minus(Duration.between(begin, first.local()));
        return new Understood(
                since.stream()
                        .map(
                                line ->
                                        new Reading(
                                                Duration.between(start, line.clock()).toSeconds()
                                                        / 86_400.0,
                                                LogValues.celsius(line.value(), scale)))
                        .toList(),
                notes);
    }

    private static List<Line> lines(
            Sheet sheet, int time, int temperature, List<String> faults, List<String> notes) {
        var lines = new ArrayList<Line>();
        var without = 0;
        for (var row : sheet.rows()) {
            var written = row.cells().get(temperature).strip();
            if (LogValues.isNothing(written)) {
                without++;
                continue;
            }
            var moment = LogTimes.read(row.cells().get(time).strip());
            var value = LogValues.number(written);
            if (moment.isEmpty()) {
                faults.add(
                        "line %d, column %s: expected %s, not “%s”."
                                .formatted(
                                        row.number(),
                                        sheet.header().get(time),
                                        LogTimes.EXPECTED,
                                        row.cells().get(time).strip()));
            } else if (value.isEmpty()) {
                faults.add(
                        "line %d, column %s: expected a temperature such as 31.7, not “%s”."
                                .formatted(row.number(), sheet.header().get(temperature), written));
            } else {
                lines.add(
                        new Line(
                                row.number(),
                                moment.get().utc(),
                                moment.get().clock(),
                                value.getAsDouble()));
            }
            if (faults.size() >= LogValues.MOST_FAULTS) {
                faults.add("and perhaps more below.");
                return lines;
            }
        }
        if (without > 0) {
            notes.add("%d lines without a temperature are left out.".formatted(without));
        }
        return lines;
    }

    private static OptionalInt column(Sheet sheet, Predicate<String> is) {
        for (var i = 0; i < sheet.header().size(); i++) {
            if (is.test(sheet.header().get(i))) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private static boolean isTime(String text) {
        return TIMES.contains(text.strip().toLowerCase(Locale.ROOT));
    }

    /// Also with its unit behind it: `Temperature (°C)`.
    private static boolean isTemperature(String text) {
        var bare = text.replaceAll("[(\\[].*", "").strip().toLowerCase(Locale.ROOT);
        return TEMPERATURES.contains(bare);
    }
}
