package clutchwright.app.settings;

import clutchwright.app.cli.DataFolder;
import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Terminal;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ImportWords;
import clutchwright.app.wording.Preferences;
import clutchwright.app.wording.ProblemWords;
import clutchwright.records.animals.Animals;
import clutchwright.records.exchange.Choices;
import clutchwright.records.exchange.Choices.OnRecordAlready;
import clutchwright.records.exchange.Choices.StrangeParents;
import clutchwright.records.exchange.DateOrder;
import clutchwright.records.exchange.Finding;
import clutchwright.records.exchange.ImportOutcome;
import clutchwright.records.exchange.ImportPlan;
import clutchwright.records.exchange.OpenPackage;
import clutchwright.records.exchange.Problem;
import clutchwright.records.exchange.Progress;
import clutchwright.records.exchange.RememberedMatchings;
import clutchwright.records.exchange.SpeciesLines;
import clutchwright.records.exchange.Tables;
import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.exchange.sheets.SheetReading;
import clutchwright.records.store.Author;
import clutchwright.records.store.Database;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/// Reads a table or a package into the collection: everything or nothing.
@Command(
        name = "import",
        description = "Read animals from a table (.csv, .xlsx) or a whole package (folder, .zip).",
        footer = {"", "Example: clutchwright import animals.xlsx --dry-run"})
public final class ImportCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", description = "The table or package.")
    private Path file = Path.of("");

    @Option(names = "--dry-run", description = "List every problem and change nothing.")
    private boolean dryRun;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "Folder of the collection; default $CLUTCHWRIGHT_DATA, else your own.")
    private Optional<Path> data = Optional.empty();

    @Option(
            names = "--species",
            paramLabel = "ID",
            description = "Of rows that do not say theirs; default ${DEFAULT-VALUE}.")
    private String species = "python-regius";

    @Option(names = "--sheet", paramLabel = "NAME", description = "Which sheet of a workbook.")
    private String sheet = "";

    @Option(
            names = "--dates",
            paramLabel = "ORDER",
            description = "day_first or month_first, where the file does not show it.")
    private DateOrder dates = DateOrder.AS_THE_FILE_SHOWS;

    @Option(
            names = "--on-record",
            paramLabel = "WHAT",
            description = "Animals on record already: refuse (default), skip_identical, update.")
    private OnRecordAlready onRecord = OnRecordAlready.REFUSE;

    @Option(
            names = "--unknown-parents",
            paramLabel = "WHAT",
            description = "Parents that are nowhere: refuse (default), create, keep_as_note.")
    private StrangeParents parents = StrangeParents.REFUSE;

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    public ImportCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (!Files.exists(file)) {
            terminal.say("There is no file “%s”.".formatted(file));
            return Exit.BAD_INPUT.status();
        }
        var own = new OwnSpecies();
        if (own.find(species).isEmpty()) {
            terminal.say(
                    "--species: no catalogue of “%s”; there are %s."
                            .formatted(species, String.join(", ", OwnSpecies.names())));
            return Exit.BAD_INPUT.status();
        }
        try (var database =
                Database.open(
                        DataFolder.choose(data).path(), Clock.system(ZoneId.systemDefault()))) {
            var lines = database.read(tx -> own.lines(tx));
            var result =
                    OpenPackage.isOne(file)
                            ? readPackage(database, lines)
                            : readTable(database, lines);
            return report(database, result);
        }
    }

    private OpenPackage.Result readPackage(Database database, SpeciesLines lines) {
        return OpenPackage.read(
                database, author(), what(), file, choices(), lines, !dryRun, Progress.unheard());
    }

    private OpenPackage.Result readTable(Database database, SpeciesLines lines) {
        return switch (Tables.read(file, name(), sheet)) {
            case SheetReading.Unreadable(var fault) -> {
                var problems =
                        List.of(
                                new Problem(
                                        new Problem.Where.WholeFile(),
                                        new Finding.Unreadable(fault)));
                yield new OpenPackage.Result(new ImportOutcome.Refused(problems), problems);
            }
            case SheetReading.Read(var table) -> apply(database, plan(database, lines, table));
        };
    }

    private ImportPlan plan(Database database, SpeciesLines lines, Sheet table) {
        return database.read(
                tx ->
                        ImportPlan.of(
                                tx,
                                table,
                                new RememberedMatchings(tx).propose(table),
                                choices(),
                                lines,
                                Progress.unheard()));
    }

    private OpenPackage.Result apply(Database database, ImportPlan plan) {
        if (!plan.canBeApplied()) {
            return new OpenPackage.Result(
                    new ImportOutcome.Refused(plan.problems()), plan.problems());
        }
        return new OpenPackage.Result(
                dryRun
                        ? new ImportOutcome.Applied(
                                plan.count(ImportPlan.Fate.ADDED) + plan.strangers().size(),
                                plan.count(ImportPlan.Fate.UPDATED),
                                plan.count(ImportPlan.Fate.SKIPPED))
                        : plan.apply(database, author(), what(), Progress.unheard()),
                plan.problems());
    }

    private int report(Database database, OpenPackage.Result result) {
        var formats = new Formats(Preferences.FIRST);
        var words =
                new ImportWords(
                        new ProblemWords(
                                id ->
                                        database.read(tx -> new Animals(tx).find(id))
                                                .map(animal -> animal.tag().value())
                                                .orElse(id.toString()),
                                formats),
                        formats);
        // A refusal may carry problems that only the writing met.
        var problems =
                result.outcome() instanceof ImportOutcome.Refused(var refused)
                        ? refused
                        : result.problems();
        if (json) {
            terminal.json(ImportReport.of(name(), dryRun, result.outcome(), problems, words));
        } else {
            problems.forEach(problem -> say(problem, words));
            terminal.print(summary(result.outcome()));
        }
        return result.outcome() instanceof ImportOutcome.Refused
                ? Exit.BAD_INPUT.status()
                : Exit.DONE.status();
    }

    private void say(Problem problem, ImportWords words) {
        terminal.say(
                "%s%s, %s: %s"
                        .formatted(
                                problem.stops() ? "" : "note: ",
                                name(),
                                words.of(problem.where()),
                                words.of(problem.finding())));
    }

    private String summary(ImportOutcome outcome) {
        return switch (outcome) {
            case ImportOutcome.Applied(var added, var updated, var skipped) ->
                    "%s: %d added, %d changed, %d passed over."
                            .formatted(
                                    dryRun ? "Nothing is changed yet. It would be" : "Done",
                                    added,
                                    updated,
                                    skipped);
            case ImportOutcome.Refused(var problems) ->
                    "Nothing was changed: %d problems stand against it."
                            .formatted(problems.stream().filter(Problem::stops).count());
            case ImportOutcome.Cancelled() -> "Stopped; nothing was changed.";
        };
    }

    private Choices choices() {
        return new Choices(dates, onRecord, parents, species.toLowerCase(Locale.ROOT));
    }

    private String name() {
        return Optional.ofNullable(file.getFileName()).orElse(file).toString();
    }

    private String what() {
        return "import of " + name();
    }

    private static Author author() {
        return new Author("keeper");
    }
}
