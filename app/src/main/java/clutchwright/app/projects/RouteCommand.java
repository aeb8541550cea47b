package clutchwright.app.projects;

import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Pointing;
import clutchwright.app.cli.Terminal;
import clutchwright.app.holding.PackageInHand;
import clutchwright.app.steering.HouseStock;
import clutchwright.app.wording.ReadingWords;
import clutchwright.app.wording.RouteWords;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Reading;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.planning.Biology;
import clutchwright.engine.planning.Goal;
import clutchwright.engine.planning.ImpossibleGoal;
import clutchwright.engine.planning.RouteLimits;
import clutchwright.engine.planning.RouteSearch;
import clutchwright.engine.planning.Routes;
import clutchwright.engine.probability.Fraction;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/// Prints the routes over generations from the animals of some files to a goal.
@Command(
        name = "route",
        description =
                "Find the routes over generations to an animal: which pairings, what to keep of"
                        + " each, and the chance by each season.",
        footer = {
            "",
            "Status 1 if no route leads there, or none is needed. After a season run it again with"
                    + " what hatched.",
            "Example: clutchwright route animals.csv --goal \"Clown Piebald\""
        })
public final class RouteCommand implements Callable<Integer> {

    private static final int MOST_CLUTCHES = 100;
    private static final int MOST_EGGS = 100;
    private static final int MOST_SEASONS = 60;

    private final Terminal terminal;

    @Parameters(paramLabel = "PACKAGE", description = "A folder, a .zip or a table of animals.")
    private Path file = Path.of("");

    @Option(
            names = "--goal",
            required = true,
            paramLabel = "LINE",
            description =
                    "What it must have at least, as breeders write it; also its sex or how many,"
                            + " as in \"1.1 Clown\".")
    private String goal = "";

    @Option(
            names = "--clutches-per-season",
            paramLabel = "N",
            description = "Clutches a season for this project; default ${DEFAULT-VALUE}.")
    private int clutches = RouteLimits.USUAL.clutchesPerSeason();

    @Option(
            names = "--eggs",
            paramLabel = "N",
            description = "Eggs of a clutch; default ${DEFAULT-VALUE}.")
    private int eggs = Biology.USUAL.eggs();

    @Option(
            names = "--hatch-rate",
            paramLabel = "R",
            description = "Share of eggs that hatch; default ${DEFAULT-VALUE}.")
    private BigDecimal hatchRate = new BigDecimal("0.9");

    @Option(
            names = "--males",
            paramLabel = "R",
            description = "Share of males among what hatches; default ${DEFAULT-VALUE}.")
    private BigDecimal males = new BigDecimal("0.5");

    @Option(
            names = "--male-seasons",
            paramLabel = "N",
            description = "Seasons until a male hatchling breeds; default ${DEFAULT-VALUE}.")
    private int maleSeasons = Biology.USUAL.maleSeasons();

    @Option(
            names = "--female-seasons",
            paramLabel = "N",
            description = "Seasons until a female hatchling breeds; default ${DEFAULT-VALUE}.")
    private int femaleSeasons = Biology.USUAL.femaleSeasons();

    @Option(
            names = "--confidence",
            paramLabel = "P",
            description = "Chance with which a route counts as done; default ${DEFAULT-VALUE}.")
    private double confidence = RouteLimits.USUAL.confidence();

    @Option(
            names = "--max-seasons",
            paramLabel = "N",
            description = "The last season looked at; default ${DEFAULT-VALUE}.")
    private int seasons = RouteLimits.USUAL.seasons();

    @Option(
            names = "--runs",
            paramLabel = "N",
            description = "How often each route is played through; default ${DEFAULT-VALUE}.")
    private int runs = RouteLimits.USUAL_RUNS;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "Of the chance in it; default ${DEFAULT-VALUE}.")
    private long seed = RouteLimits.USUAL.seed();

    @Option(
            names = "--first-season",
            paramLabel = "YEAR",
            description =
                    "In which the first clutches hatch; else the next, by the month it is now.")
    private Optional<Integer> firstSeason = Optional.empty();

    @Option(
            names = "--species",
            paramLabel = "ID",
            description = "Whose genes; default ${DEFAULT-VALUE}.")
    private String species = "python-regius";

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    public RouteCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (!argumentsMakeSense()) {
            return Exit.BAD_INPUT.status();
        }
        return PackageInHand.read(file, species, terminal::say)
                .map(this::route)
                .orElse(Exit.BAD_INPUT.status());
    }

    private boolean argumentsMakeSense() {
        // All are looked at before one is refused, so that all faults are named at once.
        return !List.of(
                        isWhole("--clutches-per-season", clutches, 0, MOST_CLUTCHES),
                        isWhole("--eggs", eggs, 1, MOST_EGGS),
                        isWhole("--male-seasons", maleSeasons, 1, MOST_SEASONS),
                        isWhole("--female-seasons", femaleSeasons, 1, MOST_SEASONS),
                        isWhole("--max-seasons", seasons, 1, MOST_SEASONS),
                        isWhole("--runs", runs, 1, 1_000_000),
                        isShare("--hatch-rate", hatchRate, true),
                        isShare("--males", males, false),
                        isShare("--confidence", BigDecimal.valueOf(bounded(confidence)), false))
                .contains(false);
    }

    /// A number that no chance is, where it is none at all.
    private static double bounded(double value) {
        return Double.isFinite(value) ? value : -1;
    }

    private boolean isWhole(String option, int value, int least, int most) {
        var fits = value >= least && value <= most;
        if (!fits) {
            terminal.say(
                    "%s: write a number from %d to %d, not %d."
                            .formatted(option, least, most, value));
        }
        return fits;
    }

    private boolean isShare(String option, BigDecimal value, boolean all) {
        var one = value.compareTo(BigDecimal.ONE);
        var fits = value.signum() > 0 && (all ? one <= 0 : one < 0) && value.scale() <= 9;
        if (!fits) {
            terminal.say(
                    "%s: write a number above 0 and %s 1, not %s."
                            .formatted(option, all ? "at most" : "below", value.toPlainString()));
        }
        return fits;
    }

    private int route(PackageInHand read) {
        var id = species.toLowerCase(Locale.ROOT);
        var records = Optional.ofNullable(read.species().get(id));
        if (records.isEmpty()) {
            terminal.say("The files hold no animal of %s.".formatted(id));
            return Exit.BAD_INPUT.status();
        }
        var lines = records.get().lines();
        return switch (lines.read(goal)) {
            case Reading.Unclear(var faults, _) -> unclear(faults);
            case Reading.Understood(var genes, _, var notes) -> {
                notes.stream()
                        .filter(note -> note.kind() != Reading.Note.NoteKind.CAUTION)
                        .forEach(note -> point(ReadingWords.of(note), note.start(), note.end()));
                yield switch (Goal.read(genes, lines.catalogue().model())) {
                    case Goal.Reading.Clear(var clear) ->
                            search(Collected.of(read, id, firstYear(), biology()), lines, clear);
                    case Goal.Reading.NamesNothing() -> bad(RouteWords.namesNothing(goal));
                    case Goal.Reading.InDoubt(var name) -> bad(RouteWords.inDoubt(name));
                    case Goal.Reading.AsksForPhase(var name) -> bad(RouteWords.asksForPhase(name));
                    case Goal.Reading.ThreeAlleles(var locus) ->
                            refuse(new ImpossibleGoal.ThreeAlleles(locus), List.of(), tag -> "");
                };
            }
        };
    }

    private int bad(String sentence) {
        terminal.say("--goal: " + sentence);
        return Exit.BAD_INPUT.status();
    }

    private int unclear(List<Reading.Fault> faults) {
        faults.forEach(fault -> point(ReadingWords.of(fault), fault.start(), fault.end()));
        var tooMany =
                faults.stream()
                        .filter(fault -> fault.kind() == Reading.Fault.FaultKind.TOO_MANY_ALLELES)
                        .findFirst();
        if (tooMany.isPresent() && faults.size() == 1) {
            if (json) {
                terminal.json(RouteDocument.refused("three alleles", RouteWords.THREE_ALLELES));
            }
            return Exit.FINDING.status();
        }
        return Exit.BAD_INPUT.status();
    }

    private void point(String sentence, int start, int end) {
        terminal.say("--goal, character %d: %s".formatted(start + 1, sentence));
        Pointing.at(goal, start, end).forEach(terminal::say);
    }

    private int firstYear() {
        return firstSeason.orElseGet(() -> HouseStock.nextSeason(today()));
    }

    private static LocalDate today() {
        return LocalDate.now(ZoneId.systemDefault());
    }

    private Biology biology() {
        return new Biology(eggs, fraction(hatchRate), fraction(males), maleSeasons, femaleSeasons);
    }

    private static Fraction fraction(BigDecimal share) {
        return Fraction.of(
                share.movePointRight(9).toBigIntegerExact(), BigDecimal.TEN.pow(9).toBigInteger());
    }

    private int search(Collected collected, GeneLine lines, Goal wanted) {
        var limits = new RouteLimits(clutches, confidence, seasons, runs, seed);
        var before = System.nanoTime();
        var routes =
                RouteSearch.of(
                        lines.catalogue().model(), wanted, collected.stock(), biology(), limits);
        var seconds = (System.nanoTime() - before) / 1e9;
        return switch (routes) {
            case Routes.Refused(var reason) -> refuse(reason, collected.notes(), collected::tag);
            case Routes.Found found -> {
                var document =
                        RouteDocument.of(
                                found, collected, lines.catalogue().model(), wanted, seconds);
                if (json) {
                    terminal.json(document);
                } else {
                    collected.notes().forEach(terminal::say);
                    RouteText.lines(document, goal.strip(), confidence).forEach(terminal::print);
                }
                yield Exit.DONE.status();
            }
        };
    }

    private int refuse(ImpossibleGoal reason, List<String> notes, Function<AnimalId, String> tags) {
        notes.forEach(terminal::say);
        var sentence = RouteWords.of(reason, tags);
        terminal.say("--goal: " + sentence);
        if (json) {
            terminal.json(RouteDocument.refused(RouteWords.nameOf(reason), sentence));
        }
        return Exit.FINDING.status();
    }
}
