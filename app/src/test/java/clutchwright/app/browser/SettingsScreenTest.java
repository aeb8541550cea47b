package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/// The screen Settings, as a keeper uses it.
class SettingsScreenTest extends Browsing {

    @Test
    void what_is_chosen_stays_chosen_and_is_confirmed() {
        open("/settings");
        page().getByLabel("Ounces").check();
        press("Save settings");

        assertThat(page().getByRole(AriaRole.STATUS)).hasText("Settings saved.");
        assertThat(page().getByLabel("Ounces")).isChecked();
        inspect("settings");

        page().getByLabel("Grams").check();
        press("Save settings");
        assertThat(page().getByLabel("Grams")).isChecked();
    }

    @Test
    void a_dark_look_is_dark_on_a_light_device() {
        open("/settings");
        page().getByLabel("Dark", new Page.GetByLabelOptions().setExact(true)).check();
        press("Save settings");

        assertThat(page().locator("body")).hasCSS("background-color", "rgb(23, 23, 20)");

        page().getByLabel("As the device").check();
        press("Save settings");
        assertThat(page().locator("body")).hasCSS("background-color", "rgb(251, 250, 246)");
    }

    @Test
    void a_tag_pattern_without_a_number_is_refused_beside_its_field_and_kept_as_typed() {
        open("/settings");
        page().getByLabel("Tags of hatchlings").fill("hatchling");
        press("Save settings");

        assertThat(page().locator("#tags")).hasValue("hatchling");
        assertThat(page().locator("#tags"))
                .hasAccessibleDescription(
                        Pattern.compile("A tag needs a number or a letter that runs"));
        assertThat(page().locator(".faults")).isFocused();
        inspect("settings-faulty");
    }

    @Test
    void what_is_taken_of_lay_days_can_be_changed_and_goes_back() {
        open("/settings/lay-days");
        page().getByLabel("Females lay about day of the year").fill("152");
        page().getByLabel("Ovulation to laying, in days").fill("soon");
        press("Save");
        assertThat(page().locator("#ovulation-lay-fault"))
                .hasText("Write a number from 0.1 to 200, not “soon”.");
        inspect("settings-lay-days");

        page().getByLabel("Ovulation to laying, in days").fill("46");
        page().getByLabel("Ovulation to laying, give or take").fill("40");
        press("Save");
        assertThat(page().locator("#ovulation-lay-sd-fault")).containsText("difference");

        page().getByLabel("Ovulation to laying, give or take").fill("4.5");
        press("Save");
        assertThat(page().getByRole(AriaRole.STATUS)).containsText("Saved.");
        assertThat(page().locator("#mean-day")).hasValue("152");
        assertThat(page().locator("#ovulation-lay")).hasValue("46");

        press("As it was at first");
        assertThat(page().locator("#mean-day")).hasValue("110");
    }

    @Test
    void two_different_passwords_are_not_set() {
        open("/settings");
        page().getByLabel("Password", new Page.GetByLabelOptions().setExact(true))
                .fill("a long enough one");
        page().getByLabel("The same again").fill("another one");
        press("Set the password");

        assertThat(page().locator("#again-fault")).hasText("This differs from the password above.");
        assertThat(page().locator("#password")).hasValue("");
    }

    private void press(String button) {
        page().getByRole(
                        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
    }
}
