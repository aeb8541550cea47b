package clutchwright.app.loggers;

import clutchwright.app.loggers.LogColumns.DayOrder;
import clutchwright.app.loggers.TemperatureLog.Line;
import clutchwright.app.loggers.TemperatureLog.Scale;
import clutchwright.app.wording.FileWords;
import clutchwright.app.wording.Formats;
import clutchwright.records.exchange.sheets.Limits;
import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.exchange.sheets.SheetFile;
import clutchwright.records.exchange.sheets.SheetReading;
import clutchwright.records.incubators.Reading;
import clutchwright.records.incubators.Sensor;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/// A logger's file, whatever its columns are called.
public final class LogSheet {

    private static final int FEW = 5;

    private final Sheet sheet;

    private LogSheet(Sheet sheet) {
        this.sheet = sheet;
    }

    /// What a file held.
    public sealed interface Opened {

        record Table(LogSheet sheet) implements Opened {}

        /// @param why as a sentence
        record Unreadable(String why) implements Opened {}
    }

    /// What its lines mean.
    public sealed interface Readings {

        /// @param notes what was left out or put right, as sentences
        record Understood(List<Reading> readings, List<String> notes) implements Readings {

            public Understood {
                readings = List.copyOf(readings);
                notes = List.copyOf(notes);
            }
        }

        /// @param faults as sentences that name the place and what was expected
        record Refused(List<String> faults) implements Readings {

            public Refused {
                faults = List.copyOf(faults);
            }
        }
    }

    public static Opened open(Path file, String name, Formats formats) {
        var reading = new SheetFile(LogColumns::isHeading, Limits.USUAL).read(file, name, "");
        return switch (reading) {
            case SheetReading.Unreadable(var fault) ->
                    new Opened.Unreadable(FileWords.of(fault, formats));
            case SheetReading.Read(var sheet) ->
                    sheet.rows().isEmpty()
                            ? new Opened.Unreadable("It has headings and nothing under them.")
                            : new Opened.Table(new LogSheet(sheet));
        };
    }

    public List<String> headings() {
        return sheet.header();
    }

    /// The first rows, as they are written.
    public List<List<String>> first() {
        return sheet.rows().stream().limit(FEW).map(Sheet.Row::cells).toList();
    }

    /// @param zone of the logger's clock, where the file does not say
    /// @param sensor that said it
    public Readings readings(LogColumns columns, ZoneId zone, Sensor sensor) {
        var time = sheet.header().indexOf(columns.time());
        var date = columns.date().isEmpty() ? time : sheet.header().indexOf(columns.date());
        var temperature = sheet.header().indexOf(columns.temperature());
        if (time < 0 || date < 0 || temperature < 0) {
            return new Readings.Refused(List.of("The file lacks a column that was chosen."));
        }
        var faults = new ArrayList<String>();
        var notes = new ArrayList<String>();
        var lines = lines(new Places(time, date, temperature), columns.order(), zone, faults);
        if (!faults.isEmpty()) {
            return new Readings.Refused(faults);
        }
        if (lines.isEmpty()) {
            return new Readings.Refused(List.of("No line has a temperature."));
        }
        var wrong = LogValues.wrongScale(lines, columns.scale());
        if (wrong.isPresent()) {
            return new Readings.Refused(
                    List.of(
                            "Temperatures about %s look like %s: choose that scale if they are."
                                    .formatted(
                                            wrong.getAsDouble(),
                                            columns.scale() == Scale.CELSIUS ? "°F" : "°C")));
        }
        var sound = LogValues.plausible(lines, columns.scale(), notes);
        return switch (LogOrder.of(sound, notes)) {
            case LogOrder.Backwards(var fault) -> new Readings.Refused(List.of(fault));
            case LogOrder.InOrder(var ordered) ->
                    new Readings.Understood(
                            ordered.stream()
                                    .map(line -> reading(line, columns.scale(), sensor))
                                    .toList(),
                            notes);
        };
    }

    private record Places(int time, int date, int temperature) {

        String when(List<String> cells) {
            return date == time
                    ? cells.get(time).strip()
                    : cells.get(date).strip() + " " + cells.get(time).strip();
        }
    }

    private List<Line> lines(Places places, DayOrder order, ZoneId zone, List<String> faults) {
        var lines = new ArrayList<Line>();
        var clock = new LogClock(order, zone);
        for (var row : sheet.rows()) {
            var written = row.cells().get(places.temperature()).strip();
            if (LogValues.isNothing(written)) {
                continue;
            }
            var when = places.when(row.cells());
            var moment = clock.read(when);
            var value = LogValues.number(written);
            if (moment.isEmpty()) {
                faults.add(
                        "line %d: expected %s, not “%s”."
                                .formatted(row.number(), LogTimes.EXPECTED, when));
            } else if (value.isEmpty()) {
                faults.add(
                        "line %d, column %s: expected a temperature such as 31.7, not “%s”."
                                .formatted(
                                        row.number(),
                                        sheet.header().get(places.temperature()),
                                        written));
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
        return lines;
    }

    private static Reading reading(Line line, Scale scale, Sensor sensor) {
        return new Reading(
                line.clock().toInstant(ZoneOffset.UTC),
                LogValues.celsius(line.value(), scale).degrees() + sensor.correctionKelvin());
    }
}
