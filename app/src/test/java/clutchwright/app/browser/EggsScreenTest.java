package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.engine.genetics.Sex;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/// Eggs from laying to the box: what a keeper does with a phone in one hand.
class EggsScreenTest extends Browsing {

    private EggsStock stock;

    @BeforeEach
    void a_stock() {
        stock = new EggsStock(bean(Holding.class));
    }

    @Test
    void a_season_without_a_clutch_says_what_to_do() {
        open("/eggs?season=1999");
        assertThat(page().locator(".empty")).containsText("record her clutch");
        page().getByRole(AriaRole.LINK, named("Record a clutch")).click();
        assertThat(page().locator("h1")).hasText("New clutch");
        inspect("eggs-new");
    }

    @Test
    void a_clutch_is_laid_candled_boxed_and_listed() {
        var dam = stock.animal("EG-D1", Sex.FEMALE, "Pastel het Clown");
        var sire = stock.animal("EG-S1", Sex.MALE, "Mojave het Clown");
        stock.paired(dam, sire);
        use(Device.PHONE);
        open("/eggs/new");
        page().getByLabel("Dam").fill("eg-d1");
        page().getByLabel("Laid on").focus();
        // Her male of this season is there and ticked already.
        assertThat(page().getByRole(AriaRole.CHECKBOX, labelled("EG-S1"))).isChecked();
        page().getByLabel("Good eggs").fill("7");
        page().getByLabel("Slugs").fill("1");
        page().getByRole(AriaRole.BUTTON, button("Record the clutch")).click();
        assertThat(page().locator(".flash")).containsText("is on record");
        assertThat(page().locator(".head")).containsText("7 waiting, 1 slug");

        page().getByRole(AriaRole.LINK, named("Candle egg by egg")).click();
        assertThat(page().locator("h1")).hasText("Egg 1");
        inspect("eggs-candle");
        page().keyboard().press("1");
        assertThat(page().locator("h1")).hasText("Egg 2");
        page().keyboard().press("2");
        assertThat(page().locator("h1")).hasText("Egg 3");
        page().keyboard().press("3");
        assertThat(page().locator("h1")).hasText("Egg 4");
        page().getByRole(AriaRole.LINK, named("Skip this egg")).click();
        assertThat(page().locator("h1")).hasText("Egg 5");
        page().locator(".over a").click();
        assertThat(page().locator(".head")).containsText("5 waiting, 1 doubtful, 2 slugs");

        page().getByRole(AriaRole.COMBOBOX, button("Box")).fill("A1");
        page().getByLabel("Incubator").fill("North");
        page().getByLabel("Or the first so many").fill("4");
        page().getByRole(AriaRole.BUTTON, button("Put into the box")).click();
        assertThat(page().locator(".flash")).containsText("4 eggs put into box A1.");
        assertThat(page().locator(".egg-list")).containsText("box A1");

        page().locator("input[name=egg]").first().check();
        page().getByLabel("What was seen").fill("sunken");
        page().getByRole(AriaRole.BUTTON, button("Lost")).click();
        assertThat(page().locator(".egg-list li").first()).containsText("sunken");
        inspect("eggs-clutch");
        open("/eggs");
        assertThat(page().locator("main")).containsText("box A1 in North");
        inspect("eggs-list");
    }

    @Test
    void nothing_is_recorded_of_what_cannot_be() {
        var male = stock.animal("EG-M2", Sex.MALE, "Normal");
        open("/eggs/new?dam=EG-M2");
        page().getByLabel("Good eggs").fill("5");
        page().getByRole(AriaRole.BUTTON, button("Record the clutch")).click();
        assertThat(page().locator("#dam-fault")).containsText("males lay no eggs");
        assertThat(page().getByLabel("Good eggs")).hasValue("5");

        page().getByLabel("Dam").fill("EG-nobody");
        page().getByRole(AriaRole.BUTTON, button("Record the clutch")).click();
        assertThat(page().locator("#dam-fault")).containsText("EG-nobody");

        stock.animal("EG-D2", Sex.FEMALE, "Normal");
        page().getByLabel("Dam").fill("EG-D2");
        page().getByLabel("Laid on").fill("2300-01-01");
        page().getByLabel("Good eggs").fill("-1");
        page().getByRole(AriaRole.BUTTON, button("Record the clutch")).click();
        assertThat(page().locator("#good-fault")).containsText("from 0 to 60");
        page().getByLabel("Good eggs").fill("0");
        page().getByRole(AriaRole.BUTTON, button("Record the clutch")).click();
        assertThat(page().locator("#laid-fault")).containsText("still to come");
        assertThat(page().locator("#good-fault")).containsText("at least one egg");
        inspect("eggs-new-faulty");
    }

    @Test
    void a_dam_that_was_never_sexed_is_asked_about() {
        stock.unsexed("EG-U3");
        open("/eggs/new?dam=EG-U3");
        page().getByLabel("Good eggs").fill("5");
        page().getByRole(AriaRole.BUTTON, button("Record the clutch")).click();
        assertThat(page().locator(".care")).containsText("The sex of EG-U3 is not on record");
        page().getByLabel("Yes, record it all the same").check();
        page().getByRole(AriaRole.BUTTON, button("Record the clutch")).click();
        assertThat(page().locator("h1")).containsText("Clutch");
    }

    static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    static Page.GetByRoleOptions button(String name) {
        return new Page.GetByRoleOptions().setName(name).setExact(true);
    }

    static Page.GetByRoleOptions labelled(String beginning) {
        return new Page.GetByRoleOptions().setName(Pattern.compile("^" + beginning));
    }
}
