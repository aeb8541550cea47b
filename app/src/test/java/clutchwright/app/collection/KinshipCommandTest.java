package clutchwright.app.collection;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.Clutchwright;
import clutchwright.app.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/// `kinship`, as another program calls it.
class KinshipCommandTest {

    /// Full siblings and their young, and clutch-mates of a sire in doubt.
    private static final String FAMILY =
            """
            tag,sex,dam,sire
            Ada,female,,
            Bo,male,,
            Max,male,,
            Cy,female,Ada,Bo
            Di,male,Ada,Bo
            Ed,,Cy,Di
            Fay,,Ada,Bo|Max
            a:b,,Ada,Max
            """;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir Path folder;

    @Test
    void every_animals_inbreeding_and_the_pairs_asked_for_are_one_document() throws IOException {
        assertThat(run(FAMILY, "--pairs", "cy:Di, Ada:Ed,Fay:Fay,Fay:Cy,a\\:b:Bo", "--json"))
                .isZero();

        var document = new JsonMapper().readTree(out.toString(StandardCharsets.UTF_8));
        assertThat(document.at("/inbreeding").size()).isEqualTo(8);
        assertThat(document.at("/inbreeding/0/tag").asString()).isEqualTo("Ada");
        assertThat(document.at("/inbreeding/0/f").asDouble()).isZero();
        assertThat(document.at("/inbreeding/5/f").asDouble()).isEqualTo(1.0 / 4);
        assertThat(document.at("/kinship/0/a").asString()).isEqualTo("Cy");
        assertThat(document.at("/kinship/0/b").asString()).isEqualTo("Di");
        assertThat(document.at("/kinship/0/phi").asDouble()).isEqualTo(1.0 / 4);
        assertThat(document.at("/kinship/1/phi").asDouble()).isEqualTo(1.0 / 4);
        assertThat(document.at("/kinship/2/phi").asDouble()).isEqualTo(1.0 / 2);
        // Full siblings at one half, else half siblings.
        assertThat(document.at("/kinship/3/phi").asDouble()).isEqualTo(3.0 / 16);
        assertThat(document.at("/kinship/4/phi").asDouble()).isZero();
        assertThat(document.at("/method").asString()).isEqualTo("expected");
        assertThat(document.at("/sireQuestions").asInt()).isEqualTo(1);
    }

    @Test
    void without_pairs_there_is_no_kinship_and_without_animals_no_inbreeding() throws IOException {
        assertThat(run("tag,sex\n", "--json")).isZero();

        var document = new JsonMapper().readTree(out.toString(StandardCharsets.UTF_8));
        assertThat(document.at("/inbreeding").isArray()).isTrue();
        assertThat(document.at("/inbreeding").size()).isZero();
        assertThat(document.at("/kinship").isArray()).isTrue();
        assertThat(document.at("/kinship").size()).isZero();
        assertThat(document.at("/method").asString()).isEqualTo("exact");
    }

    @Test
    void people_read_what_the_figures_are_as_close_as() throws IOException {
        assertThat(run(FAMILY, "--pairs", "Cy:Di")).isZero();

        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("Cy × Di", "1/4", "full siblings’ young", "Ed")
                .contains("One question of sires is open");
    }

    @Test
    void twenty_generations_of_siblings_are_nearly_of_one_kind() throws IOException {
        var table = new StringBuilder("tag,sex,dam,sire\nF0,female,,\nM0,male,,\n");
        for (int i = 1; i <= 20; i++) {
            table.append("F%d,female,F%d,M%d%n".formatted(i, i - 1, i - 1));
            table.append("M%d,male,F%d,M%d%n".formatted(i, i - 1, i - 1));
        }
        assertThat(run(table.toString(), "--json")).isZero();

        var document = new JsonMapper().readTree(out.toString(StandardCharsets.UTF_8));
        // Ten generations after the first: 1815/2048 (Wright 1921).
        assertThat(document.at("/inbreeding/22/tag").asString()).isEqualTo("F11");
        assertThat(document.at("/inbreeding/22/f").asDouble()).isEqualTo(1815.0 / 2048);
    }

    @Test
    void what_is_wrong_with_the_file_is_named_with_its_place() throws IOException {
        assertThat(
                        run(
                                """
                                tag,sex,dam,sire
                                Ada,female,,Cy
                                Cy,male,Ada,
                                Di,female,Cy,Nemo
                                """,
                                "--json"))
                .isEqualTo(2);

        assertThat(out.toString(StandardCharsets.UTF_8)).isEmpty();
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("would be its own ancestor")
                .contains("animals.csv, row 4, column “dam”: Cy is a male")
                .contains("row 4, column “sire”: The sire “Nemo” is neither in the file");
    }

    @Test
    void pairs_that_are_none_are_pointed_at() throws IOException {
        for (var pairs : List.of("Ada", "Ada:", "Ada:Bo:Cy", "", "Ada:Bo,", ":")) {
            err.reset();
            assertThat(run(FAMILY, "--pairs", pairs)).as(pairs).isEqualTo(2);
            assertThat(err.toString(StandardCharsets.UTF_8))
                    .contains("--pairs, character", "as in A:B");
        }
        err.reset();
        assertThat(run(FAMILY, "--pairs", "Ada:Bo,Adda:Bo")).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("--pairs, character 8", "“Adda”", "near to it are Ada");
        assertThat(out.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    private int run(String table, String... arguments) throws IOException {
        var file = Files.writeString(folder.resolve("animals.csv"), table);
        var all = new ArrayList<>(List.of("kinship", file.toString()));
        all.addAll(List.of(arguments));
        return Clutchwright.run(
                Terminal.to(new PrintStream(out, true), new PrintStream(err, true)),
                all.toArray(String[]::new));
    }
}
