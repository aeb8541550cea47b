package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.holding.Holding;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.Test;

/// What was changed, and the way back.
class JournalScreenTest extends Browsing {

    @Test
    void a_change_is_opened_taken_back_and_done_again() {
        var stock = new Stock(bean(Holding.class));
        stock.add("JR-1", of -> of.withName("Maple"));
        open("/journal");
        var line = line("Added JR-1");
        line.locator("summary").click();
        assertThat(line).containsText("Added animal JR-1");
        assertThat(line.locator(".differences").first()).containsText("Maple");
        inspect("journal");

        undo("Added JR-1").click();
        assertThat(page().getByRole(AriaRole.STATUS)).containsText("Taken back: Added JR-1.");
        assertThat(stock.find("JR-1")).isEmpty();
        assertThat(line("Added JR-1").last()).containsText("taken back");

        page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Redo")).click();
        assertThat(page().getByRole(AriaRole.STATUS)).containsText("Taken back: Took back");
        assertThat(stock.find("JR-1")).isPresent();
    }

    @Test
    void a_change_that_later_ones_build_upon_says_which_are_to_be_taken_back_first() {
        var stock = new Stock(bean(Holding.class));
        var animal = stock.add("JR-2", of -> of);
        stock.said(animal.id(), "Pastel");
        open("/journal");
        undo("Added JR-2").click();

        assertThat(page().locator("h1")).hasText("Not taken back");
        assertThat(page().locator("main")).containsText("what was done later builds upon it");
        assertThat(page().locator(".history li")).hasCount(1);
        assertThat(stock.find("JR-2")).isPresent();
        inspect("journal-refused");

        undo("Wrote down what was said").click();
        open("/journal");
        undo("Added JR-2").click();
        assertThat(stock.find("JR-2")).isEmpty();
    }

    @Test
    void without_script_a_change_is_opened_on_a_page_of_its_own() {
        var stock = new Stock(bean(Holding.class));
        stock.add("JR-3", of -> of.withName("Alder"));
        useWithoutScript();
        open("/journal");
        var line = line("Added JR-3");
        line.locator("summary").click();
        line.getByText("What changed").click();
        assertThat(page().locator("h1")).hasText("Added JR-3");
        assertThat(page().locator(".differences")).containsText("Alder");
    }

    @Test
    void a_long_journal_is_turned_page_by_page() {
        var stock = new Stock(bean(Holding.class));
        for (int i = 0; i < 45; i++) {
            stock.add("JR-P" + i, of -> of);
        }
        open("/journal");
        assertThat(page().locator(".history > li")).hasCount(40);
        page().getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Older")).click();
        assertThat(line("Added JR-P0")).isVisible();
        assertThat(line("Added JR-P44")).hasCount(0);
    }

    @Test
    void a_change_that_never_was_is_not_found() {
        open("/journal/999999999");
        assertThat(page().locator("main")).containsText("There is no such change in the journal.");
    }

    private Locator line(String what) {
        return page().locator(".history > li")
                .filter(
                        new Locator.FilterOptions()
                                .setHas(
                                        page().getByText(
                                                        what,
                                                        new Page.GetByTextOptions()
                                                                .setExact(true))));
    }

    private Locator undo(String what) {
        return page().getByRole(
                        AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Undo: " + what + ","))
                .first();
    }
}
