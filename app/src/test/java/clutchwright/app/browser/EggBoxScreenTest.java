package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import java.util.regex.Pattern;
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
}
