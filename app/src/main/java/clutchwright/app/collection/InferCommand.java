package clutchwright.app.collection;

import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Terminal;
import clutchwright.app.holding.PackageInHand;
import clutchwright.engine.inference.Assumptions;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/// Prints what every animal of some files carries, given all that they say.
@Command(
        name = "infer",
        description = "Say what every animal carries, given all that is recorded of all of them.",
        footer = {"", "Example: clutchwright infer animals.csv --locus clown"})
public final class InferCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "PACKAGE", description = "A folder, a .zip or a table of animals.")
    private Path file = Path.of("");

    @Option(
            names = "--background",
            paramLabel = "F",
            description =
                    "How frequent each gene is among animals without recorded parents of which"
                            + " nothing is stated; default ${DEFAULT-VALUE}.")
    private double background = Assumptions.STANDARD.background();

    @Option(
            names = "--misread",
            paramLabel = "E",
            description = "How often what was seen is not what is there; default ${DEFAULT-VALUE}.")
    private double misread = Assumptions.STANDARD.misread();

    @Option(names = "--locus", paramLabel = "ID", description = "Only this locus.")
    private Optional<String> locus = Optional.empty();

    @Option(
            names = "--species",
            paramLabel = "ID",
            description = "Of rows that do not say theirs; default ${DEFAULT-VALUE}.")
    private String species = "python-regius";

    @Option(
            names = "--why",
            paramLabel = "TAG[:GENE]",
            description = "Also say why, for an animal and one gene, or all that it may carry.")
    private List<String> why = List.of();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    public InferCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (!isChance("--background", background) || !isChance("--misread", misread)) {
            return Exit.BAD_INPUT.status();
        }
        var done =
                PackageInHand.read(file, species, terminal::say)
                        .flatMap(
                                read ->
                                        locus.map(id -> Inferring.at(read, id, terminal::say))
                                                .orElseGet(() -> Optional.of(Inferring.of(read))))
                        .flatMap(this::infer);
        done.ifPresent(this::print);
        return (done.isPresent() ? Exit.DONE : Exit.BAD_INPUT).status();
    }

    private Optional<Inferring.Done> infer(Inferring asked) {
        return asked.asked(why, terminal::say)
                .flatMap(some -> asked.under(background, misread, some, terminal::say));
    }

    private void print(Inferring.Done done) {
        var inferred = Inferred.of(done);
        if (json) {
            terminal.json(inferred);
        } else {
            InferredTable.lines(inferred).forEach(terminal::print);
        }
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
