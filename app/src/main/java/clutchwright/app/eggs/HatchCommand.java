package clutchwright.app.eggs;

import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Terminal;
import clutchwright.app.loggers.TemperatureLog;
import clutchwright.app.loggers.TemperatureLog.Scale;
import clutchwright.app.wording.HatchWords;
import clutchwright.engine.incubation.Celsius;
import clutchwright.engine.incubation.Development;
import clutchwright.engine.incubation.Development.Reading;
import clutchwright.engine.incubation.DevelopmentRate;
import clutchwright.engine.incubation.HatchForecast;
import clutchwright.engine.incubation.HatchModel;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.DoubleStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/// Prints when eggs hatch.
@Command(
        name = "hatch",
        description = {
            "Say when eggs hatch: after so many days at one temperature, or by a logger's file of what"
                    + " they felt since they were laid."
        },
        footer = {
            "",
            "Examples: clutchwright hatch --celsius 31.0 --json",
            "          clutchwright hatch --log box4.csv --laid 2024-05-01 --json"
        })
public final class HatchCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Option(
            names = "--celsius",
            paramLabel = "C",
            description = "The eggs' temperature, the same from laying to hatching.")
    private Optional<Double> celsius = Optional.empty();

    @Option(
            names = "--log",
            paramLabel = "FILE",
            description = "A logger's file with the columns time and temperature.")
    private Optional<Path> log = Optional.empty();

    @Option(
            names = "--laid",
            paramLabel = "DATE",
            description = "The day on which they were laid, such as 2024-05-01.")
    private Optional<String> laid = Optional.empty();

    @Option(
            names = "--clock",
            paramLabel = "celsius|fahrenheit",
            description = "The scale of the file's temperatures; default ${DEFAULT-VALUE}.")
    private Scale scale = Scale.CELSIUS;

    @Option(
            names = "--ahead",
            paramLabel = "C",
            description =
                    "The eggs' temperature after the last reading, in °C; else it goes on as it was on average.")
    private Optional<Double> ahead = Optional.empty();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    public HatchCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    /// At one temperature.
    record Constant(double days, double sdDays, List<String> notes) {

        Constant {
            notes = List.copyOf(notes);
        }
    }

    /// By what the eggs felt.
    record Felt(
            double development,
            LocalDate mean,
            List<Range> ranges,
            double hatchDay,
            List<String> notes) {

        Felt {
            ranges = List.copyOf(ranges);
            notes = List.copyOf(notes);
        }

        /// @param level the chance that they pip from the one day to the other
        record Range(double level, LocalDate from, LocalDate to) {}
    }

    @Override
    public Integer call() {
        if (celsius.isPresent() == log.isPresent()) {
            return refused("expected either --celsius or --log, and not both.");
        }
        return celsius.isPresent() ? constant(celsius.get()) : felt(log.orElseThrow());
    }

    private int constant(double degrees) {
        var fault = temperatureFault("--celsius", degrees);
        if (fault.isPresent()) {
            return refused(fault.get());
        }
        var egg = new Celsius(degrees);
        var days = DevelopmentRate.standard().days(egg);
        var notes = new ArrayList<String>();
        if (!DevelopmentRate.isKnownAt(egg)) {
            notes.add(HatchWords.outside(degrees));
        }
        var spread =
                DevelopmentRate.isKnownAt(egg)
                        ? HatchModel.SPREAD
                        : Math.hypot(HatchModel.SPREAD, Development.OUTSIDE_SHARE);
        var printed = new Constant(days, days * spread, notes);
        if (json) {
            terminal.json(printed);
        } else {
            HatchWords.constant(degrees, printed.days(), printed.sdDays(), notes)
                    .forEach(terminal::print);
        }
        return Exit.DONE.status();
    }

    private int felt(Path file) {
        var day = laid.flatMap(HatchCommand::day);
        if (day.isEmpty()) {
            return refused(
                    laid.map("--laid: expected a day such as 2024-05-01, not “%s”."::formatted)
                            .orElse("--laid: expected the day on which the eggs were laid."));
        }
        var fault = ahead.flatMap(degrees -> temperatureFault("--ahead", degrees));
        if (fault.isPresent()) {
            return refused(fault.get());
        }
        return switch (TemperatureLog.read(file, day.get(), scale)) {
            case TemperatureLog.Refused(var faults) -> {
                faults.forEach(each -> terminal.say(file + ": " + each));
                yield Exit.BAD_INPUT.status();
            }
            case TemperatureLog.Understood(var readings, var notes) -> {
                print(day.get(), readings, notes);
                yield Exit.DONE.status();
            }
        };
    }

    private void print(LocalDate day, List<Reading> readings, List<String> remarks) {
        var rate = DevelopmentRate.standard();
        var felt = Development.of(readings, rate);
        var onward =
                ahead.map(degrees -> rate.perDay(new Celsius(degrees)))
                        .orElseGet(() -> onAverage(felt, readings, rate));
        var forecast = HatchModel.STANDARD.after(felt, onward);
        var notes = new ArrayList<>(remarks);
        notes.addAll(HatchWords.notes(felt));
        var printed =
                new Felt(
                        felt.reached(),
                        date(day, forecast.mean()),
                        DoubleStream.of(0.5, 0.9)
                                .mapToObj(level -> range(day, forecast, level))
                                .toList(),
                        forecast.mean(),
                        notes);
        if (json) {
            terminal.json(printed);
        } else {
            HatchWords.felt(
                            printed.development(),
                            printed.mean(),
                            printed.ranges().stream()
                                    .map(
                                            range ->
                                                    "%.0f %%: %s to %s"
                                                            .formatted(
                                                                    100 * range.level(),
                                                                    range.from(),
                                                                    range.to()))
                                    .toList(),
                            notes)
                    .forEach(terminal::print);
        }
    }

    /// A single reading is its own average.
    private static double onAverage(
            Development felt, List<Reading> readings, DevelopmentRate rate) {
        return felt.lastDay() > 0
                ? felt.reached() / felt.lastDay()
                : rate.perDay(readings.getLast().celsius());
    }

    private static Felt.Range range(LocalDate laid, HatchForecast forecast, double level) {
        return new Felt.Range(
                level,
                date(laid, forecast.quantile((1 - level) / 2)),
                date(laid, forecast.quantile((1 + level) / 2)));
    }

    private static LocalDate date(LocalDate laid, double days) {
        return laid.plusDays((long) Math.floor(days));
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    private static Optional<String> temperatureFault(String option, double degrees) {
        return degrees >= 15 && degrees <= 45
                ? Optional.empty()
                : Optional.of(
                        "%s: expected degrees Celsius from 15 to 45, not %s.%s"
                                .formatted(
                                        option,
                                        degrees,
                                        degrees > 45 && degrees < 115
                                                ? " That looks like °F: it would be %.1f °C."
                                                        .formatted((degrees - 32) / 1.8)
                                                : ""));
    }

    private int refused(String fault) {
        terminal.say(fault);
        return Exit.BAD_INPUT.status();
    }
}
