package clutchwright.app.settings;

import clutchwright.app.cli.DataFolder;
import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Terminal;
import clutchwright.records.exchange.OpenPackage;
import clutchwright.records.store.Database;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/// Writes the whole collection as an open package.
@Command(
        name = "export",
        description = "Write the whole collection as open files: a folder, or one .zip.",
        footer = {"", "Example: clutchwright export collection.zip"})
public final class ExportCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(
            paramLabel = "DIR_OR_ZIP",
            description = "A folder that is empty or not there, or a file that ends in .zip.")
    private Path target = Path.of("");

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "Folder of the collection; default $CLUTCHWRIGHT_DATA, else your own.")
    private Optional<Path> data = Optional.empty();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    public ExportCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    /// What was written, as other programs read it.
    record Report(String target, int animals, int photos, List<String> files) {}

    @Override
    public Integer call() {
        if (isInUse()) {
            terminal.say(
                    "“%s” is there already with something in it; name another place."
                            .formatted(target));
            return Exit.BAD_INPUT.status();
        }
        try (var database =
                Database.open(
                        DataFolder.choose(data).path(), Clock.system(ZoneId.systemDefault()))) {
            var written = database.read(tx -> OpenPackage.write(tx, target.toAbsolutePath()));
            if (json) {
                terminal.json(
                        new Report(
                                target.toString(),
                                written.animals(),
                                written.photos(),
                                written.files()));
            } else {
                terminal.print(
                        "%d animals and %d photos are written to %s."
                                .formatted(written.animals(), written.photos(), target));
            }
            return Exit.DONE.status();
        }
    }

    /// An old export, or something else, must not be mixed with a new one.
    private boolean isInUse() {
        if (!Files.exists(target)) {
            return false;
        }
        if (!Files.isDirectory(target)) {
            return true;
        }
        try (var inside = Files.list(target)) {
            return inside.findAny().isPresent();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
