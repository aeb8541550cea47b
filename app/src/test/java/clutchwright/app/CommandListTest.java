package clutchwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/// What the bare command says.
class CommandListTest {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void help_lists_every_command_for_people_and_none_of_the_build() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains(
                        "serve",
                        "predict",
                        "infer",
                        "kinship",
                        "prove",
                        "route",
                        "import",
                        "export",
                        "backup",
                        "restore",
                        "conductance")
                .doesNotContain("rehearse");
    }

    @Test
    void no_command_at_all_is_a_question_for_help() {
        assertThat(run()).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("Commands:");
    }

    @Test
    void an_unknown_command_is_bad_input_and_the_nearest_is_named() {
        assertThat(run("predcit")).isEqualTo(2);
        assertThat(out.toString(StandardCharsets.UTF_8)).isEmpty();
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("There is no command “predcit”.", "predict", "--help");
    }

    @Test
    void every_command_explains_itself() {
        for (var command :
                new String[] {
                    "serve",
                    "predict",
                    "infer",
                    "kinship",
                    "prove",
                    "route",
                    "import",
                    "export",
                    "backup",
                    "restore",
                    "conductance"
                }) {
            out.reset();
            assertThat(run(command, "--help")).isZero();
            assertThat(out.toString(StandardCharsets.UTF_8)).contains("clutchwright " + command);
        }
    }

    private int run(String... arguments) {
        return Clutchwright.run(
                Terminal.to(new PrintStream(out, true), new PrintStream(err, true)), arguments);
    }
}
