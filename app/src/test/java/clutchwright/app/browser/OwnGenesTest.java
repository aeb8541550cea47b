package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.engine.genetics.LocusId;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.file.Files;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;

/// Genes of the keeper's own: begun, used, changed, kept from being lost.
class OwnGenesTest extends Browsing {

    private static final String REGIUS = "/catalogue/python-regius";

    @Test
    void a_new_gene_is_typed_predicted_and_cannot_be_removed_while_an_animal_has_it() {
        addGene("Emberling", "emblg");
        assertThat(page().locator("h1")).hasText("Emberling");
        assertThat(page().locator("main")).containsText("Not proven; common practice, no source.");
        assertThat(page().locator("main")).containsText("Recessive: one copy does not show");
        inspect("catalogue-own-gene");

        open("/collection/new");
        page().locator(".gene-field input").first().fill("het emblg");
        assertThat(page().locator(".reading .genes").first()).containsText("Emberling");

        var stock = new Stock(bean(Holding.class));
        var dam = stock.female("GENE-1", "het Emberling");
        var sire = stock.male("GENE-2", "het Emberling");
        open("/season/predict?dam=" + dam.id().value() + "&sire=" + sire.id().value());
        // Mendel's second generation: one in four of two hets is visual.
        assertThat(page().locator("main")).containsText("Emberling");
        assertThat(page().locator("main")).containsText("1/4");

        open(REGIUS + "/emberling");
        press("Remove this gene");
        assertThat(page().getByRole(AriaRole.ALERT)).containsText("animals need it");
        assertThat(page().getByRole(AriaRole.ALERT)).containsText("GENE-1");
        assertThat(page().getByRole(AriaRole.ALERT)).containsText("GENE-2");
        inspect("catalogue-own-in-use");

        // A new name would leave the animals without theirs.
        open(REGIUS + "/emberling/edit");
        page().locator("summary")
                .filter(new Locator.FilterOptions().setHasText("Emberling"))
                .first()
                .click();
        page().locator("#a0-head").fill("Cinderling");
        press("Save");
        assertThat(page().getByRole(AriaRole.ALERT).first()).containsText("animals need it");
    }

    @Test
    void what_nothing_uses_is_removed_and_can_be_had_back() {
        addGene("Passing Fancy", "");
        press("Remove this gene");
        assertThat(page().locator(".flash")).containsText("The gene Passing Fancy is removed.");
        assertThat(page().locator("#loci")).not().containsText("Passing Fancy");

        page().locator(".flash").getByRole(AriaRole.BUTTON).click();
        open(REGIUS + "/passing-fancy");
        assertThat(page().locator("h1")).hasText("Passing Fancy");
        press("Remove this gene");
        open(REGIUS + "/passing-fancy");
        assertThat(page().locator("h1")).hasText("Not found");
    }

    @Test
    void an_allele_is_added_to_a_series_and_the_series_can_be_had_back_as_it_came() {
        open(REGIUS + "/enchi/edit");
        page().getByText("The place itself").click();
        inspect("catalogue-edit");
        page().getByText("Another allele").click();
        page().locator("#a1-head").fill("Enchora");
        page().locator("fieldset")
                .filter(new Locator.FilterOptions().setHas(page().locator("[name=a1-mode]")))
                .getByLabel("Dominant: one copy shows, two are not known")
                .check();
        press("Save");

        assertThat(page().locator("table.pairs")).containsText("Enchora");
        assertThat(page().locator("table.pairs")).containsText("Super Enchi");
        assertThat(page().locator(".over")).containsText("changed by you");

        press("Back to the text that comes with Clutchwright");
        assertThat(page().locator(".flash")).containsText("Enchi reads as it comes again.");
        assertThat(page().locator("table.pairs")).not().containsText("Enchora");
    }

    @Test
    void a_name_that_is_taken_is_refused_at_its_field_and_what_was_typed_stays() {
        open(REGIUS + "/new");
        page().locator("#a0-head").fill("Pied");
        page().locator("#a0-note").fill("Quite another thing");
        press("Add the gene");
        assertThat(page().locator("#a0-head-fault"))
                .containsText("which stands for something else");
        assertThat(page().locator("#a0-note")).hasValue("Quite another thing");
        inspect("catalogue-new-faulty");

        page().locator("#a0-head").fill("");
        press("Add the gene");
        assertThat(page().locator("#a0-head-fault")).containsText("Write what it is called.");
    }

    @Test
    void every_fault_of_a_text_is_shown_at_its_line() {
        open(REGIUS + "/new/text");
        page().locator("#text")
                .fill(
                        """
                        locus faulty-one
                          title     Faulty
                          inherits  sideways
                          allele Faulty
                            mode      recesive
                          form Faulty/Nothing
                            name      Super Faulty
                        """);
        press("Save");
        var faults = page().locator(".text-faults li");
        assertThat(faults).hasCount(3);
        assertThat(faults.nth(0)).containsText("Line 3");
        assertThat(faults.nth(1)).containsText("Line 5");
        assertThat(faults.nth(1)).containsText("recessive");
        assertThat(faults.nth(2)).containsText("Line 6");
        assertThat(page().locator("#text")).hasValue(Pattern.compile("sideways"));
        inspect("catalogue-text-faulty");
    }

    @Test
    void a_text_that_somebody_else_changed_meanwhile_is_not_overwritten_unseen() {
        addGene("Twohands", "");
        open(REGIUS + "/twohands/text");
        var other = page().context().newPage();
        other.navigate(address(REGIUS + "/twohands/edit"));
        other.getByText("The place itself").click();
        other.locator("#note").fill("Seen by the other hand");
        other.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Save").setExact(true))
                .click();
        assertThat(other.locator(".flash")).containsText("Saved.");

        press("Save");
        assertThat(page().getByRole(AriaRole.ALERT)).containsText("Changed by somebody else");
        assertThat(page().getByRole(AriaRole.ALERT)).containsText("Seen by the other hand");
        inspect("catalogue-conflict");
    }

    @Test
    void all_of_it_works_without_script() {
        useWithoutScript();
        open("/catalogue");
        page().locator("#name").fill("pied");
        page().getByRole(AriaRole.SEARCH, new Page.GetByRoleOptions().setName("Genes"))
                .getByRole(AriaRole.BUTTON)
                .click();
        assertThat(page().locator(".guide li")).hasCount(1);

        open(REGIUS + "/new");
        page().locator("#a0-head").fill("Plainhand");
        page().getByLabel("Incomplete dominant: one copy shows").check();
        page().locator("#f0-viability").fill("0");
        page().locator("#f0-viability-standing").selectOption("likely");
        page().locator("#c0-head").selectOption("eyes");
        page().getByLabel("Animals with two copies").check();
        page().locator("#c0-words").fill("Small eyes. # Ask a veterinarian.");
        press("Add the gene");

        assertThat(page().locator(".flash").getByRole(AriaRole.BUTTON)).hasText("Undo");
        assertThat(page().locator("table.pairs")).containsText("Super Plainhand");
        assertThat(page().locator("table.pairs")).containsText("none lives (likely)");
        assertThat(page().locator(".care"))
                .containsText("Eyes: animals with two copies of Plainhand");
        assertThat(page().locator(".care")).containsText("Small eyes. # Ask a veterinarian.");

        // What the form shows of it is what was typed, and saving it unchanged changes nothing.
        page().getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Add or change"))
                .click();
        assertThat(page().locator("#c0-when")).hasValue("Plainhand x2");
        assertThat(page().locator("#f0-viability")).hasValue("0");
        press("Save");
        assertThat(page().locator("table.pairs")).containsText("none lives (likely)");
        press("Remove this gene");
        assertThat(page().locator(".flash")).containsText("removed");
    }

    @Test
    void a_series_of_many_forms_stays_as_it_is_when_its_form_is_saved_unchanged() {
        var holding = bean(Holding.class);
        var before = holding.catalogue("python-regius").model().theLocus(new LocusId("bel"));
        open(REGIUS + "/bel/edit");
        press("Save");
        Assertions.assertThat(
                        holding.catalogue("python-regius").model().theLocus(new LocusId("bel")))
                .isEqualTo(before);
        press("Back to the text that comes with Clutchwright");
    }

    @Test
    void own_genes_are_taken_along_as_text() throws IOException {
        addGene("Portable", "");
        open("/catalogue");
        Download download =
                page().waitForDownload(
                                () ->
                                        page().getByRole(
                                                        AriaRole.LINK,
                                                        new Page.GetByRoleOptions()
                                                                .setName(
                                                                        "Take your own genes along"))
                                                .click());
        Assertions.assertThat(Files.readString(download.path()))
                .contains("locus portable")
                .contains("allele Portable");
        Assertions.assertThat(
                        bean(Holding.class)
                                .catalogue("python-regius")
                                .species()
                                .findLocus(new LocusId("portable")))
                .isPresent();
    }

    private void addGene(String name, String also) {
        open(REGIUS + "/new?name=" + name.replace(" ", "+"));
        page().locator("#a0-also").fill(also);
        press("Add the gene");
        assertThat(page().locator(".flash")).containsText("Saved.");
    }

    private void press(String button) {
        page().getByRole(
                        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
    }
}
