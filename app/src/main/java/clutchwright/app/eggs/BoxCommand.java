package clutchwright.app.eggs;

import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Terminal;
import clutchwright.app.wording.BoxWords;
import clutchwright.engine.incubation.Celsius;
import clutchwright.engine.incubation.Conductance;
import clutchwright.engine.incubation.EggBox;
import clutchwright.engine.incubation.EmbryoHeat;
import clutchwright.engine.incubation.SharedBox;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/// Prints how warm eggs make their box.
@Command(
        name = "box",
        description = "Say how warm eggs make themselves in a box, by a model; no safety device.",
        footer = {
            "",
            "Example: clutchwright box --eggs 10 --set-point 31.7 --ua 1.4 --development 1.0 --json"
        })
public final class BoxCommand implements Callable<Integer> {

    private static final int MOST_EGGS = 200;
    private static final Pattern LOT =
            Pattern.compile(
                    "(?<eggs>[0-9]{1,3}):(?<grown>[0-9](\\.[0-9]{1,15})?)(:(?<grams>[0-9]{1,3}(\\.[0-9]{1,6})?))?");

    private final Terminal terminal;

    @Option(names = "--eggs", required = true, paramLabel = "N", description = "Live eggs in it.")
    private int eggs;

    @Option(
            names = "--set-point",
            required = true,
            paramLabel = "CELSIUS",
            description = "The incubator's air.")
    private double setPoint;

    @Option(
            names = "--ua",
            paramLabel = "W/K",
            description =
                    "What the box passes on for each degree; default ${DEFAULT-VALUE}, a tub of 20 litres.")
    private double conductance = Conductance.STANDARD.wattsPerKelvin();

    @Option(
            names = "--development",
            paramLabel = "S",
            description = "Of the eggs, 0 at laying to 1 at pipping; default ${DEFAULT-VALUE}.")
    private double development = 1;

    @Option(
            names = "--egg-grams",
            paramLabel = "G",
            description = "Weight of one egg; default ${DEFAULT-VALUE}.")
    private double eggGrams = EmbryoHeat.EGG_GRAMS;

    @Option(
            names = "--shape",
            paramLabel = "logistic|exponential",
            description = "How their heat rises; default ${DEFAULT-VALUE}.")
    private EmbryoHeat.Shape shape = EmbryoHeat.Shape.LOGISTIC;

    @Option(
            names = "--lot",
            paramLabel = "EGGS:DEVELOPMENT[:GRAMS]",
            description =
                    "Eggs of another clutch in the same box, a heap of their own, such as 6:0.4; may be given again.")
    private List<String> others = List.of();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    public BoxCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    /// Eggs of another clutch, as they are printed.
    record PrintedLot(
            int eggs,
            double development,
            double wattsPerEgg,
            double riseKelvin,
            double eggCelsius) {

        static PrintedLot of(SharedBox.Lot lot, EggBox.Warmth warmth) {
            return new PrintedLot(
                    lot.eggs(),
                    lot.development(),
                    warmth.wattsPerEgg(),
                    warmth.riseKelvin(),
                    warmth.egg().degrees());
        }
    }

    /// As it is printed; temperatures in °C.
    ///
    /// @param lots the other clutches
    record Printed(
            double wattsPerEgg,
            double riseKelvin,
            double eggCelsius,
            double boxCelsius,
            double lidCelsius,
            double condensesAboveRelativeHumidity,
            List<PrintedLot> lots) {

        static Printed of(EggBox.Warmth warmth, List<PrintedLot> lots) {
            return new Printed(
                    warmth.wattsPerEgg(),
                    warmth.riseKelvin(),
                    warmth.egg().degrees(),
                    warmth.box().degrees(),
                    warmth.lid().degrees(),
                    warmth.condensesAbove(),
                    lots);
        }
    }

    @Override
    public Integer call() {
        var faults = faults();
        if (!faults.isEmpty()) {
            faults.forEach(terminal::say);
            return Exit.BAD_INPUT.status();
        }
        var lots = new ArrayList<SharedBox.Lot>();
        lots.add(new SharedBox.Lot(eggs, development, eggGrams));
        others.forEach(text -> readLot(text).ifPresent(lots::add));
        var box =
                new SharedBox(
                        EmbryoHeat.standard(shape),
                        new Conductance(conductance),
                        EggBox.Pile.STANDARD,
                        lots);
        SharedBox.Warmth warmth;
        try {
            warmth = box.steady(new Celsius(setPoint));
        } catch (ArithmeticException e) {
            terminal.say(
                    "--ua: %d such eggs in a box of %s W/K warm each other without end; expected a box that lets more heat out."
                            .formatted(
                                    lots.stream().mapToInt(SharedBox.Lot::eggs).sum(),
                                    conductance));
            return Exit.BAD_INPUT.status();
        }
        print(lots, warmth.lots());
        return Exit.DONE.status();
    }

    private void print(List<SharedBox.Lot> lots, List<EggBox.Warmth> warmths) {
        if (json) {
            var printed = new ArrayList<PrintedLot>();
            for (var i = 1; i < lots.size(); i++) {
                printed.add(PrintedLot.of(lots.get(i), warmths.get(i)));
            }
            terminal.json(Printed.of(warmths.getFirst(), printed));
            return;
        }
        BoxWords.lines(warmths.getFirst(), eggs).forEach(terminal::print);
        for (var i = 1; i < lots.size(); i++) {
            terminal.print(BoxWords.beside(warmths.get(i), lots.get(i).eggs()));
        }
    }

    /// Empty where it is none.
    private Optional<SharedBox.Lot> readLot(String text) {
        var found = LOT.matcher(text);
        if (!found.matches()) {
            return Optional.empty();
        }
        var many = Integer.parseInt(found.group("eggs"));
        var grown = Double.parseDouble(found.group("grown"));
        var grams =
                Optional.ofNullable(found.group("grams")).map(Double::parseDouble).orElse(eggGrams);
        return many <= MOST_EGGS && grown <= 1 && grams >= 5 && grams <= 500
                ? Optional.of(new SharedBox.Lot(many, grown, grams))
                : Optional.empty();
    }

    private List<String> faults() {
        var faults = new ArrayList<String>();
        if (eggs < 0 || eggs > MOST_EGGS) {
            faults.add(
                    "--eggs: expected a number from 0 to %d, not %d.".formatted(MOST_EGGS, eggs));
        }
        if (!(setPoint >= 15 && setPoint <= 45)) {
            faults.add(
                    "--set-point: expected degrees Celsius from 15 to 45, not %s.%s"
                            .formatted(
                                    setPoint,
                                    setPoint > 45 && setPoint < 115
                                            ? " That looks like °F: it would be %.1f °C."
                                                    .formatted((setPoint - 32) / 1.8)
                                            : ""));
        }
        if (!(conductance > 0 && conductance <= 100)) {
            faults.add("--ua: expected W/K above 0, up to 100, not %s.".formatted(conductance));
        }
        if (!(development >= 0 && development <= 1)) {
            faults.add(
                    "--development: expected a number from 0 to 1, not %s.".formatted(development));
        }
        if (!(eggGrams >= 5 && eggGrams <= 500)) {
            faults.add("--egg-grams: expected grams from 5 to 500, not %s.".formatted(eggGrams));
        }
        others.stream()
                .filter(text -> readLot(text).isEmpty())
                .forEach(
                        text ->
                                faults.add(
                                        "--lot: expected eggs (0 to %d), development (0 to 1) and perhaps grams (5 to 500), such as 6:0.4 or 6:0.4:90, not %s."
                                                .formatted(MOST_EGGS, text)));
        return faults;
    }
}
