package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Biparental;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Parentage.SireQuestion;
import clutchwright.engine.probability.Distribution;
import clutchwright.records.clutches.Clutch;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/// The bench: a clutch hatches and is named.
class BenchScreenTest extends Browsing {

    private EggsStock stock;

    @BeforeEach
    void a_stock() {
        stock = new EggsStock(bean(Holding.class));
    }

    /// Mendel: of two hets one in four shows, and what does not show carries in two of three.
    @Test
    void a_clutch_of_two_hets_is_named_on_the_phone_and_carries_what_mendel_says() {
        var clutch = clutch("BE1", "Pastel het Clown", "het Clown", 4, 1);
        use(Device.PHONE);
        open(path(clutch) + "/hatch");
        var number = clutch.number().toString();
        assertThat(page().locator(".tag-preview")).containsText(number + "A");
        // 1/2 for one Pastel allele times 3/4 for no visible Clown: 3/8 each.
        assertThat(guess("Pastel")).containsText("3/8");
        assertThat(guess("Pastel")).containsText("2/3");
        inspect("bench-open");

        guess("Pastel").click();
        assertThat(page().locator("#judged")).containsText("3/8 of what hatches");
        page().getByText("Female", new Page.GetByTextOptions().setExact(true)).click();
        page().getByLabel("Weight, g").fill("62,5");
        save();
        assertThat(page().locator(".flash"))
                .containsText(number + "A is named: Pastel 66% het Clown");
        assertThat(page().locator(".progress")).containsText("1 of 4 eggs named");
        assertThat(page().locator(".named").first()).containsText("62.5 g");
        assertThat(page().locator(".named").first()).containsText("female");

        form("Clown").click();
        save();
        assertThat(page().locator(".flash")).containsText(number + "B is named: Clown");
        guess("Normal").click();
        save();
        guess("Normal").click();
        save();
        assertThat(page().locator(".progress")).containsText("4 of 4 eggs named");
        // Multinomial: 4!/(1! 1! 2!) (3/8)(1/8)(3/8)^2 = 12 x 27/4096.
        assertThat(page().locator("section", section("Predicted and found")))
                .containsText("81/1024");
        inspect("bench-done");
        page().locator(".over a").click();
        // Three that do not show it, each het at 2/3: 1 - 1/9 of two, 1 - 1/27 of all.
        var clown = page().locator("section[aria-labelledby=hold-backs] tbody tr");
        assertThat(clown).hasCount(1);
        assertThat(clown).containsText("66.7 %");
        assertThat(clown).containsText("88.9 %");
        assertThat(clown).containsText("96.3 %");
        inspect("clutch-hold-backs");
        page().getByRole(AriaRole.LINK, EggsScreenTest.named("Sheet to print")).click();
        assertThat(page().locator(".sheet tbody tr")).hasCount(4);
        inspect("clutch-sheet");
    }

    @Test
    void everything_is_done_by_keyboard() {
        var clutch = clutch("BE2", "Pastel", "Normal", 2, 0);
        open(path(clutch) + "/hatch");
        page().keyboard().press("2");
        page().keyboard().press("m");
        assertThat(page().locator("input[name=seen]:checked")).hasCount(1);
        assertThat(page().locator("input[name=sex][value=MALE]")).isChecked();
        page().locator("input[name=seen]:checked").focus();
        page().keyboard().press("ArrowUp");
        assertThat(page().locator("input[name=shows]").first()).not().isChecked();
        page().keyboard().press("Enter");
        assertThat(page().locator(".flash")).containsText("is named: Normal.");
    }

    @Test
    void a_hatchling_that_these_parents_cannot_give_says_so_at_once_and_is_kept_all_the_same() {
        var clutch = clutch("BE3", "Pastel", "Normal", 2, 0);
        open(path(clutch) + "/hatch");
        page().getByLabel("Something else shows").fill("Clown");
        assertThat(page().locator("#judged")).containsText("Not possible from these parents");
        inspect("bench-surprise");
        save();
        // Once it is on record its parents may both carry it unseen after all, though hardly.
        assertThat(page().locator(".flash")).containsText("Seldom: 0.24");
        assertThat(page().locator(".flash")).containsText("These cannot all be true: ");
        assertThat(page().locator(".flash")).containsText("was misread: it is not Clown.");
        assertThat(page().locator(".named .care")).containsText("Seldom");
    }

    @Test
    void an_unknown_word_is_pointed_at_and_nothing_is_named() {
        var clutch = clutch("BE4", "Pastel", "Normal", 2, 0);
        open(path(clutch) + "/hatch");
        page().getByLabel("Something else shows").fill("Klawn");
        save();
        assertThat(page().locator("#other-fault")).containsText("Klawn");
        assertThat(page().getByLabel("Something else shows")).hasValue("Klawn");
        assertThat(page().locator(".named")).hasCount(0);
    }

    @Test
    void twins_come_out_of_an_egg_that_has_hatched_and_no_other_hatchling_beyond_the_eggs() {
        var clutch = clutch("BE5", "Pastel", "Normal", 1, 0);
        open(path(clutch) + "/hatch");
        var late = page().context().newPage();
        late.navigate(address(path(clutch) + "/hatch"));

        guess("Pastel").click();
        save();
        assertThat(page().locator(".progress")).containsText("1 of 1 egg named");

        // Another station still has the page from before: its egg is gone.
        late.locator(".guesses label").first().click();
        late.getByRole(AriaRole.BUTTON, EggsScreenTest.button("Name this hatchling")).click();
        assertThat(late.locator("#egg-fault")).containsText("no longer waited for");
        late.close();

        page().locator("summary", section("A twin came out")).click();
        guess("Normal").click();
        save();
        assertThat(page().locator(".named")).hasCount(2);
        assertThat(page().locator(".named").first()).containsText("twin");
        assertThat(page().locator(".head")).containsText("1 hatched with twins");
    }

    @Test
    void where_the_sire_is_in_doubt_each_is_weighed() {
        var dam = stock.animal("BE6-D", Sex.FEMALE, "Normal");
        var pastel = stock.animal("BE6-P", Sex.MALE, "Pastel");
        var mojave = stock.animal("BE6-M", Sex.MALE, "Mojave");
        var clutch =
                laid(
                        new Biparental(
                                new Dam.Known(dam),
                                new Sire.InDoubt(
                                        new SireQuestion(
                                                "test",
                                                Distribution.uniform(List.of(pastel, mojave))))),
                        3,
                        0);
        open(path(clutch) + "/hatch");
        assertThat(page().locator(".couple")).containsText("1/2");
        // Half the chance of either male, of which half shows: 1/4 each.
        assertThat(guess("Pastel")).containsText("1/4");
        assertThat(guess("Mojave")).containsText("1/4");
        assertThat(guess("Normal")).containsText("1/2");
        guess("Pastel").click();
        save();
        guess("Mojave").click();
        save();
        // One male sired them all, so both together cannot be.
        assertThat(page().locator("section", section("Predicted and found")))
                .containsText("such a clutch cannot come");
        inspect("bench-sire-in-doubt");
    }

    @Test
    void a_future_day_a_photo_that_is_none_and_a_taken_tag_are_told_at_their_fields()
            throws IOException {
        var clutch = clutch("BE7", "Pastel", "Normal", 2, 0);
        open(path(clutch) + "/hatch");
        guess("Normal").click();
        page().locator("summary", section("Day, photo")).click();
        page().getByLabel("Hatched on").fill("2300-01-01");
        page().getByLabel("Another tag").fill("BE7-d");
        page().getByLabel("Weight, g").fill("a lot");
        save();
        assertThat(page().locator("#weight-fault")).containsText("a lot");
        page().getByLabel("Weight, g").fill("60");
        save();
        assertThat(page().locator("#pipped-fault")).containsText("still to come");
        assertThat(page().locator("#tag-fault")).containsText("BE7-d");
        page().getByLabel("Hatched on").fill(stock.holding().today().toString());
        page().getByLabel("Another tag").fill("");
        page().getByLabel("Photo").setInputFiles(payload("snake.jpg", "no picture".getBytes()));
        save();
        assertThat(page().locator("#photo-fault")).containsText("not a photo");
        assertThat(page().locator(".named")).hasCount(0);
        page().getByLabel("Photo").setInputFiles(payload("snake.png", picture()));
        save();
        assertThat(page().locator(".named")).hasCount(1);
    }

    @Test
    void without_script_the_forms_do_it_all() {
        var clutch = clutch("BE8", "Pastel", "Normal", 2, 0);
        try (var plain =
                page().context()
                        .browser()
                        .newContext(new Browser.NewContextOptions().setJavaScriptEnabled(false))) {
            var page = plain.newPage();
            page.navigate(address(path(clutch) + "/hatch"));
            page.getByLabel("Form by form").check();
            page.locator(".forms label").first().click();
            page.getByRole(AriaRole.BUTTON, EggsScreenTest.button("Name this hatchling")).click();
            assertThat(page.locator(".flash")).containsText("is named: Pastel");
            page.locator(".guesses label").nth(1).click();
            page.getByRole(AriaRole.BUTTON, EggsScreenTest.button("Name this hatchling")).click();
            assertThat(page.locator(".progress")).containsText("2 of 2 eggs named");
        }
    }

    @Test
    void an_egg_that_does_not_hatch_is_marked_at_the_bench() {
        var clutch = clutch("BE9", "Pastel", "Normal", 2, 0);
        open(path(clutch) + "/hatch");
        guess("Normal").click();
        save();
        page().getByLabel("Egg 2").check();
        page().getByRole(AriaRole.BUTTON, EggsScreenTest.button("Mark as lost")).click();
        assertThat(page().locator(".head")).containsText("1 lost, 1 hatched");
        assertThat(page().locator("h1")).hasText("Hatching");
    }

    @Test
    void the_last_hatchling_is_taken_back_and_its_egg_waits_again() {
        var clutch = clutch("BE10", "Pastel", "Normal", 2, 0);
        open(path(clutch) + "/hatch");
        guess("Pastel").click();
        save();
        assertThat(page().locator(".progress")).containsText("1 of 2 eggs named");
        page().locator(".flash").getByRole(AriaRole.BUTTON, undo()).click();
        assertThat(page().locator("h1")).hasText("Hatching");
        assertThat(page().locator(".progress")).containsText("0 of 2 eggs named");
        assertThat(page().locator(".named")).hasCount(0);
        assertThat(page().locator(".tag-preview")).containsText(clutch.number() + "A");
    }

    private static Locator.GetByRoleOptions undo() {
        return new Locator.GetByRoleOptions().setName("Undo");
    }

    private Clutch clutch(String name, String dam, String sire, int good, int slugs) {
        return laid(
                EggsStock.parents(
                        stock.animal(name + "-D", Sex.FEMALE, dam),
                        stock.animal(name + "-S", Sex.MALE, sire)),
                good,
                slugs);
    }

    private Clutch laid(Parentage parentage, int good, int slugs) {
        return stock.clutch(parentage, stock.holding().today().minusDays(57), good, slugs);
    }

    private static String path(Clutch clutch) {
        return "/eggs/" + clutch.id().value();
    }

    private Locator guess(String shows) {
        return page().locator(
                        ".guesses label",
                        new Page.LocatorOptions()
                                .setHas(
                                        page().locator(
                                                        "strong",
                                                        new Page.LocatorOptions()
                                                                .setHasText(
                                                                        java.util.regex.Pattern
                                                                                .compile(
                                                                                        "^" + shows
                                                                                                + "$")))));
    }

    private Locator form(String name) {
        return page().locator(".forms label", new Page.LocatorOptions().setHasText(name));
    }

    private void save() {
        page().getByRole(AriaRole.BUTTON, EggsScreenTest.button("Name this hatchling")).click();
    }

    private static Page.LocatorOptions section(String title) {
        return new Page.LocatorOptions().setHasText(title);
    }

    private static FilePayload payload(String name, byte[] content) {
        return new FilePayload(name, "image/png", content);
    }

    private static byte[] picture() throws IOException {
        var out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", out);
        return out.toByteArray();
    }
}
