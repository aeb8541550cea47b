package clutchwright.app.eggs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.app.Clutchwright;
import clutchwright.app.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.json.JsonMapper;

/// `box`, as another program calls it. Values are those of the model in another language.
class BoxCommandTest {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void ten_late_eggs() {
        assertThat(
                        run(
                                "--eggs",
                                "10",
                                "--set-point",
                                "31.7",
                                "--ua",
                                "1.4",
                                "--development",
                                "1.0",
                                "--json"))
                .isZero();

        var box = JsonMapper.shared().readTree(out.toString(StandardCharsets.UTF_8));
        assertThat(box.at("/wattsPerEgg").asDouble()).isCloseTo(0.0474, within(5e-5));
        assertThat(box.at("/riseKelvin").asDouble()).isCloseTo(1.6549, within(1e-4));
        assertThat(box.at("/eggCelsius").asDouble()).isCloseTo(33.3549, within(1e-4));
        // 0.474 W through 1.4 W/K; the lid is 0.487 of the way back.
        assertThat(box.at("/boxCelsius").asDouble()).isCloseTo(32.038, within(1e-3));
        assertThat(box.at("/lidCelsius").asDouble()).isCloseTo(31.873, within(1e-3));
        assertThat(box.at("/condensesAboveRelativeHumidity").asDouble())
                .isCloseTo(0.9907, within(2e-4));
    }

    @Test
    void eggs_of_another_clutch_beside_them_are_told_as_well() {
        assertThat(
                        run(
                                "--eggs",
                                "10",
                                "--set-point",
                                "31.7",
                                "--ua",
                                "1.4",
                                "--lot",
                                "6:0",
                                "--json"))
                .isZero();

        var box = JsonMapper.shared().readTree(out.toString(StandardCharsets.UTF_8));
        // Fresh eggs give off next to nothing, and come to the box's air: 0.474 W through 1.4 W/K.
        assertThat(box.at("/eggCelsius").asDouble()).isCloseTo(33.355, within(0.01));
        assertThat(box.at("/lots").size()).isEqualTo(1);
        assertThat(box.at("/lots/0/eggs").asInt()).isEqualTo(6);
        assertThat(box.at("/lots/0/eggCelsius").asDouble()).isCloseTo(32.04, within(0.01));

        assertThat(run("--eggs", "10", "--set-point", "31.7", "--lot", "many")).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("--lot: expected eggs");
    }

    @Test
    void lighter_eggs_of_the_other_shape() {
        assertThat(
                        run(
                                "--eggs",
                                "6",
                                "--set-point",
                                "31.7",
                                "--shape",
                                "exponential",
                                "--egg-grams",
                                "42.5",
                                "--development",
                                "0.5",
                                "--json"))
                .isZero();

        // exp(-2) / 0.245421 of 14.62 mW, and half of it: 4.03 mW at the set point, a little more
        // in the warmth.
        var box = JsonMapper.shared().readTree(out.toString(StandardCharsets.UTF_8));
        assertThat(box.at("/wattsPerEgg").asDouble()).isBetween(0.00403, 0.00406);
    }

    @Test
    void without_json_it_is_told_with_a_judgement_and_a_caution() {
        assertThat(run("--eggs", "10", "--set-point", "31.7")).isZero();

        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("33.4 °C (92.0 °F)")
                .contains("Too warm if it lasts")
                .contains("no safety device");
    }

    @Test
    void no_eggs_are_no_warmth() {
        assertThat(run("--eggs", "0", "--set-point", "31.7", "--json")).isZero();

        assertThat(out.toString(StandardCharsets.UTF_8)).contains("\"riseKelvin\" : 0.0");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--eggs -1 --set-point 31.7                     | --eggs: expected a number from 0 to 200, not -1",
                "--eggs ten --set-point 31.7                    | --eggs",
                "--eggs 10                                      | --set-point",
                "--eggs 10 --set-point 89                       | it would be 31.7 °C",
                "--eggs 10 --set-point NaN                      | --set-point: expected degrees",
                "--eggs 10 --set-point 31.7 --ua 0              | --ua: expected W/K above 0",
                "--eggs 10 --set-point 31.7 --ua 0.001          | without end",
                "--eggs 10 --set-point 31.7 --development 1.2   | --development: expected a number from 0 to 1, not 1.2",
                "--eggs 10 --set-point 31.7 --egg-grams 0       | --egg-grams: expected grams",
                "--eggs 10 --set-point 31.7 --shape flat        | --shape",
            })
    void what_is_wrong_is_told(String arguments, String told) {
        assertThat(run((arguments + " --json").split(" +"))).isEqualTo(2);

        assertThat(out.toString(StandardCharsets.UTF_8)).isEmpty();
        assertThat(err.toString(StandardCharsets.UTF_8)).contains(told);
    }

    private int run(String... arguments) {
        var all = new String[arguments.length + 1];
        all[0] = "box";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        return Clutchwright.run(
                Terminal.to(new PrintStream(out, true), new PrintStream(err, true)), all);
    }
}
