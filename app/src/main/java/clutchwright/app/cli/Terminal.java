package clutchwright.app.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.json.JsonMapper;

/// Where commands print: results to standard output, messages to standard error.
///
/// With `--json` a command prints exactly one document and nothing else to standard output.
public final class Terminal {

    // Fields in the order of the document's record, not of the alphabet.
    private static final JsonMapper JSON =
            JsonMapper.builder().disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY).build();

    private final PrintStream out;
    private final PrintStream err;

    private Terminal(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    /// The terminal in which the program was started. Text is UTF-8 whatever the platform thinks.
    public static Terminal ofProcess() {
        return to(System.out, System.err);
    }

    /// A terminal that prints elsewhere.
    public static Terminal to(PrintStream out, PrintStream err) {
        return new Terminal(utf8(out), utf8(err));
    }

    /// A line of the result.
    public void print(String line) {
        out.println(line);
    }

    /// The one document of a command that was asked for JSON.
    ///
    /// @param document records, lists and maps; their order is kept
    public void json(Object document) {
        out.println(JSON.writerWithDefaultPrettyPrinter().writeValueAsString(document));
    }

    /// A line for the person at the keyboard.
    public void say(String line) {
        err.println(line);
    }

    /// The streams as picocli wants them.
    public PrintWriter result() {
        return new PrintWriter(out, true, StandardCharsets.UTF_8);
    }

    public PrintWriter messages() {
        return new PrintWriter(err, true, StandardCharsets.UTF_8);
    }

    private static PrintStream utf8(PrintStream stream) {
        return new PrintStream(stream, true, StandardCharsets.UTF_8);
    }
}
