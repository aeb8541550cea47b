package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/// How warm eggs get in their box, asked before they do. Figures are those of the model in another
/// language.
class EggBoxScreenTest extends Browsing {

    @Test
    void ten_late_eggs_at_89_fahrenheit_are_too_warm_and_two_boxes_help() {
        open("/eggs/box?eggs=11&set=31.6667&tub=MIDDLE&day=40");

        // 92.1 and 93.4 °F by the two curves, 11 eggs in a tub of 20 litres.
        assertThat(page().locator("#found")).containsText("33.4 °C to 34.1 °C");
        assertThat(page().locator("#found .late")).containsText("They reach 33.3 °C between day");
        // On day 40: 90.7 and 90.2 °F, and a little more, since warm eggs are further on.
        assertThat(page().locator("#found"))
                .containsText("On day 40 the eggs are at 32.4 °C to 32.6 °C");
        assertThat(page().locator("#found tbody tr").nth(1)).containsText("2 boxes: 6 and 5");
        assertThat(page().locator("#found tbody tr").nth(1)).containsText("your rule");
        assertThat(page().locator(".box-course"))
                .hasAttribute("aria-label", Pattern.compile("In the last days the eggs come to"));
        inspect("egg-box");
    }

    @Test
    void the_figures_follow_what_is_typed() {
        open("/eggs");
        page().getByText("Egg box").click();
        page().getByLabel("Live eggs").fill("1");

        assertThat(page()).hasURL(Pattern.compile("eggs=1&"));
        assertThat(page().locator("#found tbody tr")).hasCount(1);
        assertThat(page().locator("#found")).containsText("They stay below 33.3 °C to the end.");
    }

    @Test
    void what_cannot_be_is_said_beside_its_field() {
        open("/eggs/box?eggs=0&set=89&tub=OWN&ua=soon");

        assertThat(page().locator("#eggs-fault"))
                .hasText("Write a whole number from 1 to 60, not “0”.");
        assertThat(page().locator("#set-fault")).hasText("Write a number from 20 to 38, not “89”.");
        assertThat(page().locator("#ua-fault"))
                .hasText("Write a number from 0.3 to 20, not “soon”.");
        inspect("egg-box-faulty");

        open("/eggs/box?eggs=60&tub=OWN&ua=0.3");
        assertThat(page().locator("#ua-fault")).containsText("without end");
    }

    /// Ten eggs at 85 to 89 % give off 0.42 W at 33.1 °C by the curve of the reference; 0.8 K of
    /// rise for it are 0.53 W/K.
    @Test
    void a_loggers_file_tells_what_the_box_lets_out_and_the_figure_is_taken_over() {
        open("/eggs/box");
        page().getByText("Measure it by a logger’s file").click();
        bring("none.csv", "hour,warmth\n1,2\n");
        assertThat(page().locator("#file-fault")).containsText("columns time and temperature");
        bring("cool.csv", log(6, 31.25));
        assertThat(page().locator("#file-fault")).isVisible();
        page().getByLabel("Live eggs").fill("0");
        bring("box4.csv", log(48, 32.0));
        assertThat(page().locator("#eggs-fault")).isVisible();
        inspect("measure-faulty");

        page().getByLabel("Live eggs").fill("10");
        page().getByLabel("How far they were").fill("85");
        bring("box4.csv", log(48, 32.0));
        assertThat(page().locator("main"))
                .containsText(Pattern.compile("lets out 0\\.5[1-5] W for each degree"));
        assertThat(page().locator(".box-course"))
                .hasAttribute("aria-label", Pattern.compile("over 48 steady hours"));
        page().getByText("Why this figure?").click();
        inspect("measure");

        page().getByText("See how warm your eggs get in it").click();
        assertThat(page().locator("#ua")).hasValue(Pattern.compile("0\\.5[1-5]"));
        assertThat(page().locator("#eggs")).hasValue("10");
        assertThat(page().locator("#found")).containsText("In the last days the eggs come to");
    }

    private void bring(String name, String text) {
        page().locator("#file")
                .setInputFiles(
                        new FilePayload(name, "text/csv", text.getBytes(StandardCharsets.UTF_8)));
        page().getByText("Read the file").click();
        assertThat(page().locator("h1")).hasText("What your box lets out");
    }

    private static String log(int hours, double box) {
        var start = LocalDateTime.of(2026, 6, 1, 0, 0);
        return IntStream.range(0, hours * 6)
                .mapToObj(reading -> start.plusMinutes(10L * reading) + "," + box + ",31.2")
                .collect(Collectors.joining("\n", "time,temperature,incubator\n", "\n"));
    }
}
