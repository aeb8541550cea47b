package clutchwright.app.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import picocli.CommandLine;
import tools.jackson.databind.json.JsonMapper;

/// `plan`, as another program calls it. Worths are added up by hand.
class PlanCommandTest {

    /// Two females and two males; 2 Clowns sell at 100, 4 more at 20.
    private static final String SEASON =
            """
            {"pairings":[
              {"dam":"F1","sire":"M1","worth":10,"hatchlings":{"Clown":3}},
              {"dam":"F1","sire":"M2","worth":30,"projects":["white"]},
              {"dam":"F2","sire":"M1","hatchlings":{"Clown":4}},
              {"dam":"F2","sire":"M2","worth":25,"kinship":0.25},
              {"dam":"F3","sire":"M2","worth":500,"hindrance":"its young suffer"}],
             "prices":[{"kind":"Clown","steps":[
               {"hatchlings":2,"price":100},{"hatchlings":4,"price":20}]}],
             "males":[{"tag":"M1","uses":1},{"tag":"M2","uses":1}],
             "limits":{"kinship":0.125}%s}
            """;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir Path folder;

    @Test
    void the_pairings_that_are_worth_most_together() throws IOException {
        assertThat(run(SEASON.formatted(""), "--json")).isZero();

        // F2 x M1: 2 at 100 and 2 at 20; F1 x M2: 30. What is hindered is not made, nor close kin.
        var found = JsonMapper.shared().readTree(out.toString(StandardCharsets.UTF_8));
        assertThat(found.at("/status").asString()).isEqualTo("best");
        assertThat(found.at("/value").asDouble()).isCloseTo(270, within(1e-6));
        assertThat(found.at("/bound").asDouble()).isCloseTo(270, within(1e-3));
        assertThat(found.at("/pairings").size()).isEqualTo(2);
        assertThat(found.at("/pairings/0/dam").asString()).isEqualTo("F1");
        assertThat(found.at("/pairings/0/sire").asString()).isEqualTo("M2");
        assertThat(found.at("/hatchlings/0/expected").asDouble()).isEqualTo(4);
    }

    @Test
    void what_another_male_costs() throws IOException {
        assertThat(run(SEASON.formatted(""), "--instead", "F1:M1", "--json")).isZero();

        // With F1 x M1: 10, 2 at 100, 1 at 20 are 230; F2 has nobody left.
        var found = JsonMapper.shared().readTree(out.toString(StandardCharsets.UTF_8));
        assertThat(found.at("/instead/loss").asDouble()).isCloseTo(40, within(1e-6));
    }

    @Test
    void a_written_reason_overrules_a_hindrance_and_a_pin_is_kept() throws IOException {
        assertThat(
                        run(
                                SEASON.replace(
                                                "\"its young suffer\"",
                                                "\"its young suffer\",\"overruled\":\"asked the vet\"")
                                        .formatted(
                                                ",\"pinned\":[{\"dam\":\"F1\",\"sire\":\"M1\"}]")))
                .isZero();

        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("F1 x M1")
                .contains("F3 x M2")
                .contains("2 pairings, worth 730.00 together: best");
    }

    @Test
    void limits_that_cannot_all_be_kept_are_a_finding() throws IOException {
        assertThat(
                        run(
                                SEASON.formatted(
                                        ",\"projects\":[{\"name\":\"white\",\"least\":2}]"),
                                "--json"))
                .isEqualTo(1);
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("\"impossible\"");
    }

    @Test
    void everything_that_is_wrong_with_a_file_is_told_with_its_place() throws IOException {
        assertThat(
                        run(
                                """
                                {"pairings":[{"dam":"F1"},{"dam":"F1","sire":"M1","kinship":2}],
                                 "prices":[{"kind":"Clown","steps":[
                                   {"hatchlings":1,"price":10},{"hatchlings":1,"price":20}]}],
                                 "limts":{}}
                                """))
                .isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("/pairings/0/sire: expected a text; it is missing")
                .contains("/pairings/1/kinship: expected a number from 0 to 1")
                .contains("/prices/0/steps/1/price: expected no more than the price before it")
                .contains("/limts: there is no such field");

        assertThat(run(SEASON.formatted(""), "--instead", "F9:M9")).isEqualTo(2);
        assertThat(run(SEASON.formatted(""), "--gap", "1")).isEqualTo(2);
        assertThat(run("not json")).isEqualTo(2);
    }

    private int run(String text, String... more) throws IOException {
        var file = Files.writeString(folder.resolve("season.json"), text);
        var all = new ArrayList<>(List.of(file.toString()));
        all.addAll(List.of(more));
        return new CommandLine(
                        new PlanCommand(
                                Terminal.to(
                                        new PrintStream(out, true), new PrintStream(err, true))))
                .execute(all.toArray(String[]::new));
    }
}
