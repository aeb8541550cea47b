package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.holding.Holding;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/// The guide to the genes, as a keeper reads it.
class CatalogueScreenTest extends Browsing {

    @Test
    void genes_are_found_as_one_types_by_any_of_their_names() {
        open("/catalogue");
        assertThat(heading("Complexes")).isVisible();
        assertThat(heading("Incomplete dominant and dominant")).isVisible();
        assertThat(heading("Recessive")).isVisible();
        assertThat(heading("Sex-linked")).isVisible();
        inspect("catalogue-guide");

        // Common practice, no source: 'pied' is what everybody writes for Piebald.
        name().fill("pied");
        assertThat(genes()).hasCount(1);
        assertThat(genes().first()).containsText("Piebald");
        assertThat(genes().first()).containsText("There under pied");
        assertThat(page()).hasURL(Pattern.compile("name=pied"));

        name().fill("bumblebee");
        assertThat(genes()).hasCount(0);
        assertThat(page().locator("#loci")).containsText("Pastel + Spider");

        name().fill("paradox");
        assertThat(page().locator("#loci")).containsText("Words that name no gene");

        name().fill("no such gene");
        assertThat(page().locator("#loci")).containsText("No gene and no trade name has");
        inspect("catalogue-nothing-found");
    }

    @Test
    void the_guide_says_how_many_animals_have_a_gene() {
        new Stock(bean(Holding.class)).female("CAT-1", "Monsoon");
        open("/catalogue?name=monsoon");
        assertThat(genes().first()).containsText("1 animal");

        page().getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Monsoon")).click();
        assertThat(page().locator("#animals + ul")).containsText("1 shows it");
        page().locator("#animals + ul a").click();
        assertThat(page().locator("table.animals")).containsText("CAT-1");
    }

    @Test
    void the_blue_eyed_series_shows_what_any_two_alleles_give() {
        open("/catalogue/python-regius/bel");
        // Common practice, no source.
        assertThat(cell("Mojave", "Lesser")).containsText("Blue-Eyed Leucistic");
        assertThat(cell("Lesser", "Mojave")).containsText("Blue-Eyed Leucistic");
        assertThat(cell("Lesser", "Mojave")).containsText("hides all other genes");
        assertThat(cell("Mojave", "Mojave")).containsText("Super Mojave");
        assertThat(cell("Mojave", "Special")).containsText("Crystal");
        assertThat(cell("Wild type", "Daddy")).containsText("Normal");
        assertThat(cell("Lesser", "Lesser")).containsText("care: eyes");
        assertThat(page().locator("#welfare ~ .care").first())
                .containsText("Eyes: animals with two copies of Lesser");
        inspect("catalogue-series");
    }

    @Test
    void a_pair_that_does_not_live_says_so_with_its_chance_and_standing() {
        open("/catalogue/python-regius/spider");
        assertThat(cell("Spider", "Spider")).containsText("none lives (likely)");
        assertThat(page().locator("main"))
                .containsText(
                        "Spider and Champagne together: none lives (disputed, not counted in"
                                + " figures).");
        inspect("catalogue-spider");
    }

    @Test
    void a_sex_linked_gene_is_explained_by_who_passes_it_to_whom() {
        open("/catalogue/python-regius/banana");
        assertThat(page().locator("main")).containsText("mostly to sons: a male maker");
        assertThat(page().locator("main")).containsText("In 1 of 20 young");
        inspect("catalogue-banana");
    }

    @Test
    void a_name_of_several_lines_asks_which() {
        open("/catalogue/python-regius/axanthic");
        assertThat(page().locator("main")).containsText("Which line?");
        page().getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Axanthic Line 2"))
                .click();
        assertThat(page().locator("h1")).hasText("Axanthic, line 2");
    }

    @Test
    void names_of_combinations_stand_on_a_page_of_their_own() {
        open("/catalogue/python-regius/names");
        assertThat(page().locator("main")).containsText("Pewter");
        assertThat(page().locator("main")).containsText("Ringer");
        inspect("catalogue-names");
    }

    @Test
    void the_standing_of_a_single_gene_is_its_own() {
        // Held so by the shipped file: that Enhancer is recessive is disputed.
        open("/catalogue?name=enhancer");
        assertThat(genes().first()).containsText("Recessive, disputed");
    }

    @Test
    void what_is_not_there_is_said() {
        open("/catalogue/python-regius/no-such-gene");
        assertThat(page().locator("h1")).hasText("Not found");
        open("/catalogue?species=no-such-snake");
        assertThat(page().locator("main"))
                .containsText("There is no catalogue named no-such-snake.");
    }

    private Locator cell(String row, String column) {
        var heads = page().locator("table.pairs thead th").allTextContents();
        return page().locator("table.pairs tbody tr")
                .filter(
                        new Locator.FilterOptions()
                                .setHas(
                                        page().locator(
                                                        "th",
                                                        new Page.LocatorOptions()
                                                                .setHasText(
                                                                        Pattern.compile(
                                                                                "^" + row + "$")))))
                .locator("td")
                .nth(heads.indexOf(column));
    }

    private Locator name() {
        return page().locator("#name");
    }

    private Locator genes() {
        return page().locator(".guide li");
    }

    private Locator heading(String text) {
        return page().getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setName(text));
    }
}
