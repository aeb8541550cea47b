package clutchwright.app.settings;

import clutchwright.app.cli.DataFolder;
import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Terminal;
import clutchwright.records.store.Backup;
import clutchwright.records.store.Database;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/// Writes everything into one file, also while the pages are being served.
@Command(
        name = "backup",
        description = "Write the records and photos into one file, to be kept elsewhere.",
        footer = {"", "Example: clutchwright backup 2026-06-14.zip"})
public final class BackupCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", description = "A file that is not there yet.")
    private Path target = Path.of("");

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "Folder of the collection; default $CLUTCHWRIGHT_DATA, else your own.")
    private Optional<Path> data = Optional.empty();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    public BackupCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    /// What was written, as other programs read it.
    record Report(String target) {}

    @Override
    public Integer call() {
        if (Files.exists(target)) {
            terminal.say("“%s” is there already; name another file.".formatted(target));
            return Exit.BAD_INPUT.status();
        }
        var folder = DataFolder.choose(data).path();
        if (!Files.exists(folder.resolve(Database.FILE))) {
            terminal.say("There is no collection in “%s”.".formatted(folder));
            return Exit.BAD_INPUT.status();
        }
        try (var database = Database.open(folder, Clock.system(ZoneId.systemDefault()))) {
            Backup.write(database, target);
        }
        if (json) {
            terminal.json(new Report(target.toString()));
        } else {
            terminal.print("Everything is written to %s.".formatted(target));
        }
        return Exit.DONE.status();
    }
}
