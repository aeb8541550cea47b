package clutchwright.app.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// `lay`, as another program calls it. The figures are those of the model's own checks, which were
/// worked by a script of its own; here it is the days and the reading of the file that count.
class LayCommandTest {

    private static final String HER_YEARS =
            "\"laid\":[\"2021-04-18\",\"2022-04-25\",\"2023-04-13\"]";

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir Path folder;

    @Test
    void her_own_years_alone() throws IOException {
        var found =
                laid(
                        """
                        {"today":"2024-02-01","collectionMeanDay":120,"female":{%s}}
                        """
                                .formatted(HER_YEARS));

        // Day 109 of 2024 is 18 April: 2024 has a 29 February, the years before have none.
        assertThat(found.at("/meanDay").asDouble()).isEqualTo(109.097, within(5e-4));
        assertThat(found.at("/sdDays").asDouble()).isEqualTo(9.886, within(5e-4));
        assertThat(found.at("/mean").asString()).isEqualTo("2024-04-18");
        // 109.097 -+ 0.67449 x 9.886 is 102.4 to 115.8; -+ 1.64485 x 9.886 is 92.8 to 125.4.
        assertThat(found.at("/ranges/0").toString())
                .isEqualTo("{\"level\":0.5,\"from\":\"2024-04-11\",\"to\":\"2024-04-25\"}");
        assertThat(found.at("/ranges/1").toString())
                .isEqualTo("{\"level\":0.9,\"from\":\"2024-04-02\",\"to\":\"2024-05-04\"}");
        assertThat(found.at("/basis").size()).isEqualTo(2);
        assertThat(found.at("/basis/1").asString()).contains("3 clutches");
    }

    @Test
    void all_that_is_known() throws IOException {
        var found =
                laid(
                        """
                        {"today":"2024-02-01","collectionMeanDay":120,
                         "female":{%s,"firstTime":false,
                          "ovulationBetween":["2024-03-02","2024-03-05"],"shed":"2024-03-22"},
                         "othersThisSeason":[{"shift":6,"variance":72.73}]}
                        """
                                .formatted(HER_YEARS));

        assertThat(found.at("/meanDay").asDouble()).isEqualTo(110.875, within(1e-6));
        assertThat(found.at("/sdDays").asDouble()).isEqualTo(3.354102, within(1e-6));
        assertThat(found.at("/mean").asString()).isEqualTo("2024-04-20");
        assertThat(found.at("/basis/0").asString()).contains("2024-03-04");
        assertThat(found.at("/basis/1").asString()).contains("2024-03-22");
    }

    @Test
    void only_a_day() throws IOException {
        var found = laid("{\"today\":\"2024-02-01\"}");

        // Day 110 with a spread of 40 days; that she has not laid by day 32, which one in forty
        // does, makes it two and a half days later.
        assertThat(found.at("/mean").asString()).isEqualTo("2024-04-21");
        assertThat(found.at("/basis/0").asString()).startsWith("Nothing is known");
    }

    @Test
    void a_day_on_which_she_has_not_laid_moves_the_forecast_behind_it() throws IOException {
        var found =
                laid(
                        """
                        {"today":"2024-04-22","collectionMeanDay":120,
                         "female":{"ovulationBetween":["2024-03-02","2024-03-05"],
                                   "shed":"2024-03-22"}}
                        """);

        assertThat(found.at("/meanDay").asDouble()).isEqualTo(115.034703, within(1e-5));
        assertThat(found.at("/sdDays").asDouble()).isEqualTo(1.669203, within(1e-5));
        assertThat(found.at("/ranges/1/from").asString()).isEqualTo("2024-04-22");
    }

    /// The season that lies about New Year: it is counted in the days of the year after.
    @Test
    void a_season_may_span_new_year() throws IOException {
        var found =
                laid(
                        """
                        {"today":"2024-11-15","collectionMeanDay":5,
                         "female":{"laid":["2021-12-28","2023-01-03","2024-01-01"]}}
                        """);

        // Days -3.2, 3 and 1 about day 5: (5/625 + 0.76/74) / (1/625 + 3/74) is day 0.4.
        assertThat(found.at("/meanDay").asDouble()).isEqualTo(0.433, within(1e-3));
        assertThat(found.at("/mean").asString()).isEqualTo("2024-12-31");
        assertThat(found.at("/ranges/1/from").asString()).startsWith("2024-12-");
    }

    @Test
    void after_the_season_it_is_the_next_that_is_asked_for() throws IOException {
        var found = laid("{\"today\":\"2024-10-01\",\"collectionMeanDay\":120}");

        assertThat(found.at("/mean").asString()).isEqualTo("2025-04-30");
    }

    @Test
    void without_json_it_is_told_with_its_reasons_and_a_caution() throws IOException {
        assertThat(run("{\"today\":\"2024-02-01\",\"collectionMeanDay\":120}")).isZero();

        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("about 2024-04-29")
                .contains("90 %")
                .contains("veterinarian");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{}                                        | /today: expected a day such as 2024-02-01; it is missing",
                "[]                                        | expected one JSON object",
                "nonsense                                  | line 1, column",
                "{\"today\":\"2024-02-30\"}                | /today: expected a day such as 2024-02-01, not \"2024-02-30\"",
                "{\"today\":\"2024-02-01\",\"today\":\"2024-02-02\"} | stands twice",
                "{\"today\":\"2024-02-01\"} more           | line 1, column",
                "{\"today\":\"2024-02-01\",\"collectionMeanDay\":400} | /collectionMeanDay: expected a number from 0 to 367, not 400",
                "{\"today\":\"2024-02-01\",\"femal\":{}}   | /femal: there is no such field",
                "{\"today\":\"2024-02-01\",\"female\":[]}  | /female: expected an object in braces",
                "{\"today\":\"2024-02-01\",\"female\":{\"laid\":\"2021-04-18\"}} | /female/laid: expected a list",
                "{\"today\":\"2024-02-01\",\"female\":{\"laid\":[\"2021-04-18\",7]}} | /female/laid/1: expected a day",
                "{\"today\":\"2024-02-01\",\"female\":{\"firstTime\":1}} | /female/firstTime: expected true or false",
                "{\"today\":\"2024-02-01\",\"female\":{\"firstTime\":true,\"laid\":[\"2021-04-18\"]}} | /female/firstTime: expected false",
                "{\"today\":\"2024-02-01\",\"female\":{\"ovulationBetween\":[\"2024-03-05\",\"2024-03-02\"]}} | /female/ovulationBetween: expected two days",
                "{\"today\":\"2024-02-01\",\"female\":{\"ovulationBetween\":[\"2024-03-05\"]}} | /female/ovulationBetween: expected two days",
                "{\"today\":\"2024-02-01\",\"female\":{\"ovulationBetween\":[\"2024-03-02\",\"2024-03-05\"],\"shed\":\"2024-02-22\"}} | /female/shed: expected a day after",
                "{\"today\":\"2024-02-01\",\"othersThisSeason\":[{\"shift\":6,\"variance\":0}]} | /othersThisSeason/0/variance: expected a number above 0, not 0",
                "{\"today\":\"2024-02-01\",\"othersThisSeason\":[{\"shift\":6}]} | /othersThisSeason/0/variance: expected a number above 0; it is missing",
                "{\"today\":\"2024-02-01\",\"othersThisSeason\":[6]} | /othersThisSeason/0: expected an object",
            })
    void what_is_wrong_is_told_with_its_place(String text, String told) throws IOException {
        assertThat(run(text, "--json")).isEqualTo(2);

        assertThat(out.toString(StandardCharsets.UTF_8)).isEmpty();
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("ada.json").contains(told);
    }

    @Test
    void every_fault_is_told_at_once() throws IOException {
        assertThat(run("{\"today\":1,\"collectionMeanDay\":\"x\",\"female\":{\"shed\":false}}"))
                .isEqualTo(2);

        assertThat(err.toString(StandardCharsets.UTF_8).lines()).hasSize(3);
    }

    @Test
    void a_missing_file_is_told() {
        var missing = folder.resolve("none.json");

        assertThat(call("lay", missing.toString())).isEqualTo(2);

        assertThat(err.toString(StandardCharsets.UTF_8)).contains("none.json", "cannot be read");
    }

    private JsonNode laid(String text) throws IOException {
        assertThat(run(text, "--json")).as(err.toString(StandardCharsets.UTF_8)).isZero();
        return JsonMapper.shared().readTree(out.toString(StandardCharsets.UTF_8));
    }

    private int run(String text, String... options) throws IOException {
        var file = Files.writeString(folder.resolve("ada.json"), text);
        var arguments = new ArrayList<>(List.of("lay", file.toString()));
        arguments.addAll(List.of(options));
        return call(arguments.toArray(String[]::new));
    }

    private int call(String... arguments) {
        return Clutchwright.run(
                Terminal.to(new PrintStream(out, true), new PrintStream(err, true)), arguments);
    }
}
