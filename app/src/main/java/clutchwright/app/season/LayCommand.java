package clutchwright.app.season;

import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Terminal;
import clutchwright.engine.season.LayModel;
import clutchwright.engine.season.LayPriors;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/// Prints when a female will lay.
@Command(
        name = "lay",
        description = {
            "Say when a female will lay: her earlier years, the others' and the latest sign in, a day"
                    + " with its ranges out.",
            "docs/guide/commands.md says what the file holds."
        },
        footer = {"", "Example: clutchwright lay ada.json --json"})
public final class LayCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", description = "What is known of her, as JSON.")
    private Path file = Path.of("");

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    public LayCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        String text;
        try {
            text = Files.readString(file);
        } catch (IOException e) {
            terminal.say("%s: cannot be read as UTF-8 text.".formatted(file));
            return Exit.BAD_INPUT.status();
        }
        return switch (LayFile.read(text)) {
            case LayFile.Refused(var faults) -> {
                faults.forEach(fault -> terminal.say(file + ": " + fault));
                yield Exit.BAD_INPUT.status();
            }
            case LayFile.Understood asked -> {
                print(asked);
                yield Exit.DONE.status();
            }
        };
    }

    private void print(LayFile.Understood asked) {
        var found =
                new LayModel(LayPriors.STANDARD)
                        .forecast(
                                asked.collection(), asked.female(), asked.others(), asked.today());
        var day = LayDay.of(asked.season(), found);
        if (json) {
            terminal.json(day);
        } else {
            day.lines().forEach(terminal::print);
        }
    }
}
