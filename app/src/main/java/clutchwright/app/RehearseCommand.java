package clutchwright.app;

import clutchwright.app.cli.DataFolder;
import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Terminal;
import clutchwright.app.season.PredictCommand;
import java.io.IOException;
import java.net.HttpURLConnection;
import java.net.InetAddress;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/// Starts, fetches pages and stops, so that the JVM can keep what a start needs for the next one.
@Command(name = "rehearse", hidden = true, description = "Used by the build.")
final class RehearseCommand implements Callable<Integer> {

    private static final List<String> PATHS =
            List.of(
                    "",
                    "collection",
                    "collection/1",
                    "season",
                    "season/predict?dam=9&sire=1",
                    "eggs",
                    "catalogue",
                    "settings",
                    "no-such-page",
                    "clutchwright.css");

    private final Terminal terminal;

    @Parameters(paramLabel = "DIR", description = "An empty folder.")
    private Path folder = Path.of("");

    RehearseCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        var plan =
                new Serving.Plan(
                        new DataFolder(folder.toAbsolutePath()),
                        true,
                        0,
                        InetAddress.ofLiteral("127.0.0.1"),
                        List.of());
        predict();
        switch (Serving.start(plan)) {
            case Serving.Running running -> {
                for (var path : PATHS) {
                    fetch(URI.create(running.address() + path));
                }
                running.close();
            }
            case Serving.Refused(var why) -> {
                terminal.say(why);
                return Exit.FAULT.status();
            }
        }
        return Exit.DONE.status();
    }

    /// A command that needs no pages, as other programs call it and as people do.
    private void predict() {
        var predict = new CommandLine(new PredictCommand(terminal));
        for (var form : List.of("--json", "--limit=100")) {
            predict.execute(
                    "--dam=Super Pastel Mojave 66% het Clown", "--sire=Banana het Clown", form);
        }
    }

    private static void fetch(URI page) throws IOException {
        var connection = (HttpURLConnection) page.toURL().openConnection();
        connection.getResponseCode();
        connection.disconnect();
    }
}
