package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.records.animals.Animal;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/// The open questions of a house, from the list to one of them, and what a new hatchling
/// changes.
class ProofsScreenTest extends Browsing {

    @Test
    void a_possible_het_is_an_open_question_until_her_clutches_settle_it() {
        var stock = new Stock(bean(Holding.class));
        var ada = stock.female("PRV-F1", "66% het Puzzle");
        var bo = stock.male("PRV-M1", "Puzzle");
        stock.seen(bo.id(), "Puzzle", hatched());
        stock.male("PRV-M2", "50% het Puzzle");
        for (var n = 1; n <= 2; n++) {
            plain(stock, "PRV-H" + n, ada, bo);
        }

        open("/proofs?gene=" + "puzzle%2FPuzzle");
        var row = row("PRV-F1");
        // Two thirds halved twice against a third: one in three.
        assertThat(row).containsText("33");
        assertThat(row).containsText("PRV-M1");
        assertThat(row).containsText("2 young seen");
        inspect("proofs");

        row.getByRole(AriaRole.LINK).click();
        assertThat(page().getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                .containsText("Does PRV-F1 carry Puzzle?");
        assertThat(page().getByText("Speaks against it.")).isVisible();
        assertThat(page().getByRole(AriaRole.IMG).first()).isVisible();
        assertThat(page().locator("tr", having("PRV-M2"))).containsText("never");
        inspect("proofs-question");

        page().getByLabel("Curve with PRV-M2").click();
        assertThat(page().getByText("Hatchlings of PRV-M2 without it")).isVisible();

        // Two visual hatchlings, since one may be misread: the question closes, and the page that
        // lies open says so without being asked again.
        for (var tag : List.of("PRV-H8", "PRV-H9")) {
            var visual = stock.young(tag, ada, bo, hatched());
            stock.seen(visual.id(), "Puzzle", hatched().plusDays(1));
        }
        open("/proofs?gene=" + "puzzle%2FPuzzle");
        assertThat(row("PRV-F1")).hasCount(0);
    }

    @Test
    void a_plain_hatchling_of_two_visuals_is_said_at_once_and_listed_with_what_may_have_happened() {
        var stock = new Stock(bean(Holding.class));
        open("/proofs/doubt");
        assertThat(page().getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                .containsText("Records in doubt");
        var ada = stock.female("DBT-F1", "Puzzle");
        var bo = stock.male("DBT-M1", "Puzzle");
        plain(stock, "DBT-H1", ada, bo);

        open("/proofs/doubt");
        var finding = page().locator("section.finding", having("DBT-H1"));
        assertThat(finding).containsText("These cannot all be true");
        assertThat(finding).containsText("DBT-H1 was seen to be Normal");
        assertThat(finding).containsText("was misread");
        assertThat(finding.getByRole(AriaRole.LINK).first()).isVisible();
        inspect("records-in-doubt");

        // Nothing is refused, and saving it says so.
        var id = stock.young("DBT-H2", ada, bo, hatched()).id().value();
        open("/collection/" + id + "/edit");
        page().getByLabel("Shows").fill("Normal");
        page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Save")).click();
        assertThat(page().getByText("These cannot all be true")).isVisible();
    }

    @Test
    void the_list_works_without_script_and_a_gene_without_questions_says_so() {
        var stock = new Stock(bean(Holding.class));
        stock.female("PRV-F3", "50% het Sunset");
        open("/proofs?gene=sunset%2FSunset");
        assertThat(page().locator("tr", having("PRV-F3"))).isVisible();

        useWithoutScript();
        open("/proofs?gene=nothing%2FSuch");
        assertThat(page().getByText("Nothing is open for this gene.")).isVisible();
        page().getByText("Show all open questions").click();
        assertThat(page().getByText("open questions").first()).isVisible();
        open("/proofs/999999999?gene=clown%2FClown");
        assertThat(page().getByText("There is no such question")).isVisible();
    }

    private void plain(Stock stock, String tag, Animal dam, Animal sire) {
        var young = stock.young(tag, dam, sire, hatched());
        stock.seen(young.id(), "Normal", hatched().plusDays(1));
    }

    private LocalDate hatched() {
        return bean(Holding.class).today().minusMonths(5);
    }

    private Locator row(String tag) {
        return page().locator("tr", having(tag));
    }

    /// The row that begins with the tag.
    private static Page.LocatorOptions having(String tag) {
        return new Page.LocatorOptions().setHasText(Pattern.compile("^\\s*" + tag + "\\b"));
    }
}
