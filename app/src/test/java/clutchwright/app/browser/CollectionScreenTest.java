package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.records.animals.Status;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/// The list of animals, as a keeper uses it.
class CollectionScreenTest extends Browsing {

    @Test
    void animals_are_found_as_one_types_and_filters_are_kept_under_a_name() {
        var stock = stock();
        var dam = stock.female("LST-1", "Pastel Clown het Piebald");
        stock.put(dam, "North room", "Rack 2", "7");
        var sire = stock.male("LST-2", "het Clown");
        stock.add("LST-3", of -> of.withName("Lister").withStatus(Status.SOLD));
        stock.young("LST-4", dam, sire, java.time.LocalDate.of(2023, 8, 9));
        open("/collection");

        find().fill("lst");
        assertThat(rows()).hasCount(4);
        find().fill("lst north");
        assertThat(rows()).hasCount(1);
        assertThat(rows().first()).containsText("LST-1");
        find().fill("lister");
        assertThat(rows().first()).containsText("sold");
        find().fill("lst pastel");
        assertThat(rows()).hasCount(1);

        find().fill("lst");
        assertThat(rows()).hasCount(4);
        page().locator("#gene").fill("clown");
        assertThat(rows()).hasCount(1);
        // Nothing was said of LST-4: that it carries Clown follows from a visual dam.
        page().getByLabel("How it has the genes").selectOption("has");
        assertThat(rows()).hasCount(3);
        assertThat(page()).hasURL(Pattern.compile("gene=clown"));

        // Nobody has looked at LST-4: half the young of a single Pastel show it (Mendel's first
        // law).
        assertThat(rows().last()).containsText("maybe Pastel 50%");
        assertThat(rows().last()).not().containsText("Normal");

        page().getByLabel("Name for these filters").fill("Clown carriers");
        press("Save");
        assertThat(page().locator(".flash")).containsText("Filters saved as “Clown carriers”.");
        open("/collection");
        page().getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Clown carriers"))
                .click();
        assertThat(rows()).hasCount(3);
        inspect("collection-list");

        press("Remove the filters Clown carriers");
        assertThat(page().locator(".flash")).containsText("“Clown carriers” removed");
        assertThat(page().locator(".saved")).hasCount(0);
    }

    @Test
    void a_heading_sorts_and_sorts_the_other_way_when_taken_again() {
        var stock = stock();
        stock.add("SRT-10", of -> of);
        stock.add("SRT-9", of -> of);
        open("/collection?find=srt");
        // Tags are ordered by the numbers in them.
        assertThat(rows().first()).containsText("SRT-9");

        page().getByRole(
                        AriaRole.LINK, new Page.GetByRoleOptions().setName("Animal").setExact(true))
                .click();
        assertThat(rows().first()).containsText("SRT-10");
        assertThat(page().locator("th[aria-sort=descending]")).containsText("Animal");
    }

    @Test
    void an_unknown_gene_is_named_and_nothing_is_hidden() {
        stock().add("UNK-1", of -> of);
        open("/collection?find=unk-1&gene=klownorama");

        assertThat(page().locator("#gene-fault")).containsText("klownorama");
        assertThat(rows()).hasCount(1);
        inspect("collection-unknown-gene");
    }

    @Test
    void what_nothing_fits_says_so_and_leads_back() {
        stock().add("NON-1", of -> of);
        open("/collection?find=no+such+animal+anywhere");

        assertThat(page().getByText("No animal fits.")).isVisible();
        page().getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("show all animals"))
                .click();
        assertThat(rows().first()).isVisible();
    }

    @Test
    void several_animals_are_moved_and_marked_in_one_change() {
        var stock = stock();
        var one = stock.add("BLK-1", of -> of);
        var two = stock.add("BLK-2", of -> of);
        stock.add("BLK-3", of -> of);
        open("/collection?find=blk");
        page().getByLabel("Tick BLK-1").check();
        page().getByLabel("Tick BLK-2").check();
        page().getByText("Change the ticked animals together").click();
        page().locator("#setStatus").selectOption("FOR_SALE");
        page().locator("#setRoom").fill("Shop");
        page().locator("#setRack").fill("A");
        press("Change them");
        assertThat(page().locator("#setTub-fault")).containsText("Write the tub as well");
        assertThat(page().getByLabel("Tick BLK-2")).isChecked();

        page().locator("#setTub").fill("1");
        press("Change them");
        assertThat(page().locator(".flash")).containsText("2 animals changed.");
        org.assertj.core.api.Assertions.assertThat(stock.now(one).status())
                .isEqualTo(Status.FOR_SALE);
        org.assertj.core.api.Assertions.assertThat(stock.now(two).place()).isPresent();
    }

    private Stock stock() {
        return new Stock(bean(Holding.class));
    }

    private Locator find() {
        return page().locator("#find");
    }

    private Locator rows() {
        return page().locator("table.animals tbody tr");
    }

    private void press(String button) {
        page().getByRole(
                        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
    }
}
