package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.engine.genetics.Sex;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/// What a pairing gives, before it is made.
class PredictScreenTest extends Browsing {

    /// Mendel 1866, two characters: 9:3:3:1, of which he counted 315, 101, 108 and 32 among 556
    /// (as quoted by Morgan 1903, Evolution and Adaptation).
    @Test
    void two_hets_of_two_recessives_give_mendels_nine_three_three_one() {
        predict("het Clown het Piebald", "het Clown het Piebald");

        row("Normal", "9/16", "56.3 %");
        row("Clown", "3/16", "18.8 %");
        row("Piebald", "3/16", "18.8 %");
        row("Clown Piebald", "1/16", "6.25 %");
        assertThat(rows()).hasCount(4);
        assertThat(page().locator("#figures")).containsText("4 kinds can be told apart.");
        // 1 - (15/16)^6, in closed form.
        assertThat(rowOf("Clown Piebald")).containsText("32.1 %");
        inspect("predict-two-recessives");
    }

    /// A clutch by one female shares what she is: 2/3 (1 - (1/2)^6), not 1 - (2/3)^6.
    @Test
    void eggs_share_what_a_possible_het_turns_out_to_be() {
        predict("66% het Clown", "Clown");

        row("Clown", "1/3", "33.3 %");
        assertThat(rowOf("Clown")).containsText("65.6 %");
        assertThat(page().locator("#figures"))
                .containsText(
                        "Every hatchling carries Clown: one that does not show it is 100 % het.");
    }

    /// Males are XY in royal pythons and the gene crosses over between the two: Mallery & Carrillo
    /// 2016, Phyllomedusa 15(1):29-42. One cross-over in twenty: common practice, no source.
    @Test
    void a_male_maker_gives_mostly_sons_that_show_it() {
        predict("Normal", "Banana (male maker)");

        row("Banana", "1/2", "50 %");
        assertThat(rowOf("Banana")).containsText("males 95 %, females 5 %");
        assertThat(rowOf("Normal")).containsText("males 5 %, females 95 %");
    }

    /// The ratio of two to one that a gene leaves which kills in two copies: Castle & Little 1910,
    /// Science 32:868-870, on yellow mice.
    @Test
    void two_spiders_give_two_to_one_and_a_quarter_of_the_embryos_die() {
        predict("Spider", "Spider");

        row("Spider", "2/3", "66.7 %");
        row("Normal", "1/3", "33.3 %");
        assertThat(page().locator("#figures"))
                .containsText("Of all embryos 1/4 (25 %) do not live because of their genotype.");
        assertThat(page().locator("#figures .alarm small")).containsText("Super Spider");
    }

    @Test
    void cautions_stand_before_the_numbers_with_source_and_whom_they_concern() {
        predict("Spider", "Pastel Champagne");

        var cautions = page().getByRole(AriaRole.REGION, named("Cautions"));
        assertThat(cautions).containsText("Nerves and balance.");
        assertThat(cautions).containsText("Rose & Williams 2014");
        assertThat(cautions)
                .containsText("Concerns animals with Spider: the dam and young of this pairing.");
        assertThat(cautions).containsText("Ask a veterinarian");
        org.assertj.core.api.Assertions.assertThat(cautions.boundingBox().y)
                .isLessThan(page().locator("#figures").boundingBox().y);
        assertThat(page().getByText("follow your local law")).hasCount(1);
        inspect("predict-cautions");
    }

    /// Common practice, no source: whites of the Mojave and Lesser complex show nothing beside.
    @Test
    void a_white_hides_what_else_it_has() {
        predict("Mojave Pastel", "Lesser");

        var white = rowOf("Blue-Eyed Leucistic");
        assertThat(white).containsText("1/4");
        assertThat(white.locator("[data-label=Carries]")).containsText("Pastel 1/2");
    }

    @Test
    void a_combination_bears_its_trade_name() {
        predict("Pastel", "Spider");

        assertThat(rowOf("Pastel Spider").locator(".trade")).hasText("Bumblebee");
        assertThat(rowOf("Pastel").locator(".trade")).hasCount(0);
    }

    @Test
    void only_what_is_ticked_is_listed_with_its_total() {
        predict("het Clown het Piebald", "het Clown het Piebald");
        page().getByText("Show only with …").click();
        page().getByRole(AriaRole.GROUP, named("Must show")).first().getByLabel("Clown").check();
        page().getByRole(AriaRole.GROUP, named("Must show nothing of"))
                .getByLabel("Piebald")
                .check();

        assertThat(page().locator(".total")).containsText("Clown, nothing of Piebald");
        assertThat(page().locator(".total")).containsText("3/16 per egg (18.8 %)");
        // 1 - (13/16)^6, in closed form.
        assertThat(page().locator(".total")).containsText("71.2 % for at least one in 6 eggs");
        assertThat(rows()).hasCount(1);
        page().waitForURL(Pattern.compile("show=clown"));
        inspect("predict-filtered");
    }

    @Test
    void a_larger_clutch_is_asked_for_with_the_slider_or_the_number() {
        predict("het Clown", "het Clown");
        assertThat(page().locator("#eggs-basis")).containsText("A usual clutch");
        page().locator("#eggs").fill("10");

        // 1 - (3/4)^10, in closed form.
        assertThat(rowOf("Clown")).containsText("94.4 %");
        assertThat(page().locator("input[type=range]")).hasValue("10");
        page().locator("input[type=range]").press("ArrowRight");
        assertThat(page().locator("#eggs")).hasValue("11");
        assertThat(page().locator("#figures")).containsText("At least one in 11 eggs");
    }

    @Test
    void a_clutch_of_no_eggs_is_refused_beside_its_field_and_kept_as_typed() {
        open(
                "/season/predict?damLine=%s&sireLine=%s&eggs=none"
                        .formatted(url("het Clown"), url("Clown")));

        assertThat(page().locator("#eggs-fault"))
                .hasText("Write a whole number from 1 to 100, not “none”. The figures speak of 6.");
        assertThat(rows()).hasCount(2);
    }

    @Test
    void animals_of_the_collection_are_found_by_tag_or_name_and_her_own_clutches_count() {
        var dam = stock().enter("PR-1", "Wren", Sex.FEMALE, "Pastel het Clown");
        stock().enter("PR-2", "", Sex.MALE, "Clown");
        stock().lay(dam, 9, 1);
        open("/season/predict");
        inspect("predict-empty");
        page().locator("#damTag").fill("wren");
        page().locator("#sireTag").fill("pr-2");
        press("Predict");

        assertThat(page().locator("h1")).hasText("PR-1 × PR-2");
        row("Pastel Clown", "1/4", "25 %");
        assertThat(page().locator("#eggs")).hasValue("9");
        assertThat(page().locator("#eggs-basis"))
                .hasText("Her own mean is 9 good eggs, over 1 clutch.");
        inspect("predict-owned");
    }

    @Test
    void a_link_names_the_animals_by_their_numbers() {
        var dam = stock().enter("PR-3", "", Sex.FEMALE, "Piebald");
        var sire = stock().enter("PR-4", "", Sex.MALE, "het Piebald");
        open("/season/predict?dam=%s&sire=%s".formatted(dam, sire));

        assertThat(page().locator("h1")).hasText("PR-3 × PR-4");
        row("Piebald", "1/2", "50 %");
    }

    @Test
    void a_male_in_the_place_of_the_dam_is_named() {
        stock().enter("PR-5", "", Sex.MALE, "Piebald");
        open("/season/predict?damTag=PR-5&sireLine=Clown");

        assertThat(page().locator("#damTag-fault"))
                .hasText("PR-5 is a male, so he cannot be the dam.");
        assertThat(page().locator("#sireLine")).hasValue("Clown");
    }

    @Test
    void an_unknown_tag_and_a_bad_gene_line_are_both_told_with_place_and_near_names() {
        open("/season/predict?damTag=Nobody&sireLine=%s".formatted(url("Pastel Clwon")));

        assertThat(page().locator("#damTag-fault"))
                .hasText("No animal has the tag or the name “Nobody”.");
        assertThat(page().locator("#sireLine-fault")).containsText("Character 8");
        assertThat(page().locator("#sireLine-fault")).containsText("Clown");
        assertThat(page().locator("#sireLine")).hasValue("Pastel Clwon");
        inspect("predict-faulty");
    }

    @Test
    void three_sires_are_compared_side_by_side() {
        stock().enter("PR-6", "Fern", Sex.FEMALE, "Pastel het Clown het Piebald");
        stock().enter("PR-7", "", Sex.MALE, "Clown");
        stock().enter("PR-8", "", Sex.MALE, "Spider het Piebald");
        open(
                "/season/predict?damTag=PR-6&sireTag=PR-7&sireTag2=PR-8&sireLine3=%s&show=%s"
                        .formatted(url("Pastel 50% het Clown"), url("clown:Clown")));

        assertThat(page().locator("h1")).hasText("3 sires for PR-6");
        var sires = page().locator(".compared > section");
        assertThat(sires).hasCount(3);
        assertThat(sires.nth(0).locator(".total")).containsText("1/2");
        assertThat(sires.nth(1).locator(".total")).containsText("cannot come of it");
        assertThat(sires.nth(2).locator(".total")).containsText("1/8");
        assertThat(sires.nth(1)).containsText("Nerves and balance.");
        assertThat(sires.nth(0)).containsText("No welfare caution");
        inspect("predict-compared");
        sires.nth(1).getByText("All kinds with this sire").click();
        assertThat(page().locator("h1")).hasText("PR-6 × PR-8");
    }

    /// Wright 1922: the young of half siblings are inbred by 1/8, through their common parent.
    @Test
    void half_siblings_are_told_through_whom_their_young_would_be_inbred() {
        var stock = new Stock(bean(Holding.class));
        var sire = stock.male("PR-20", "Clown");
        var one = stock.female("PR-21", "Pastel");
        var other = stock.female("PR-22", "Pastel");
        var brother = stock.young("PR-23", one, sire, java.time.LocalDate.of(2024, 6, 1));
        var sister = stock.young("PR-24", other, sire, java.time.LocalDate.of(2024, 6, 2));
        open("/season/predict?dam=%s&sire=%s".formatted(sister.id(), brother.id()));

        var related = page().locator(".related");
        assertThat(related).containsText("1/8, that is 12.5 %");
        assertThat(related).containsText("as close as half-siblings’ young");
        assertThat(related.getByRole(AriaRole.LINK)).hasText("PR-20");
        assertThat(related).containsText("3 ancestors are on record");
        assertThat(related).containsText("Ask a veterinarian");
        inspect("predict-related");
    }

    /// Their dam is het at 1/2, so that each is at 1/4 but both at 1/8: one in 32 shows it, where
    /// strangers would give one in 64. Alleles nobody knows of add a little.
    @Test
    void siblings_who_may_be_het_are_judged_together() {
        var stock = new Stock(bean(Holding.class));
        var dam = stock.female("PR-30", "50% het Sunset");
        var sire = stock.male("PR-31", "Normal");
        var sister = stock.young("PR-32", dam, sire, java.time.LocalDate.of(2022, 6, 1));
        var brother = stock.young("PR-33", dam, sire, java.time.LocalDate.of(2022, 6, 1));
        for (var young : java.util.List.of(sister, brother)) {
            stock.seen(young.id(), "Normal", java.time.LocalDate.of(2022, 6, 3));
        }
        open("/season/predict?dam=%s&sire=%s".formatted(sister.id(), brother.id()));

        assertThat(page().locator("#figures")).containsText("judged together for Sunset");
        assertThat(rowOf("Sunset")).containsText(Pattern.compile("3\\.[12]\\d? %"));
        inspect("predict-together");
    }

    @Test
    void another_sire_is_added_to_a_prediction() {
        predict("het Clown", "Clown");
        page().getByText("Compare another sire").click();
        page().locator("#sireLine2").fill("het Clown");
        press("Predict");

        assertThat(page().locator("h1")).hasText("2 sires for het Clown");
        assertThat(page().locator(".compared > section")).hasCount(2);
    }

    @Test
    void a_dam_alone_asks_for_a_sire() {
        open("/season/predict?damLine=%s".formatted(url("het Clown")));

        assertThat(page().locator(".lead")).hasText("Now choose a sire for het Clown.");
        assertThat(page().locator("#damLine")).hasValue("het Clown");
    }

    @Test
    void genes_of_another_species_are_read_in_its_own_catalogue() {
        open("/season/predict");
        page().locator("#species").selectOption("pantherophis-guttatus");
        page().locator("#damLine").fill("Anerythristic");
        assertThat(page().locator("#damLine-reading .read-back")).hasText("Anery");
        page().locator("#sireLine").fill("het Anerythristic");
        press("Predict");

        row("Anery", "1/2", "50 %");
        assertThat(page().locator("#eggs")).hasValue("14");
    }

    @Test
    void a_long_cross_lists_the_hundred_likeliest_and_more_when_asked() {
        var many =
                "het Clown het Piebald het Genetic Stripe het Desert Ghost het Puzzle het Monsoon"
                        + " het Sunset het Rainbow het Paint";
        predict(many, many);

        inspect("predict-long");
        assertThat(rows()).hasCount(100);
        assertThat(page().locator("#figures")).containsText("the 100 likeliest are shown.");
        page().getByText("Show more").click();
        assertThat(page().locator("#figures")).not().containsText("the 100 likeliest");
    }

    @Test
    void it_works_without_script_and_without_a_mouse() {
        useWithoutScript();
        open("/season/predict");
        page().locator("#damLine").focus();
        page().keyboard().type("het Clown");
        page().locator("#sireLine").focus();
        page().keyboard().type("Clown");
        page().keyboard().press("Enter");

        row("Clown", "1/2", "50 %");
        page().locator("#eggs").fill("2");
        page().keyboard().press("Enter");
        // 1 - (1/2)^2, in closed form.
        assertThat(rowOf("Clown")).containsText("75 %");
    }

    private void predict(String dam, String sire) {
        open("/season/predict?damLine=%s&sireLine=%s".formatted(url(dam), url(sire)));
    }

    private Locator rows() {
        return page().locator(".kinds tbody tr");
    }

    private Locator rowOf(String name) {
        return page().locator(".kinds tbody tr[data-kind=\"%s\"]".formatted(name));
    }

    private void row(String name, String fraction, String percent) {
        assertThat(rowOf(name)).containsText(fraction);
        assertThat(rowOf(name)).containsText(percent);
    }

    private static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name).setExact(true);
    }

    private void press(String button) {
        page().getByRole(AriaRole.BUTTON, named(button)).click();
    }

    private SeasonStock stock() {
        return new SeasonStock(bean(Holding.class));
    }

    private static String url(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
