package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.Serving;
import clutchwright.app.cli.DataFolder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.net.InetAddress;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The five minutes that the README promises, at the invented house. The pictures it leaves in
/// `target/screens` are the README's.
class TourTest extends Browsing {

    @TempDir static Path folder;
    static Serving.Running millrace;

    @BeforeAll
    static void open_millrace() {
        var plan =
                new Serving.Plan(
                        new DataFolder(folder),
                        true,
                        0,
                        InetAddress.ofLiteral("127.0.0.1"),
                        List.of());
        millrace =
                switch (Serving.start(plan)) {
                    case Serving.Running running -> running;
                    case Serving.Refused(var why) -> throw new IllegalStateException(why);
                };
    }

    @AfterAll
    static void close_millrace() {
        millrace.close();
    }

    @Test
    void today_says_what_is_due() {
        visit("/");
        assertThat(page().locator("h1")).hasText("Today");
        assertThat(page().locator("main")).containsText(Pattern.compile("Clutch \\d\\d-\\d\\d"));
        inspect("tour-today");
    }

    @Test
    void a_gene_typed_into_the_find_box_finds_who_has_it_and_why() {
        visit("/");
        page().getByRole(AriaRole.SEARCHBOX, named("Find an animal")).fill("Wren");
        page().keyboard().press("Enter");
        assertThat(page().locator("main")).containsText("B-01");
        inspect("tour-collection");
        page().getByRole(AriaRole.LINK, named("B-01")).first().click();
        assertThat(page().locator(".genes").first()).containsText("Pastel");
        inspect("tour-animal");
        photograph("readme-animal", 1180, 1150);
    }

    @Test
    void a_pair_is_predicted_and_compared() {
        visit("/season");
        assertThat(page().locator(".pairings > li").first()).isVisible();
        inspect("tour-season");
        visit("/season/predict?damTag=B-02&sireTag=A-04");
        assertThat(page().locator("main")).containsText("Blue-Eyed Leucistic");
        inspect("tour-white");
        visit("/season/predict?damTag=B-06&sireTag=A-02");
        assertThat(page().locator("main")).containsText("Banana Enchi");
        inspect("tour-predict");
        photograph("readme-predict", 1180, 1020);
    }

    @Test
    void a_clutch_that_hatches_is_named_at_the_bench() {
        visit("/eggs");
        assertThat(page().locator("main")).containsText("Hatching, or due to");
        inspect("tour-eggs");
        page().getByText(Pattern.compile("^Name what hatches$")).first().click();
        page().locator(".guesses label").first().click();
        inspect("tour-bench");
        photograph("readme-bench-phone", 390, 844);
        page().getByRole(AriaRole.BUTTON, named("Name this hatchling")).click();
        assertThat(page().locator(".flash")).containsText("is named:");
    }

    @Test
    void the_catalogue_says_what_two_alleles_give() {
        visit("/catalogue");
        inspect("tour-catalogue");
        visit("/catalogue/python-regius/bel");
        assertThat(page().locator("table").first()).containsText("Purple Passion");
        inspect("tour-locus");
    }

    @Test
    void settings_and_the_journal_are_there() {
        visit("/settings");
        inspect("tour-settings");
        visit("/journal");
        assertThat(page().locator("main")).containsText("Millrace");
        inspect("tour-journal");
    }

    /// The window as it is seen, for the README.
    private void photograph(String name, int width, int height) {
        page().setViewportSize(width, height);
        page().evaluate("window.scrollTo(0, 0)");
        page().screenshot(
                        new Page.ScreenshotOptions()
                                .setPath(Path.of("target", "screens", name + ".png")));
        page().setViewportSize(1280, 900);
    }

    private void visit(String path) {
        page().navigate(millrace.address() + path.substring(1));
    }

    private static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }
}
