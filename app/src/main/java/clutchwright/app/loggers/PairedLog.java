package clutchwright.app.loggers;

import clutchwright.app.loggers.TemperatureLog.Line;
import clutchwright.app.loggers.TemperatureLog.Scale;
import clutchwright.app.wording.FileWords;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.Preferences;
import clutchwright.engine.incubation.Celsius;
import clutchwright.records.exchange.sheets.Limits;
import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.exchange.sheets.SheetFile;
import clutchwright.records.exchange.sheets.SheetReading;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/// A logger's file of a box, with or without a column of the incubator's air; or why it cannot be
/// read.
public sealed interface PairedLog {

    Set<String> INCUBATORS = Set.of("incubator", "air", "incubator air");

    /// @param notes what was left out or put right, as sentences
    record Understood(List<Pair> pairs, boolean hasIncubator, List<String> notes)
            implements PairedLog {

        public Understood {
            pairs = List.copyOf(pairs);
            notes = List.copyOf(notes);
        }
    }

    /// @param hours since the first reading
    /// @param incubator empty where the file has no such column
    record Pair(double hours, Celsius read, Optional<Celsius> incubator) {}

    /// @param faults as sentences that name the place and what was expected
    record Refused(List<String> faults) implements PairedLog {

        public Refused {
            faults = List.copyOf(faults);
        }
    }

    static PairedLog read(Path file, Scale scale) {
        var reading =
                new SheetFile(PairedLog::isHeading, Limits.USUAL)
                        .read(file, file.getFileName().toString(), "");
        return switch (reading) {
            case SheetReading.Unreadable(var fault) ->
                    refused(FileWords.of(fault, new Formats(Preferences.FIRST)));
            case SheetReading.Read(var sheet) -> read(sheet, scale);
        };
    }

    private static PairedLog read(Sheet sheet, Scale scale) {
        var time = column(sheet, TemperatureLog.TIMES);
        var temperature = column(sheet, TemperatureLog.TEMPERATURES);
        if (time.isEmpty() || temperature.isEmpty()) {
            return refused(
                    "line %d: expected the columns time and temperature, and incubator if it was read, not %s."
                            .formatted(sheet.headerRow(), String.join(", ", sheet.header())));
        }
        var notes = new ArrayList<String>();
        var incubator = column(sheet, INCUBATORS);
        return switch (lines(sheet, time.getAsInt(), temperature.getAsInt(), scale, notes)) {
            case Column.Refused(var faults) -> new Refused(faults);
            case Column.Lines(var box) ->
                    incubator.isEmpty()
                            ? paired(box, Optional.empty(), scale, notes)
                            : switch (lines(
                                    sheet,
                                    time.getAsInt(),
                                    incubator.getAsInt(),
                                    scale,
                                    new ArrayList<>())) {
                                case Column.Refused(var faults) -> new Refused(faults);
                                case Column.Lines(var air) ->
                                        paired(box, Optional.of(air), scale, notes);
                            };
        };
    }

    private static PairedLog paired(
            List<Line> box, Optional<List<Line>> air, Scale scale, List<String> notes) {
        var besides = new HashMap<Integer, Celsius>();
        air.ifPresent(
                lines ->
                        lines.forEach(
                                line ->
                                        besides.put(
                                                line.row(),
                                                LogValues.celsius(line.value(), scale))));
        var pairs = new ArrayList<Pair>();
        var alone = 0;
        for (var line : box) {
            var beside = Optional.ofNullable(besides.get(line.row()));
            if (air.isPresent() && beside.isEmpty()) {
                alone++;
            } else {
                var since = Duration.between(box.getFirst().clock(), line.clock());
                pairs.add(
                        new Pair(
                                since.toMillis() / 3_600_000.0,
                                LogValues.celsius(line.value(), scale),
                                beside));
            }
        }
        if (pairs.isEmpty()) {
            return refused("no line has both temperatures.");
        }
        if (alone > 0) {
            notes.add("%d lines without the incubator's air are left out.".formatted(alone));
        }
        return new Understood(pairs, air.isPresent(), notes);
    }

    /// The lines of one of the columns.
    sealed interface Column {

        record Lines(List<Line> lines) implements Column {

            public Lines {
                lines = List.copyOf(lines);
            }
        }

        record Refused(List<String> faults) implements Column {

            public Refused {
                faults = List.copyOf(faults);
            }
        }
    }

    private static Column lines(
            Sheet sheet, int time, int temperature, Scale scale, List<String> notes) {
        var faults = new ArrayList<String>();
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
                        fault(sheet, row, time, LogTimes.EXPECTED, row.cells().get(time).strip()));
            } else if (value.isEmpty()) {
                faults.add(fault(sheet, row, temperature, "a temperature such as 31.7", written));
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
                break;
            }
        }
        if (!faults.isEmpty()) {
            return new Column.Refused(faults);
        }
        if (lines.isEmpty()) {
            return new Column.Refused(
                    List.of(
                            "no line has a temperature in the column %s."
                                    .formatted(sheet.header().get(temperature))));
        }
        if (LogValues.wrongScale(lines, scale).isPresent()) {
            return new Column.Refused(
                    List.of(
                            "the column %s looks like the other scale; say --clock %s if it is."
                                    .formatted(
                                            sheet.header().get(temperature),
                                            scale == Scale.CELSIUS ? "fahrenheit" : "celsius")));
        }
        if (without > 0) {
            notes.add("%d lines without a temperature are left out.".formatted(without));
        }
        return switch (LogOrder.of(LogValues.plausible(lines, scale, notes), notes)) {
            case LogOrder.Backwards(var fault) -> new Column.Refused(List.of(fault));
            case LogOrder.InOrder(var ordered) -> new Column.Lines(ordered);
        };
    }

    private static String fault(
            Sheet sheet, Sheet.Row row, int column, String expected, String written) {
        return "line %d, column %s: expected %s, not “%s”."
                .formatted(row.number(), sheet.header().get(column), expected, written);
    }

    private static Refused refused(String fault) {
        return new Refused(List.of(fault));
    }

    private static OptionalInt column(Sheet sheet, Set<String> names) {
        for (var i = 0; i < sheet.header().size(); i++) {
            if (names.contains(bare(sheet.header().get(i)))) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private static boolean isHeading(String text) {
        var bare = bare(text);
        return TemperatureLog.TIMES.contains(bare)
                || TemperatureLog.TEMPERATURES.contains(bare)
                || INCUBATORS.contains(bare);
    }

    /// Without its unit behind it: `Temperature (°C)`.
    private static String bare(String text) {
        return text.replaceAll("[(\\[].*", "").strip().toLowerCase(Locale.ROOT);
    }
}
