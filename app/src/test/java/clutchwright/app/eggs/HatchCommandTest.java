package clutchwright.app.eggs;

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
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// `hatch`, as another program calls it. Values are those of the model in another language, unless
/// said.
class HatchCommandTest {

    private static final LocalDateTime LAID = LocalDateTime.of(2024, 5, 1, 0, 0);

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir Path folder;

    @Test
    void at_one_temperature() {
        var found = json("hatch", "--celsius", "31.0");

        assertThat(found.at("/days").asDouble()).isCloseTo(59.157, within(1e-3));
        // 4.2 % of it.
        assertThat(found.at("/sdDays").asDouble()).isCloseTo(2.4846, within(1e-3));
        assertThat(found.at("/notes")).isEmpty();
    }

    @Test
    void where_the_model_is_not_known_to_hold_the_spread_is_wider_and_it_says_so() {
        var found = json("hatch", "--celsius", "34");

        assertThat(found.at("/sdDays").asDouble()).isGreaterThan(10);
        assertThat(found.at("/notes/0").asString()).contains("26 to 33.3 °C");
    }

    @Test
    void by_a_log_of_half_the_way() throws IOException {
        var found = felt(log(31.0, 24), "2024-05-01");

        // 24 of 59.157 days.
        assertThat(found.at("/development").asDouble()).isCloseTo(24 / 59.157, within(1e-5));
        assertThat(found.at("/mean").asString()).isEqualTo("2024-06-29");
        // 59.157 x exp(-+ 0.67449 x 0.042) and exp(-+ 1.64485 x 0.042): days 57.5, 60.9, 55.2,
        // 63.4.
        assertThat(found.at("/ranges/0").toString())
                .isEqualTo("{\"level\":0.5,\"from\":\"2024-06-27\",\"to\":\"2024-06-30\"}");
        assertThat(found.at("/ranges/1").toString())
                .isEqualTo("{\"level\":0.9,\"from\":\"2024-06-25\",\"to\":\"2024-07-03\"}");
        assertThat(found.at("/notes")).isEmpty();
    }

    @Test
    void a_warmer_course_ahead_can_be_said() throws IOException {
        var file = written(log(31.0, 24));
        var found = json("hatch", "--log", file, "--laid", "2024-05-01", "--ahead", "31.7");

        // 24 + (1 - 24/59.157) x 57 is day 57.9.
        assertThat(found.at("/hatchDay").asDouble()).isCloseTo(57.9, within(0.1));
    }

    @Test
    void fahrenheit_and_other_columns_separators_and_forms_of_time() throws IOException {
        var lines = new ArrayList<String>(List.of("box;Date/Time;Temperature (°F);humidity"));
        for (var hour = 0; hour <= 24 * 10; hour++) {
            var at = LAID.plusHours(hour);
            lines.add(
                    "4;%02d.%02d.%d %02d:00;89,06;95"
                            .formatted(
                                    at.getDayOfMonth(),
                                    at.getMonthValue(),
                                    at.getYear(),
                                    at.getHour()));
        }
        var found =
                json(
                        "hatch",
                        "--log",
                        written(lines),
                        "--laid",
                        "2024-05-01",
                        "--clock",
                        "fahrenheit");

        // 89.06 °F is 31.7 °C: 10 of 57 days.
        assertThat(found.at("/development").asDouble()).isCloseTo(10 / 57.0, within(1e-9));
    }

    @Test
    void a_log_with_offsets_is_not_misled_when_clocks_change() throws IOException {
        // In a place that goes from +02:00 to +01:00 an hour is read twice by the clock.
        var lines = new ArrayList<String>(List.of("time,temperature"));
        var begin = OffsetDateTime.parse("2024-10-25T00:00:00+02:00");
        for (var hour = 0; hour <= 24 * 5; hour++) {
            var at = begin.plusHours(hour);
            var summer = at.isBefore(OffsetDateTime.parse("2024-10-27T03:00:00+02:00"));
            lines.add(at.withOffsetSameInstant(ZoneOffset.ofHours(summer ? 2 : 1)) + ",31.7");
        }
        var found = json("hatch", "--log", written(lines), "--laid", "2024-10-25");

        assertThat(found.at("/development").asDouble()).isCloseTo(5 / 57.0, within(0.002));
        assertThat(found.at("/notes")).isEmpty();
    }

    @Test
    void gaps_doubles_broken_readings_and_a_clock_that_goes_back_an_hour_are_told()
            throws IOException {
        var lines = new ArrayList<>(log(31.7, 20));
        lines.removeIf(line -> line.startsWith("2024-05-06"));
        lines.add(40, lines.get(40));
        lines.add(60, "2024-05-03T08:30,-127");
        lines.add(61, "2024-05-03T08:40,");
        lines.add(100, lines.get(99));
        lines.add(130, lines.get(128));
        var found = felt(lines, "2024-05-01");

        assertThat(found.at("/development").asDouble()).isCloseTo(20 / 57.0, within(1e-9));
        var notes = found.at("/notes").toString();
        assertThat(notes)
                .contains("No reading from day 5.0 to day 6")
                .contains("3 readings have the time of another")
                .contains("1 readings that no room has")
                .contains("1 lines without a temperature")
                .contains("goes back by");
    }

    @Test
    void newest_first_is_turned_about() throws IOException {
        var log = log(31.7, 10);
        var turned = new ArrayList<>(List.of(log.getFirst()));
        turned.addAll(log.subList(1, log.size()).reversed());

        assertThat(felt(turned, "2024-05-01").at("/development").asDouble())
                .isCloseTo(10 / 57.0, within(1e-9));
    }

    @Test
    void what_was_read_before_laying_does_not_count() throws IOException {
        var found = felt(log(31.7, 20), "2024-05-11");

        assertThat(found.at("/development").asDouble()).isCloseTo(10 / 57.0, within(1e-9));
        assertThat(found.at("/notes/0").asString()).contains("240 readings of before 2024-05-11");
    }

    @Test
    void without_json_it_is_told_with_its_basis() throws IOException {
        assertThat(run("hatch", "--log", written(log(31.0, 24)), "--laid", "2024-05-01")).isZero();

        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("41 % of the way")
                .contains("2024-06-29")
                .contains("common practice");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "time,temperature; 2024-05-01T00:00,89.1; 2024-05-01T01:00,89.0 | look like °F, not °C",
                "time,temperature; 2024-05-01T00:00,warm | line 2, column temperature: expected a temperature such as 31.7, not “warm”",
                "time,temperature; yesterday,31.7 | line 2, column time: expected a time such as",
                "time,temperature; 2024-13-01T00:00,31.7 | line 2, column time",
                "when,what; 2024-05-01T00:00,31.7 | line 1: expected the columns time and temperature, not when, what",
                "2024-05-01T00:00,31.7; 2024-05-01T01:00,31.7 | expected the columns time and temperature",
                "time,temperature; 2024-05-02T00:00,31.7; 2024-05-01T00:00,31.7; 2024-05-03T00:00,31.7 | line 3: the clock goes back",
                "time,temperature; 2024-04-01T00:00,31.7; 2024-04-02T00:00,31.7 | the readings end on 2024-04-02, before the clutch was laid",
                "time,temperature; 2024-05-01T00:00,-127; 2024-05-01T01:00,-127 | no line has a temperature that a room can have",
                "time,temperature; 2024-05-01T00:00,; 2024-05-01T01:00,-- | no line has a temperature",
                "time,temperature | Nothing stands under the header in row 1",
            })
    void what_is_wrong_with_a_log_is_told(String rows, String told) throws IOException {
        var file = written(List.of(rows.split("; *")));

        assertThat(run("hatch", "--log", file, "--laid", "2024-05-01", "--json")).isEqualTo(2);

        assertThat(out.toString(StandardCharsets.UTF_8)).isEmpty();
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("box4.csv").contains(told);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hatch                                  | expected either --celsius or --log",
                "hatch --celsius 31 --log x.csv         | and not both",
                "hatch --celsius 88                     | it would be 31.1 °C",
                "hatch --celsius NaN                    | --celsius: expected degrees",
                "hatch --log x.csv                      | --laid: expected the day",
                "hatch --log x.csv --laid soon          | --laid: expected a day such as 2024-05-01, not “soon”",
                "hatch --log x.csv --laid 2024-05-01    | There is no file “x.csv”",
                "hatch --log x.csv --laid 2024-05-01 --ahead 3 | --ahead: expected degrees",
                "hatch --log x.csv --laid 2024-05-01 --clock kelvin | --clock",
            })
    void what_is_wrong_with_the_arguments_is_told(String arguments, String told) {
        assertThat(run((arguments + " --json").split(" +"))).isEqualTo(2);

        assertThat(out.toString(StandardCharsets.UTF_8)).isEmpty();
        assertThat(err.toString(StandardCharsets.UTF_8)).contains(told);
    }

    @Test
    void celsius_marked_as_fahrenheit_is_seen() throws IOException {
        var file = written(log(31.7, 2));

        assertThat(run("hatch", "--log", file, "--laid", "2024-05-01", "--clock", "fahrenheit"))
                .isEqualTo(2);

        assertThat(err.toString(StandardCharsets.UTF_8)).contains("look like °C, not °F");
    }

    /// Every hour, from the day of laying on.
    private static List<String> log(double celsius, int days) {
        var lines = new ArrayList<String>(List.of("time,temperature"));
        for (var hour = 0; hour <= days * 24; hour++) {
            lines.add(LAID.plusHours(hour) + String.format(Locale.ENGLISH, ",%.2f", celsius));
        }
        return lines;
    }

    private JsonNode felt(List<String> lines, String laid) throws IOException {
        return json("hatch", "--log", written(lines), "--laid", laid);
    }

    private JsonNode json(String... arguments) {
        var all = new ArrayList<>(List.of(arguments));
        all.add("--json");
        assertThat(run(all.toArray(String[]::new)))
                .as(err.toString(StandardCharsets.UTF_8))
                .isZero();
        return JsonMapper.shared().readTree(out.toString(StandardCharsets.UTF_8));
    }

    private String written(List<String> lines) throws IOException {
        return Files.write(folder.resolve("box4.csv"), lines).toString();
    }

    private int run(String... arguments) {
        return Clutchwright.run(
                Terminal.to(new PrintStream(out, true), new PrintStream(err, true)), arguments);
    }
}
