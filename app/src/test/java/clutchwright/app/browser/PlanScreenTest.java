package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/// The plan of a season in a house of its own: from the price list to pairings that are taken up.
class PlanScreenTest extends OwnHouse {

    private static final String PRICES =
            """
            Clown: 300; 4 a year, then 100
            0.1 Clown: 400
            het Clown: 30
            Normal: 20
            """;

    @Test
    void an_empty_house_is_told_what_a_plan_needs() {
        visit("/season/plan");
        assertThat(page().locator(".empty")).containsText("price list");
        assertThat(button("Work it out")).hasCount(0);
        inspect("plan-empty");
    }

    @Test
    void a_price_list_with_faults_says_where_and_is_not_saved() {
        visit("/season/plan/prices");
        page().getByLabel("One price a line")
                .fill(
                        "Clown: 300\nClown 200\nClwn: 5\nhet Clown Piebald: 4\nPastel: 9; 3 a year, then 12\nclown: 1");
        button("Save").click();
        var faults = page().locator(".faults");
        assertThat(faults).containsText("Line 2: write what it shows");
        assertThat(faults).containsText("Line 4: give a het a line of its own");
        assertThat(faults).containsText("Line 5: later ones cannot sell for more");
        assertThat(faults).containsText("Line 6: this has a price already");
        inspect("plan-prices-faulty");
        visit("/season/plan/prices");
        assertThat(page().getByLabel("One price a line")).hasValue("");
    }

    @Test
    void a_plan_is_worked_out_bent_compared_and_taken_up() {
        var stock = new Stock(holding());
        var fen = stock.female("F-1", "het Clown");
        stock.female("F-2", "Clown");
        stock.female("F-3", "Spider");
        stock.male("M-1", "Clown");
        stock.male("M-2", "Normal");
        var young = stock.add("F-9", of -> of.withSex(clutchwright.engine.genetics.Sex.FEMALE));
        stock.said(young.id(), "Pastel");

        visit("/season/plan/prices");
        page().getByLabel("One price a line").fill(PRICES);
        button("Save").click();
        assertThat(page().locator(".flash")).containsText("4 prices");
        visit("/season/plan");
        inspect("plan-none");
        workOut();

        assertThat(page().locator(".sum")).containsText("Proven");
        assertThat(row("F-1")).containsText("M-1");
        assertThat(row("F-2")).containsText("M-1");
        // A caution about what the pairing gives is no matter of price.
        assertThat(page().locator("main")).containsText("because of a caution");
        assertThat(page().locator(".by-female > li").filter(having("F-3")))
                .containsText("without a male");
        inspect("plan");

        row("F-1")
                .getByRole(AriaRole.LINK, new Locator.GetByRoleOptions().setName("Why him?"))
                .click();
        // Half of a het's and a visual's young are visual, half of these female.
        var clown = page().locator("tr", new Page.LocatorOptions().setHasText("0.1 Clown"));
        assertThat(clown).containsText("25 %");
        assertThat(page().locator("main")).containsText("M-1 is worth most with F-1 by himself");
        inspect("plan-pair");

        page().getByRole(AriaRole.LINK, named("M-2")).last().click();
        button("What would he cost instead?").click();
        assertThat(page().locator(".total")).containsText("F-1 × M-2 in any case costs");
        visit("/season/plan");
        row("F-2")
                .getByRole(AriaRole.LINK, new Locator.GetByRoleOptions().setName("Why him?"))
                .click();
        button("Forbid it").click();
        assertThat(page().locator(".flash")).containsText("F-2 × M-1 is forbidden");

        visit("/season/plan");
        workOut();
        assertThat(page().locator(".sum h2")).containsText("Plan 2");
        assertThat(row("F-2")).containsText("M-2");
        button("Compare").click();
        assertThat(page().locator("tr").filter(having("F-2"))).containsText("M-1");
        assertThat(page().locator("tr").filter(having("F-1"))).hasCount(0);
        inspect("plan-compare");

        visit("/season/plan");
        page().getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(Pattern.compile("Take it up")))
                .click();
        assertThat(page().locator(".flash")).containsText("Plan 2 is taken up");
        assertThat(page().locator(".pairings > li")).hasCount(3);
        button("Undo").click();
        visit("/season");
        assertThat(page().locator(".pairings > li")).hasCount(0);
        visit("/collection/" + fen.id());
        assertThat(page().locator("h1")).containsText("F-1");
    }

    @Test
    void what_speaks_against_a_pair_is_overruled_in_writing_or_not_at_all() {
        var stock = new Stock(holding());
        stock.female("F-1", "Spider");
        stock.male("M-1", "Clown");
        visit("/season/plan/prices");
        page().getByLabel("One price a line").fill("Normal: 20");
        button("Save").click();
        visit("/season/plan");
        workOut();
        assertThat(row("F-1")).containsText("without a male");
        page().locator(".matrix td a").first().click();
        assertThat(page().locator(".cautions")).containsText("young of this pairing");
        button("Overrule for this pair").click();
        assertThat(page().getByText("Write why it is to be made")).isVisible();
        inspect("plan-overrule");
        page().getByLabel("Why it may be made all the same").fill("Her last season, no young kept");
        button("Overrule for this pair").click();
        assertThat(page().locator(".flash")).containsText("overruled");
        visit("/season/plan");
        workOut();
        assertThat(row("F-1")).containsText("overruled: Her last season, no young kept");
        assertThat(row("F-1")).containsText("M-1");
    }

    @Test
    void rules_that_make_no_sense_are_refused_and_others_are_kept_to() {
        var stock = new Stock(holding());
        stock.female("F-1", "Clown");
        stock.female("F-2", "Clown");
        stock.male("M-1", "Clown");
        visit("/season/plan/prices");
        page().getByLabel("One price a line").fill("Clown: 300");
        button("Save").click();
        visit("/season/plan/rules");
        page().getByLabel("Females of a male at most").fill("0");
        page().getByLabel("Clutches at most").fill("many");
        button("Save").click();
        assertThat(page().locator(".field.faulty")).hasCount(2);
        inspect("plan-rules");
        page().getByLabel("Females of a male at most").fill("1");
        page().getByLabel("Clutches at most").fill("");
        page().getByLabel("Egg boxes that fit").fill("9");
        button("Save").click();
        workOut();
        assertThat(page().locator(".by-female .by")).hasCount(1);
        assertThat(page().locator(".weeks .limit")).hasCount(1);
    }

    private void workOut() {
        page().getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(Pattern.compile("^Work it out")))
                .click();
        assertThat(page().locator("section.sum")).isVisible();
    }

    private Locator row(String dam) {
        return page().locator(".by-female > li").filter(having(dam));
    }

    private static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }
}
