package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.records.animals.Animals;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The main job from end to end, as somebody does it who has never seen the program: a sheet of
/// three hundred animals comes in, a pairing is predicted, made, laid, boxed and hatched, and
/// its young get their names.
class WholeSeasonTest extends Browsing {

    @TempDir Path folder;

    @Test
    void a_sheet_comes_in_and_a_season_later_its_grandchildren_have_names() throws IOException {
        // The sheet, as it lies on the disk; its tags get a letter so that other tests do not meet
        // the same animals.
        open("/");
        page().getByRole(AriaRole.LINK, link("Settings")).first().click();
        page().getByRole(AriaRole.LINK, link("Import a sheet or a package")).first().click();
        page().getByLabel("File", exactly()).setInputFiles(sheet());
        press("Look at the file");
        assertThat(page().locator("section[aria-labelledby=first]")).containsText("W12-001");
        press("Bring in 300 animals");
        page().waitForURL(Pattern.compile("/done$"));
        assertThat(page().locator(".lead")).containsText("300 animals added");

        // W11-032 is a Lesser and 66 % het Clown: bought in, so that her claim stands.
        page().getByRole(AriaRole.SEARCHBOX, link("Find an animal")).fill("W11-032");
        page().keyboard().press("Enter");
        page().getByRole(AriaRole.LINK, link("W11-032")).first().click();
        assertThat(page().locator(".genes").first()).containsText("Lesser");
        assertThat(page().locator(".genes").first()).containsText("66%");

        // What would she give with somebody else's Pastel het Clown? Of a 66 % and a certain het
        // one in six is visual, so a Pastel Lesser without it is 1/2 x 1/2 x 5/6 = 20.8 %. Her six
        // young that do not show it make her het a little less likely than the seller said.
        open("/season/predict?dam=" + id("W11-032") + "&sireLine=Pastel+het+Clown");
        assertThat(kind("Pastel Lesser")).containsText("20.9 %");

        // The male she gets is of the same sheet.
        open("/season/predict?dam=" + id("W11-032") + "&sire=" + id("W12-001"));
        page().getByText(Pattern.compile("Plan this pairing for \\d{4}")).click();
        var pairing =
                page().locator(".pairings > li")
                        .filter(new Locator.FilterOptions().setHasText("W11-032"));
        pairing.getByText("Put together", within()).click();
        assertThat(page().getByRole(AriaRole.STATUS)).containsText("together from");
        pairing.getByText("Laid …").click();

        // She has laid.
        page().getByLabel("Good eggs").fill("3");
        page().getByLabel("Slugs").fill("1");
        page().getByLabel("Laid on").fill(bean(Holding.class).today().minusDays(57).toString());
        press("Record the clutch");
        assertThat(page().locator(".head")).containsText("3 waiting, 1 slug");
        page().getByRole(
                        AriaRole.COMBOBOX,
                        new Page.GetByRoleOptions().setName("Box").setExact(true))
                .fill("W1");
        page().getByLabel("Or the first so many").fill("3");
        press("Put into the box");
        assertThat(page().locator(".flash")).containsText("3 eggs put into box W1.");

        // Fifty-seven days later, at the bench, phone in hand.
        var clutch = page().url().replaceAll("[?#].*", "");
        use(Device.PHONE);
        page().navigate(clutch + "/hatch");
        for (int egg = 1; egg <= 3; egg++) {
            page().locator(".guesses label").first().click();
            press("Name this hatchling");
            assertThat(page().locator(".progress")).containsText(egg + " of 3 eggs named");
        }
        assertThat(page().locator(".named")).hasCount(3);
        // None of an Enchi and a 66 % het is visual; each carries at one in three.
        assertThat(page().locator(".named").first()).containsText("het Clown");
        assertThat(page().locator(".named").first()).containsText("33%");
        assertThat(page().locator("main")).containsText("A clutch of 3 falls into groups just so");
    }

    private Path sheet() throws IOException {
        var lines = Files.readAllLines(Path.of("..", "examples", "three-hundred.csv"));
        var text =
                lines.stream()
                        .map(line -> line.replaceAll("(?<=^|,)(\\d\\d-\\d{3})(?=,|$)", "W$1"))
                        .collect(Collectors.joining("\n"));
        return Files.writeString(folder.resolve("my-animals.csv"), text);
    }

    private long id(String tag) {
        return bean(Holding.class)
                .database()
                .read(tx -> new Animals(tx).byTag(tag).orElseThrow().id().value());
    }

    private Locator kind(String name) {
        return page().locator("tbody tr")
                .filter(new Locator.FilterOptions().setHas(page().getByText(name, exactText())))
                .first();
    }

    private void press(String button) {
        page().getByRole(
                        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
    }

    private static Page.GetByRoleOptions link(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    private static Page.GetByLabelOptions exactly() {
        return new Page.GetByLabelOptions().setExact(true);
    }

    private static Page.GetByTextOptions exactText() {
        return new Page.GetByTextOptions().setExact(true);
    }

    private static Locator.GetByTextOptions within() {
        return new Locator.GetByTextOptions().setExact(true);
    }
}
