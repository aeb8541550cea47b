package clutchwright.app;

import clutchwright.app.cli.DataFolder;
import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Terminal;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/// Serves the pages until it is stopped.
@Command(
        name = "serve",
        description = "Open the collection in the browser: serves the pages until you stop it.")
final class ServeCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Option(names = "--demo", description = "A made-up breeder instead of your own collection.")
    private boolean demo;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "Folder of the collection; default $CLUTCHWRIGHT_DATA, else your own.")
    private Optional<Path> data = Optional.empty();

    @Option(names = "--port", paramLabel = "N", description = "Default ${DEFAULT-VALUE}.")
    private int port = 8420;

    @Option(
            names = "--listen",
            paramLabel = "ADDRESS",
            description =
                    "Let other devices in at this address (0.0.0.0 for all); needs a password.")
    private Optional<String> listen = Optional.empty();

    @Option(
            names = "--name",
            paramLabel = "HOST",
            description = "A further name by which this computer calls itself.")
    private List<String> names = new ArrayList<>();

    ServeCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        var address = address();
        if (address.isEmpty()) {
            terminal.say("--listen: not an address of a computer: " + listen.orElse(""));
            return Exit.BAD_INPUT.status();
        }
        var serving = Serving.start(new Serving.Plan(folder(), demo, port, address.get(), names));
        return switch (serving) {
            case Serving.Running running -> {
                terminal.print("Clutchwright is open at " + running.address());
                terminal.say("Stop it with Ctrl-C.");
                running.untilStopped();
                yield Exit.DONE.status();
            }
            case Serving.Refused(var why) -> {
                terminal.say(why);
                yield Exit.BAD_INPUT.status();
            }
        };
    }

    /// The made-up breeder lives beside the keeper's own collection, never in it.
    private DataFolder folder() {
        var chosen = DataFolder.choose(data);
        return demo && data.isEmpty() ? new DataFolder(chosen.path().resolve("demo")) : chosen;
    }

    private Optional<InetAddress> address() {
        try {
            return Optional.of(
                    listen.isPresent()
                            ? InetAddress.getByName(listen.get())
                            : InetAddress.ofLiteral("127.0.0.1"));
        } catch (UnknownHostException e) {
            return Optional.empty();
        }
    }
}
