package clutchwright.app.eggs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.app.Clutchwright;
import clutchwright.app.cli.Terminal;
import clutchwright.engine.incubation.BoxTrace.Beside;
import clutchwright.engine.incubation.BoxTrace.Probe;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// `conductance`, as another program calls it. The traces are [SlowBox]'s.
class ConductanceCommandTest {

    private static final SlowBox QUIET = new SlowBox(1.4, 2500, 10, 0.85, 0, false, 0);
    private static final SlowBox NOISY = new SlowBox(1.4, 2500, 10, 0.85, 1, false, 7);

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir Path folder;

    @Test
    void a_quiet_boxs_conductance_is_found_again() throws IOException {
        var found = json(log(QUIET, 48, hour -> true), "--offset", "0");

        assertThat(found.at("/wattsPerKelvin").asDouble()).isCloseTo(1.4, within(0.005));
        assertThat(found.at("/hours").asInt()).isGreaterThan(40);
        assertThat(found.at("/interval/level").asDouble()).isEqualTo(0.95);
        assertThat(found.at("/interval/from").asDouble()).isBetween(1.0, 1.4);
        assertThat(found.at("/interval/to").asDouble()).isBetween(1.4, 2.0);
        assertThat(found.at("/standardError").asDouble()).isBetween(0.05, 0.3);
        assertThat(found.at("/notes").toString())
                .contains("slow waves")
                .contains("By the other of its two curves");
    }

    @Test
    void the_set_point_may_stand_for_the_air_and_the_offset_is_taken_off() throws IOException {
        var tight = new SlowBox(0.5, 2500, 10, 0.9, 0, false, 0);
        var rows = new ArrayList<String>(List.of("Date/Time;Temperature (°F)"));
        for (var sample : tight.trace(48, 10, Probe.BOX, Beside.SET_POINT).samples()) {
            // The sensor reads half a degree too much.
            var read = (sample.read().degrees() + 0.5) * 1.8 + 32;
            rows.add(time(sample.hours()) + String.format(Locale.GERMANY, ";%.4f", read));
        }
        var found =
                json(
                        rows,
                        "--development",
                        "0.9",
                        "--set-point",
                        "31.2",
                        "--offset",
                        "0.5",
                        "--clock",
                        "fahrenheit");

        assertThat(found.at("/wattsPerKelvin").asDouble()).isCloseTo(0.5, within(0.005));
        assertThat(found.at("/notes").toString()).contains("The set point stands for");
    }

    /// Ten eggs warm a tub of 20 litres by 0.2 K, which no set point is sure to.
    @Test
    void a_set_point_alone_seldom_tells_it() throws IOException {
        var rows = new ArrayList<String>(List.of("time,temperature"));
        for (var sample : QUIET.trace(48, 10, Probe.BOX, Beside.SET_POINT).samples()) {
            rows.add(
                    time(sample.hours())
                            + String.format(Locale.ENGLISH, ",%.4f", sample.read().degrees()));
        }
        assertThat(run(written(rows), "--set-point", "31.2", "--offset", "0")).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("give or take 0.2");
    }

    @Test
    void a_stretch_without_readings_is_left_out_and_told() throws IOException {
        var found = json(log(QUIET, 72, hour -> hour < 20 || hour > 22), "--offset", "0");

        assertThat(found.at("/wattsPerKelvin").asDouble()).isCloseTo(1.4, within(0.01));
        assertThat(found.at("/hours").asInt()).isBetween(45, 51);
        assertThat(found.at("/notes").toString()).contains("The longest steady stretch was taken");
    }

    @Test
    void a_door_that_was_opened_is_left_out_and_told() throws IOException {
        var rows = new ArrayList<>(log(QUIET, 72, hour -> true));
        // Twenty minutes, twenty hours in: the incubator's air falls by four degrees.
        for (var row = 121; row < 123; row++) {
            rows.set(row, rows.get(row).replaceAll(",[^,]*$", ",27.2"));
        }
        var found = json(rows, "--offset", "0");

        assertThat(found.at("/wattsPerKelvin").asDouble()).isCloseTo(1.4, within(0.01));
        assertThat(found.at("/hours").asInt()).isBetween(45, 53);
        assertThat(found.at("/notes").toString()).contains("were not steady");
    }

    @Test
    void it_is_told_in_words() throws IOException {
        assertThat(run(written(log(NOISY, 48, hour -> true)), "--offset", "0")).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("W for each degree")
                .contains("95 %")
                .contains("no safety device");
    }

    @Test
    void what_a_file_does_not_tell_is_refused_with_the_reason() throws IOException {
        refused(written(log(QUIET, 4, hour -> true)), "expected 6 steady hours in a row");
        refused(written(log(QUIET, 48, hour -> (int) hour % 5 < 3)), "hours without a reading");
        refused(written(log(NOISY, 48, hour -> true)), "by how much they differ");
    }

    @Test
    void eggs_that_give_off_nothing_yet_tell_nothing() throws IOException {
        var file = written(log(QUIET, 48, hour -> true));
        assertThat(
                        Clutchwright.run(
                                terminal(),
                                "conductance",
                                file,
                                "--eggs",
                                "10",
                                "--development",
                                "0.1"))
                .isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("too little to warm a box");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "x.csv --eggs 10 --development 0.9                   | There is no file “x.csv”",
                "x.csv --eggs 0 --development 0.9                    | --eggs: expected a number from 1",
                "x.csv --eggs 10 --development 90                    | --development: expected a number from 0 to 1",
                "x.csv --eggs 10 --development NaN                   | --development",
                "x.csv --eggs 10 --development 1 --offset 9          | --offset: expected kelvin",
                "x.csv --eggs 10 --development 1 --set-point 89      | --set-point: expected degrees Celsius",
                "x.csv --eggs 10 --development 1 --egg-grams 0       | --egg-grams",
                "x.csv --eggs 10 --development 1 --box-capacity 0    | --box-capacity",
                "x.csv --eggs 10 --development 1 --probe lid         | --probe",
                "x.csv --eggs 10                                     | --development",
            })
    void what_is_wrong_with_the_arguments_is_told(String arguments, String told) {
        var all = new ArrayList<>(List.of("conductance"));
        all.addAll(List.of(arguments.split(" +")));
        assertThat(Clutchwright.run(terminal(), all.toArray(String[]::new))).isEqualTo(2);
        assertThat(out.toString(StandardCharsets.UTF_8)).isEmpty();
        assertThat(err.toString(StandardCharsets.UTF_8)).contains(told);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "time,temperature,incubator; 2024-06-01T00:00,warm,31 | line 2, column temperature: expected a temperature such as 31.7, not “warm”",
                "time,temperature,incubator; 2024-06-01T00:00,31.5,cool | line 2, column incubator: expected a temperature",
                "time,temperature,incubator; soon,31.5,31 | line 2, column time: expected a time such as",
                "time,incubator; 2024-06-01T00:00,31 | expected the columns time and temperature",
                "time,temperature,incubator; 2024-06-01T00:00,89.1,88 | say --clock fahrenheit",
                "time,temperature,incubator; 2024-06-01T00:00,31.5, | no line has a temperature in the column incubator",
                "time,temperature,incubator; 2024-06-01T00:00,31.5,; 2024-06-01T00:10,,31 | no line has both temperatures",
                "time,temperature; 2024-06-01T00:00,31.5 | --set-point: expected the incubator's set point",
            })
    void what_is_wrong_with_a_file_is_told(String rows, String told) throws IOException {
        refused(written(List.of(rows.split("; *"))), told);
        assertThat(out.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    @Test
    void a_set_point_beside_a_sensor_is_one_too_many() throws IOException {
        assertThat(run(written(log(QUIET, 12, hour -> true)), "--set-point", "31.2")).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("expected one of the two");
    }

    private void refused(String file, String told) {
        err.reset();
        assertThat(run(file)).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains(told);
    }

    private static List<String> log(SlowBox box, int hours, DoublePredicate kept) {
        var rows = new ArrayList<String>(List.of("time,temperature,incubator"));
        for (var sample : box.trace(hours, 10, Probe.BOX, Beside.SENSOR).samples()) {
            if (kept.test(sample.hours())) {
                rows.add(
                        time(sample.hours())
                                + String.format(
                                        Locale.ENGLISH,
                                        ",%.4f,%.4f",
                                        sample.read().degrees(),
                                        sample.incubator().degrees()));
            }
        }
        return rows;
    }

    private static LocalDateTime time(double hours) {
        return LocalDateTime.of(2024, 6, 1, 0, 0).plusSeconds(Math.round(hours * 3600));
    }

    private JsonNode json(List<String> rows, String... more) throws IOException {
        var all = new ArrayList<>(List.of(more));
        all.add("--json");
        assertThat(run(written(rows), all.toArray(String[]::new)))
                .as(err.toString(StandardCharsets.UTF_8))
                .isZero();
        return JsonMapper.shared().readTree(out.toString(StandardCharsets.UTF_8));
    }

    private String written(List<String> rows) throws IOException {
        return Files.write(folder.resolve("box4.csv"), rows).toString();
    }

    private int run(String file, String... more) {
        var all = new ArrayList<>(List.of("conductance", file, "--eggs", "10"));
        all.addAll(List.of(more));
        if (!all.contains("--development")) {
            all.addAll(List.of("--development", "0.85"));
        }
        return Clutchwright.run(terminal(), all.toArray(String[]::new));
    }

    private Terminal terminal() {
        return Terminal.to(new PrintStream(out, true), new PrintStream(err, true));
    }
}
