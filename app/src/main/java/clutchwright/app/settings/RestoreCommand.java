package clutchwright.app.settings;

import clutchwright.app.cli.DataFolder;
import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Terminal;
import clutchwright.records.store.Backup;
import clutchwright.records.store.StoreFailure;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/// Brings a backup back.
@Command(
        name = "restore",
        description =
                "Bring a backup back. What is there now is kept beside it, under names that end in"
                        + " .before-restore. Stop serving first.",
        footer = {"", "Example: clutchwright restore 2026-06-14.zip"})
public final class RestoreCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", description = "A file that backup has written.")
    private Path source = Path.of("");

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "Folder of the collection; default $CLUTCHWRIGHT_DATA, else your own.")
    private Optional<Path> data = Optional.empty();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    public RestoreCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    /// What was brought back, as other programs read it.
    record Report(String source, String folder) {}

    @Override
    public Integer call() {
        if (!Files.isRegularFile(source)) {
            terminal.say("There is no file “%s”.".formatted(source));
            return Exit.BAD_INPUT.status();
        }
        var folder = DataFolder.choose(data).path();
        try {
            Backup.restore(source, folder);
        } catch (StoreFailure e) {
            terminal.say(
                    "“%s” is no backup that can be brought back; nothing was changed. (%s)"
                            .formatted(source, e.getMessage()));
            return Exit.BAD_INPUT.status();
        }
        if (json) {
            terminal.json(new Report(source.toString(), folder.toString()));
        } else {
            terminal.print("The collection in %s is as it was in %s.".formatted(folder, source));
        }
        return Exit.DONE.status();
    }
}
