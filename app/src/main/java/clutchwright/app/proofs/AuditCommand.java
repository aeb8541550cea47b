package clutchwright.app.proofs;

import clutchwright.app.cli.DataFolder;
import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Terminal;
import clutchwright.app.holding.Holding;
import clutchwright.app.holding.PackageInHand;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.pedigree.PedigreeFault;
import clutchwright.records.Snapshot;
import clutchwright.records.SpeciesRecords;
import clutchwright.records.store.Database;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/// Prints which records cannot all be true, or hardly, and what may have happened.
@Command(
        name = "audit",
        description = "Find records that cannot all be true, and say what may have happened.",
        footer = {
            "",
            "Status 1 if something was found, 0 if not. Example: clutchwright audit animals.csv"
        })
public final class AuditCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(
            arity = "0..1",
            paramLabel = "PACKAGE",
            description = "A folder, a .zip or a table of animals; else the collection itself.")
    private Optional<Path> file = Optional.empty();

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "Folder of the collection; default $CLUTCHWRIGHT_DATA, else your own.")
    private Optional<Path> data = Optional.empty();

    @Option(
            names = "--background",
            paramLabel = "F",
            description = "How frequent unknown genes are; default ${DEFAULT-VALUE}.")
    private double background = Assumptions.STANDARD.background();

    @Option(
            names = "--misread",
            paramLabel = "E",
            description = "How often what was seen is not what is there; default ${DEFAULT-VALUE}.")
    private double misread = Assumptions.STANDARD.misread();

    @Option(
            names = "--species",
            paramLabel = "ID",
            description = "Of rows that do not say theirs; default ${DEFAULT-VALUE}.")
    private String species = "python-regius";

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    public AuditCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (!isChance("--background", background) || !isChance("--misread", misread)) {
            return Exit.BAD_INPUT.status();
        }
        if (file.isPresent() && data.isPresent()) {
            terminal.say("Name a package or --data, not both.");
            return Exit.BAD_INPUT.status();
        }
        return file.isPresent() ? ofFiles(file.get()) : ofStore();
    }

    private int ofFiles(Path path) {
        return PackageInHand.read(path, species, terminal::say)
                .map(read -> report(read.species().values(), List.of(), read::tag))
                .orElse(Exit.BAD_INPUT.status());
    }

    private int ofStore() {
        try (var holding =
                new Holding(
                        Database.open(
                                DataFolder.choose(data).path(),
                                Clock.system(ZoneId.systemDefault())))) {
            var snapshot = holding.database().read(Snapshot::of);
            Function<AnimalId, String> tags =
                    id ->
                            snapshot.find(id)
                                    .map(animal -> animal.tag().value())
                                    .orElse(id.toString());
            return switch (snapshot.pedigree()) {
                case Pedigree.Result.Faulty(var faults) -> report(List.of(), faults, tags);
                case Pedigree.Result.Sound _ ->
                        report(
                                SpeciesRecords.of(
                                                snapshot.animals().values(),
                                                snapshot.statements(),
                                                holding::lines)
                                        .values(),
                                List.of(),
                                tags);
            };
        }
    }

    private int report(
            Collection<SpeciesRecords> species,
            List<PedigreeFault> faults,
            Function<AnimalId, String> tags) {
        for (var some : species) {
            var most = Audited.mostGenes(some.records());
            if (most * background > 1) {
                terminal.say(
                        "--background: %s for each of %d genes of one locus is more than 1 together; write %.4f at most."
                                .formatted(background, most, 1.0 / most));
                return Exit.BAD_INPUT.status();
            }
        }
        var audited = Audited.of(species, new Assumptions(background, misread), faults, tags);
        if (json) {
            terminal.json(audited);
        } else {
            audited.lines().forEach(terminal::print);
        }
        return (audited.isClean() ? Exit.DONE : Exit.FINDING).status();
    }

    private boolean isChance(String option, double value) {
        // Written so that NaN fails.
        var fits = value >= 0 && value <= 1;
        if (!fits) {
            terminal.say("%s: write a number from 0 to 1, not %s.".formatted(option, value));
        }
        return fits;
    }
}
