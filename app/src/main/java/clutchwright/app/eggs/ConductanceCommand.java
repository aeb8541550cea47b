package clutchwright.app.eggs;

import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Terminal;
import clutchwright.app.loggers.PairedLog;
import clutchwright.app.loggers.TemperatureLog.Scale;
import clutchwright.app.wording.BoxWords;
import clutchwright.app.wording.ConductanceWords;
import clutchwright.engine.incubation.BoxTrace.Probe;
import clutchwright.engine.incubation.EmbryoHeat;
import clutchwright.engine.incubation.EmbryoHeat.Shape;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/// Prints what a box lets out, by a logger's file.
@Command(
        name = "conductance",
        description = "Say how much heat a box of eggs lets out, by what a logger read in it.",
        footer = {
            "",
            "Example: clutchwright conductance box4.csv --eggs 8 --development 0.85 --offset 0.1 --json"
        })
public final class ConductanceCommand implements Callable<Integer> {

    private static final int MOST_EGGS = 200;

    private final Terminal terminal;

    @Parameters(
            paramLabel = "FILE",
            description =
                    "A table with the columns time and temperature, and incubator if its air was read too.")
    private Path file = Path.of("");

    @Option(names = "--eggs", required = true, paramLabel = "N", description = "Live eggs in it.")
    private int eggs;

    @Option(
            names = "--development",
            required = true,
            paramLabel = "D",
            description = "Of the eggs at the first reading, 0 at laying to 1 at pipping.")
    private double development;

    @Option(
            names = "--probe",
            paramLabel = "box|eggs",
            description =
                    "Where the sensor lies: in the box's air or among the eggs; default ${DEFAULT-VALUE}.")
    private Probe probe = Probe.BOX;

    @Option(
            names = "--set-point",
            paramLabel = "CELSIUS",
            description = "The incubator's air, where the file has no such column.")
    private Optional<Double> setPoint = Optional.empty();

    @Option(
            names = "--offset",
            paramLabel = "K",
            description =
                    "By how much the box's sensor reads above the incubator's, or its set point, when it hangs in the incubator's air for two hours.")
    private Optional<Double> offset = Optional.empty();

    @Option(
            names = "--egg-grams",
            paramLabel = "G",
            description = "Weight of one egg; default ${DEFAULT-VALUE}.")
    private double eggGrams = EmbryoHeat.EGG_GRAMS;

    @Option(
            names = "--box-capacity",
            paramLabel = "J/K",
            description = "Of the box's substrate, water and tub; 4180 for each kilogram of water.")
    private Optional<Double> boxCapacity = Optional.empty();

    @Option(
            names = "--shape",
            paramLabel = "logistic|exponential",
            description = "How the eggs' heat rises; default ${DEFAULT-VALUE}.")
    private Shape shape = Shape.LOGISTIC;

    @Option(
            names = "--clock",
            paramLabel = "celsius|fahrenheit",
            description = "The scale of the file's temperatures; default ${DEFAULT-VALUE}.")
    private Scale scale = Scale.CELSIUS;

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    public ConductanceCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    /// As it is printed.
    record Printed(
            double wattsPerKelvin,
            double standardError,
            Interval interval,
            double riseKelvin,
            int hours,
            List<String> notes) {

        Printed {
            notes = List.copyOf(notes);
        }

        /// @param from in W/K
        record Interval(double level, double from, double to) {}
    }

    @Override
    public Integer call() {
        var faults = faults();
        if (!faults.isEmpty()) {
            return refused(faults);
        }
        return switch (PairedLog.read(file, scale)) {
            case PairedLog.Refused(var wrong) ->
                    refused(wrong.stream().map(each -> file + ": " + each).toList());
            case PairedLog.Understood log -> fit(log);
        };
    }

    private int fit(PairedLog.Understood log) {
        if (log.hasIncubator() == setPoint.isPresent()) {
            return refused(
                    List.of(
                            log.hasIncubator()
                                    ? "--set-point: the file has the incubator's air; expected one of the two."
                                    : "--set-point: expected the incubator's set point, as the file has no column incubator."));
        }
        var measure =
                new BoxMeasure(
                        probe, setPoint, eggs, development, offset, eggGrams, boxCapacity, shape);
        return switch (measure.of(log)) {
            case BoxMeasure.Result.Refused(var why) -> refused(file + ": " + why);
            case BoxMeasure.Result.Found found -> print(found);
        };
    }

    private int print(BoxMeasure.Result.Found found) {
        var told = found.told();
        var hours = found.balance().hours().size();
        if (json) {
            terminal.json(
                    new Printed(
                            told.conductance().wattsPerKelvin(),
                            told.standardError(),
                            new Printed.Interval(
                                    0.95,
                                    told.low().wattsPerKelvin(),
                                    told.high().wattsPerKelvin()),
                            told.riseKelvin(),
                            hours,
                            found.notes()));
        } else {
            terminal.print(ConductanceWords.told(told, hours));
            found.notes().forEach(terminal::print);
            terminal.print("");
            terminal.print(BoxWords.CAUTION);
        }
        return Exit.DONE.status();
    }

    private List<String> faults() {
        var faults = new ArrayList<String>();
        if (eggs < 1 || eggs > MOST_EGGS) {
            faults.add(
                    "--eggs: expected a number from 1 to %d, not %d: it is the eggs that warm the box."
                            .formatted(MOST_EGGS, eggs));
        }
        if (!(development >= 0 && development <= 1)) {
            faults.add(
                    "--development: expected a number from 0 to 1, not %s.".formatted(development));
        }
        setPoint.filter(degrees -> !(degrees >= 15 && degrees <= 45))
                .ifPresent(
                        degrees ->
                                faults.add(
                                        "--set-point: expected degrees Celsius from 15 to 45, not %s."
                                                .formatted(degrees)));
        offset.filter(kelvin -> !(Math.abs(kelvin) <= 5))
                .ifPresent(
                        kelvin ->
                                faults.add(
                                        "--offset: expected kelvin from -5 to 5, not %s."
                                                .formatted(kelvin)));
        boxCapacity
                .filter(joules -> !(joules >= 50 && joules <= 100_000))
                .ifPresent(
                        joules ->
                                faults.add(
                                        "--box-capacity: expected J/K from 50 to 100000, not %s."
                                                .formatted(joules)));
        if (!(eggGrams >= 5 && eggGrams <= 500)) {
            faults.add("--egg-grams: expected grams from 5 to 500, not %s.".formatted(eggGrams));
        }
        return faults;
    }

    private int refused(String fault) {
        return refused(List.of(fault));
    }

    private int refused(List<String> faults) {
        faults.forEach(terminal::say);
        return Exit.BAD_INPUT.status();
    }
}
