package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.engine.genetics.Sex;
import clutchwright.records.clutches.Clutch;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/// Eggs from laying to the box: what a keeper does with a phone in one hand.
class EggsScreenTest extends Browsing {

    private static final Pattern UNDO = Pattern.compile("/journal/\\d+/undo");

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

        assertThat(page().locator(".pipping")).containsText("Expected to pip about");
        assertThat(page().locator(".pipping .strip")).isVisible();

        page().getByRole(AriaRole.LINK, named("Candle egg by egg")).click();
        assertThat(page().locator("h1")).hasText("Egg 1");
        inspect("eggs-candle");
        page().keyboard().press("1");
        assertThat(page().locator("h1")).hasText("Egg 2");
        page().keyboard().press("3");
        assertThat(page().locator("h1")).hasText("Egg 3");
        page().keyboard().press("5");
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
    void one_egg_has_a_page_with_its_looks_its_weight_how_it_lies_and_photos() throws IOException {
        var clutch = clutch("EG-1E", 3);
        open(path(clutch));
        page().locator("input[name=egg]").nth(1).check();
        page().getByRole(AriaRole.BUTTON, button("No veins")).click();
        assertThat(page().locator(".flash")).containsText("1 egg candled: no veins.");
        page().locator("input[name=egg]").nth(1).check();
        page().getByRole(AriaRole.BUTTON, button("Collapsed")).click();
        // Neither is given up for that.
        assertThat(page().locator(".head")).containsText("2 waiting, 1 doubtful");
        page().getByLabel("All of egg 2").click();
        assertThat(page().locator(".egg-course tbody tr")).hasCount(3);
        assertThat(page().locator(".egg-course")).containsText("candled: collapsed");

        page().getByLabel("Weight, g").fill("heavy");
        page().getByRole(AriaRole.BUTTON, button("Weigh it")).click();
        assertThat(page().locator("#weight-fault")).isVisible();
        page().getByLabel("Weight, g").fill("84.5");
        page().getByRole(AriaRole.BUTTON, button("Weigh it")).click();
        assertThat(page().locator(".egg-course")).containsText("84.5 g");
        page().getByLabel("How it lies").fill("pencil mark up");
        page().getByRole(AriaRole.BUTTON, button("Keep that")).click();
        assertThat(page().locator(".candling")).containsText("pencil mark up");

        page().locator("#photo")
                .setInputFiles(new FilePayload("no.txt", "text/plain", new byte[] {1, 2, 3}));
        page().getByRole(AriaRole.BUTTON, button("Add it")).click();
        assertThat(page().locator("#photo-fault")).isVisible();
        page().locator("#photo").setInputFiles(new FilePayload("e.png", "image/png", picture()));
        page().getByLabel("Caption").fill("before the light");
        page().getByRole(AriaRole.BUTTON, button("Add it")).click();
        assertThat(page().locator(".egg-album figure")).hasCount(1);
        var width =
                page().locator(".egg-album img")
                        .evaluate("image => image.decode().then(() => image.naturalWidth)");
        Assertions.assertThat(((Number) width).intValue()).isEqualTo(60);
        inspect("egg");

        page().getByLabel("Remove the photo").click();
        assertThat(page().locator(".egg-album figure")).hasCount(0);
        page().getByRole(AriaRole.BUTTON, button("Undo")).click();
        open(path(clutch) + "/egg/2");
        assertThat(page().locator(".egg-album figure")).hasCount(1);
        open(path(clutch) + "/egg/9");
        assertThat(page().locator("h1")).hasText("Not found");
    }

    private static byte[] picture() throws IOException {
        var out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB), "png", out);
        return out.toByteArray();
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

    @Test
    void the_first_six_go_into_one_box_and_the_rest_into_another() {
        var clutch = clutch("EG4", 9);
        open(path(clutch));
        page().getByRole(AriaRole.BUTTON, button("First six")).click();
        assertThat(page().locator("input[name=egg]:checked")).hasCount(6);
        page().getByRole(AriaRole.COMBOBOX, button("Box")).fill("EG4-1");
        page().getByRole(AriaRole.BUTTON, button("Put into the box")).click();
        assertThat(page().locator(".flash")).containsText("6 eggs put into box EG4-1.");
        assertThat(page().locator(".flash form")).hasAttribute("action", UNDO);

        page().getByLabel("Or the first so many").fill("4");
        page().getByRole(AriaRole.COMBOBOX, button("Box")).fill("EG4-2");
        page().getByRole(AriaRole.BUTTON, button("Put into the box")).click();
        assertThat(page().locator("#first-fault")).containsText("from 1 to 3, not “4”");
        page().getByLabel("Or the first so many").fill("3");
        page().getByRole(AriaRole.BUTTON, button("Put into the box")).click();
        assertThat(page().locator(".egg-list").getByText("box EG4-2")).hasCount(3);
    }

    @Test
    void before_boxing_it_is_told_how_warm_the_eggs_get_in_one_box_or_several() {
        var clutch = clutch("EG-S12", 12);
        open(path(clutch));
        var rows = page().locator("table:has(caption:text('12 in no box')) tbody tr");
        assertThat(rows).hasCount(3);
        // Ten at most, so two boxes; alone in one they get the warmest.
        assertThat(rows.nth(1)).containsText("2 boxes: 6 and 6");
        assertThat(rows.nth(1)).containsText("your rule: 10 at most");
        assertThat(rows.nth(0)).not().containsText("your rule");
        inspect("eggs-clutch-splits");
        var two = rows.nth(1).locator("td").first().textContent();

        page().getByRole(AriaRole.LINK, named("other boxes and set points")).click();
        assertThat(page().locator("table tbody tr").nth(1)).containsText("2 boxes: 6 and 6");
        assertThat(page().locator("table tbody tr").nth(1).locator("td").first()).hasText(two);

        open(path(clutch));
        page().getByLabel("Or the first so many").fill("12");
        page().getByRole(AriaRole.COMBOBOX, button("Box")).fill("EG-S12-1");
        page().getByRole(AriaRole.BUTTON, button("Put into the box")).click();
        assertThat(page().locator("caption")).hasCount(0);
    }

    @Test
    void the_keepers_own_rule_and_box_are_kept_and_gone_by() {
        var clutch = clutch("EG-R12", 12);
        open("/settings/eggs?ua=2.1");
        page().getByLabel("Eggs to a box at most").fill("0");
        page().getByRole(AriaRole.BUTTON, button("Save")).click();
        assertThat(page().locator("#most-fault")).isVisible();
        page().getByLabel("Eggs to a box at most").fill("4");
        page().getByRole(AriaRole.BUTTON, button("Save")).click();
        assertThat(page().getByRole(AriaRole.STATUS)).containsText("Saved.");
        assertThat(page().locator("#ua")).hasValue("2.1");
        inspect("settings-eggs");

        open(path(clutch));
        var rows = page().locator("table:has(caption:text('12 in no box')) tbody tr");
        assertThat(rows.nth(2)).containsText("3 boxes: 4, 4 and 4");
        assertThat(rows.nth(2)).containsText("your rule: 4 at most");
        assertThat(page().locator("main")).containsText("in your usual box");
        open("/eggs/box");
        assertThat(page().locator("#ua")).hasValue("2.1");
        assertThat(page().locator("#most")).hasValue("4");

        open("/settings/eggs");
        page().getByLabel("Eggs to a box at most").fill("10");
        page().locator("#ua").fill("");
        page().getByRole(AriaRole.BUTTON, button("Save")).click();
        open("/eggs/box");
        assertThat(page().locator("#tub")).hasValue("MIDDLE");
        assertThat(page().locator("#most")).hasValue("10");
    }

    @Test
    void nothing_is_done_with_eggs_that_nobody_ticked() {
        var clutch = clutch("EG5", 3);
        open(path(clutch));
        page().getByRole(AriaRole.BUTTON, button("Slug")).click();
        assertThat(page().locator(".faults")).containsText("Tick the eggs first.");
        page().locator("input[name=egg]").first().check();
        page().getByLabel("Seen on").fill("1999-01-01");
        page().getByRole(AriaRole.BUTTON, button("Slug")).click();
        assertThat(page().locator("#on-fault")).isVisible();
        assertThat(page().locator("input[name=egg]").first()).isChecked();
        assertThat(page().locator(".head")).containsText("3 waiting");
    }

    @Test
    void an_egg_that_was_given_up_can_wait_on() {
        var clutch = clutch("EG6", 2);
        open(path(clutch));
        page().locator("input[name=egg]").first().check();
        page().getByRole(AriaRole.BUTTON, button("Lost")).click();
        assertThat(page().locator(".head")).containsText("1 waiting, 1 lost");
        page().locator("input[name=egg]").first().check();
        page().getByRole(AriaRole.BUTTON, button("Still waiting after all")).click();
        assertThat(page().locator(".head")).containsText("2 waiting");
    }

    @Test
    void two_who_mark_the_same_egg_do_not_overwrite_each_other() {
        var clutch = clutch("EG7", 2);
        open(path(clutch));
        var other = page().context().newPage();
        other.navigate(address(path(clutch)));
        page().locator("input[name=egg]").first().check();
        page().getByRole(AriaRole.BUTTON, button("Lost")).click();
        assertThat(page().locator(".flash")).isVisible();
        other.locator("input[name=egg]").first().check();
        other.getByRole(AriaRole.BUTTON, button("Lost")).click();
        assertThat(other.locator("h1")).hasText("Changed by somebody else");
        other.close();
    }

    @Test
    void day_sire_and_notes_are_changed_and_eggs_that_were_overlooked_are_added() {
        var clutch = clutch("EG8", 2);
        stock.animal("EG8-S2", Sex.MALE, "Mojave");
        open(path(clutch) + "/edit");
        page().getByLabel("Sire").fill("EG8-S:2 | EG8-S2:1");
        page().getByLabel("Notes").fill("she laid them in the water bowl");
        page().getByRole(AriaRole.BUTTON, button("Save")).click();
        assertThat(page().locator(".couple")).containsText("Sire, 2/3EG8-S");
        assertThat(page().locator(".notes")).containsText("water bowl");
        open(path(clutch) + "/edit");
        assertThat(page().getByLabel("Sire")).hasValue("EG8-S:2 | EG8-S2:1");
        inspect("clutch-edit");
        page().getByLabel("Sire").fill("EG8-S:none | EG8-S2");
        page().getByRole(AriaRole.BUTTON, button("Save")).click();
        assertThat(page().locator("#others-fault")).containsText("a number above 0");
        page().getByLabel("Good eggs").fill("1");
        page().getByRole(AriaRole.BUTTON, button("Add to the clutch")).click();
        assertThat(page().locator(".head")).containsText("3 waiting");
    }

    @Test
    void two_who_change_a_clutch_see_both_versions_and_choose() {
        var clutch = clutch("EG13", 2);
        open(path(clutch) + "/edit");
        var other = page().context().newPage();
        other.navigate(address(path(clutch) + "/edit"));
        page().getByLabel("Notes").fill("in the moss box");
        page().getByRole(AriaRole.BUTTON, button("Save")).click();
        assertThat(page().locator(".notes")).containsText("moss box");
        other.getByLabel("Notes").fill("in the water bowl");
        other.getByRole(AriaRole.BUTTON, button("Save")).click();
        assertThat(other.locator("#notes-fault")).containsText("in the moss box");
        assertThat(other.getByLabel("Notes")).hasValue("in the water bowl");
        other.getByRole(AriaRole.BUTTON, button("Save")).click();
        assertThat(other.locator(".notes")).containsText("water bowl");
        other.close();
    }

    @Test
    void a_clutch_recorded_by_mistake_is_removed() {
        var clutch = clutch("EG9", 2);
        open(path(clutch) + "/edit");
        page().getByRole(AriaRole.BUTTON, button("Remove the clutch")).click();
        assertThat(page().locator(".flash form")).hasAttribute("action", UNDO);
        open(path(clutch));
        assertThat(page().locator("h1")).hasText("Not found");
    }

    @Test
    void what_concerns_welfare_is_said_where_the_eggs_are() {
        var dam = stock.animal("EG10-D", Sex.FEMALE, "Spider");
        var sire = stock.animal("EG10-S", Sex.MALE, "Normal");
        var clutch = stock.clutch(EggsStock.parents(dam, sire), stock.holding().today(), 2, 0);
        open(path(clutch));
        page().locator(".cautions summary").click();
        assertThat(page().locator(".cautions")).containsText("Nerves and balance");
        assertThat(page().locator(".cautions")).containsText("veterinarian");
        inspect("clutch-cautions");
    }

    /// Booth & Schuett 2011: snakes have kept sperm for years.
    @Test
    void eggs_that_no_male_came_in_time_for_are_recorded_and_it_is_said() {
        var dam = stock.animal("EG14-D", Sex.FEMALE, "Pastel");
        var sire = stock.animal("EG14-S", Sex.MALE, "Normal");
        var today = stock.holding().today();
        stock.together(dam, sire, today.minusDays(12));
        var late = stock.clutch(EggsStock.parents(dam, sire), today.minusDays(2), 4, 0);
        open(path(late));
        assertThat(page().locator("#no-male")).containsText("EG14-S was first put to her on");
        assertThat(page().locator("#no-male")).containsText("She may have kept sperm");
        inspect("clutch-no-male");

        var other = stock.animal("EG15-D", Sex.FEMALE, "Pastel");
        stock.together(other, sire, today.minusDays(60));
        var inTime = stock.clutch(EggsStock.parents(other, sire), today.minusDays(2), 4, 0);
        open(path(inTime));
        assertThat(page().locator("h1")).containsText("Clutch");
        assertThat(page().locator("#no-male")).hasCount(0);
    }

    @Test
    void a_clutch_of_a_female_without_a_pairing_is_recorded_with_its_sire_left_open() {
        stock.animal("EG16-D", Sex.FEMALE, "Pastel");
        use(Device.PHONE);
        open("/eggs/new?dam=EG16-D");
        assertThat(page().locator("#sires")).containsText("She may have kept sperm");
        page().getByLabel("Good eggs").fill("5");
        page().getByRole(AriaRole.BUTTON, button("Record the clutch")).click();
        assertThat(page().locator(".flash")).containsText("is on record");
        assertThat(page().locator("#no-male")).containsText("No pairing of hers is on record");
        page().getByRole(AriaRole.LINK, named("Change who the parents are")).click();
        assertThat(page().getByLabel("Sire")).hasValue("");
    }

    private Clutch clutch(String name, int eggs) {
        return stock.clutch(
                EggsStock.parents(
                        stock.animal(name + "-D", Sex.FEMALE, "Pastel"),
                        stock.animal(name + "-S", Sex.MALE, "Normal")),
                stock.holding().today(),
                eggs,
                0);
    }

    private static String path(Clutch clutch) {
        return "/eggs/" + clutch.id().value();
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
