package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.engine.genetics.Sex;
import clutchwright.records.checks.Questions;
import clutchwright.records.pairings.PairingId;
import clutchwright.records.pairings.Pairings;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/// The pairings of a season, from the plan until the female lays.
class SeasonScreenTest extends Browsing {

    @Test
    void a_pair_is_planned_from_its_prediction_and_followed_until_she_is_to_lay() {
        var dam = stock().enter("SE-1", "Hazel", Sex.FEMALE, "Pastel het Clown");
        var sire = stock().enter("SE-2", "", Sex.MALE, "Clown");

        // The keeper likes what the pairing gives.
        open("/season/predict?dam=%s&sire=%s".formatted(dam, sire));
        page().getByText(Pattern.compile("Plan this pairing for \\d{4}")).click();
        assertThat(page().getByRole(AriaRole.STATUS)).containsText("SE-1 × SE-2 is planned for");
        assertThat(page().locator(".flash button")).hasText("Undo");
        var pairing = pairing("SE-1", "SE-2");
        assertThat(pairing).containsText("Planned");
        assertThat(pairing).containsText("het Clown");

        // Nobody weighed them.
        pairing.getByText("Before pairing").click();
        assertThat(pairing.locator(".ready")).containsText("SE-1 was never weighed.");

        // They meet, and lock.
        press(pairing, "Put together");
        assertThat(page().getByRole(AriaRole.STATUS)).containsText("SE-1 × SE-2: together from");
        assertThat(pairing.locator(".stage")).hasText(Pattern.compile("Together · .*, today"));
        press(pairing, "Lock seen");
        assertThat(pairing.locator(".stage")).hasText(Pattern.compile("Locked · .*, today"));
        inspect("season");

        // She ovulates, is left alone, and sheds before she lays.
        press(pairing, "Ovulation");
        assertThat(pairing.locator(".stage")).containsText("Ovulation seen");
        press(pairing, "Separated");
        press(pairing, "Pre-lay shed");
        assertThat(pairing.locator(".stage")).containsText("Pre-lay shed seen");
        assertThat(pairing.locator(".expected"))
                .containsText(Pattern.compile("Expected to lay about .*; 9 in 10 between"));
        pairing.getByText("Why then?").click();
        assertThat(pairing.locator(".because")).containsText("She shed before laying on");
        assertThat(pairing.getByText("Laid …"))
                .hasAttribute("href", Pattern.compile("/eggs/new\\?pairing=\\d+"));

        // Her row of the season at a glance says all of it.
        page().getByText("At a glance").click();
        assertThat(
                        page().locator(".glance-line", new Page.LocatorOptions().setHasText("SE-1"))
                                .first()
                                .locator(".season-row"))
                .hasAttribute(
                        "aria-label",
                        Pattern.compile(
                                "together from .*, lock .*, ovulation .*, pre-lay shed .*, expected to lay between"));
        inspect("season-glance");
        page().goBack();

        // The prediction knows that the pair is in the season.
        pairing.getByText("What it gives").click();
        assertThat(page().locator(".decide")).containsText("Already in the season");
    }

    /// Also where the clutch counts in another season, as a late one may.
    @Test
    void a_pairing_whose_female_has_laid_leads_to_her_clutch() {
        planned("SE-23", "SE-24");
        var pairing = pairing("SE-23", "SE-24");
        press(pairing, "Put together");
        var id = pairing.getByText("Laid …").getAttribute("href").replaceAll(".*=", "");
        stock().layOf(Long.parseLong(id), 5, 1);
        page().reload();

        assertThat(pairing.locator(".stage")).containsText("Laid");
        assertThat(pairing.getByText(Pattern.compile("Clutch .*, laid")))
                .hasAttribute("href", Pattern.compile("/eggs/\\d+"));
        assertThat(pairing.locator("form")).hasCount(0);
        pairing.getByText("Change").click();
        assertThat(page().locator("main")).containsText("it stays in the season");
    }

    @Test
    void a_season_without_pairings_says_how_to_begin() {
        open("/season?season=2019");

        assertThat(page().locator(".empty")).containsText("No pairing is planned for 2019.");
        assertThat(page().locator(".empty a")).hasAttribute("href", "/season/predict");
        inspect("season-empty");
    }

    @Test
    void the_day_can_be_another_than_today() {
        planned("SE-3", "SE-4");
        var pairing = pairing("SE-3", "SE-4");
        var day = holding().today().minusDays(12);
        pairing.locator("input[type=date]").fill(day.toString());
        press(pairing, "Put together");

        assertThat(pairing.locator(".stage")).containsText("12 days ago");
    }

    @Test
    void a_sign_before_they_met_is_refused_beside_its_day_and_nothing_is_written() {
        planned("SE-5", "SE-6");
        var pairing = pairing("SE-5", "SE-6");
        press(pairing, "Put together");
        var before = holding().today().minusDays(3).toString();
        pairing.locator("input[type=date]").fill(before);
        press(pairing, "Ovulation");

        assertThat(pairing.locator(".fault")).containsText("before the day they were put together");
        assertThat(pairing.locator("input[type=date]")).hasValue(before);
        assertThat(pairing.locator(".stage")).containsText("Together");
        inspect("season-faulty");
    }

    @Test
    void a_day_in_the_far_future_is_refused() {
        planned("SE-7", "SE-8");
        var pairing = pairing("SE-7", "SE-8");
        pairing.locator("input[type=date]").fill("2090-01-01");
        press(pairing, "Lock seen");

        assertThat(pairing.locator(".fault")).containsText("still to come");
        assertThat(pairing.locator(".stage")).hasText("Planned");
    }

    @Test
    void a_male_as_dam_and_an_unknown_sire_are_both_told_at_their_fields() {
        stock().enter("SE-9", "", Sex.MALE, "Clown");
        plan("SE-9", "Nobody");
        assertThat(page().locator("#sireTag-fault"))
                .hasText("No animal has the tag or the name “Nobody”.");
        assertThat(page().locator("#damTag")).hasValue("SE-9");

        stock().enter("SE-10", "", Sex.MALE, "Clown");
        plan("SE-9", "SE-10");
        assertThat(page().locator("#damTag-fault"))
                .hasText("SE-9 is a male, so he cannot be the dam.");
    }

    @Test
    void the_same_pair_twice_in_a_season_is_refused() {
        planned("SE-11", "SE-12");
        plan("SE-11", "SE-12");

        assertThat(page().locator("#damTag-fault"))
                .hasText(Pattern.compile("This pair is in the season \\d{4} already\\."));
    }

    @Test
    void of_an_animal_not_sexed_yet_the_keeper_is_asked() {
        stock().enterUnsexed("SE-13");
        stock().enter("SE-14", "", Sex.MALE, "Clown");
        plan("SE-13", "SE-14");

        assertThat(page().locator("#plan .care"))
                .containsText("The sex of SE-13 is not on record.");
        page().getByLabel("Yes, plan it").check();
        page().getByRole(AriaRole.BUTTON, named("Plan it")).click();
        assertThat(page().getByRole(AriaRole.STATUS)).containsText("SE-13 × SE-14 is planned");
    }

    @Test
    void a_pairing_is_changed_and_taken_out_of_the_season() {
        planned("SE-15", "SE-16");
        pairing("SE-15", "SE-16").getByText("Change").click();
        page().getByLabel("Notes").fill("Second year together.");
        page().getByLabel("Put together").fill(holding().today().minusDays(1).toString());
        page().getByRole(AriaRole.BUTTON, named("Save")).click();
        var pairing = pairing("SE-15", "SE-16");
        assertThat(pairing).containsText("Second year together.");
        assertThat(pairing.locator(".stage")).containsText("yesterday");

        press(pairing, "Lock seen");
        pairing.getByText("Change").click();
        inspect("season-pairing");
        page().getByRole(AriaRole.BUTTON, named("Remove Lock, ", false)).click();
        assertThat(page().locator("main")).containsText("None yet.");

        page().getByText("Take this pairing out of the season").click();
        assertThat(page().getByRole(AriaRole.STATUS))
                .containsText("SE-15 × SE-16 is no longer in the season");
        assertThat(page().locator(".flash button")).hasText("Undo");
        assertThat(pairing("SE-15", "SE-16")).hasCount(0);
    }

    @Test
    void separated_before_they_met_is_refused_and_kept_as_typed() {
        planned("SE-17", "SE-18");
        pairing("SE-17", "SE-18").getByText("Change").click();
        page().getByLabel("Put together").fill(holding().today().minusDays(2).toString());
        page().getByLabel("Separated").fill(holding().today().minusDays(9).toString());
        page().getByRole(AriaRole.BUTTON, named("Save")).click();

        assertThat(page().locator("#separated-fault")).containsText("before");
        assertThat(page().locator("#separated"))
                .hasValue(holding().today().minusDays(9).toString());
    }

    @Test
    void two_people_who_change_one_pairing_lose_nothing() {
        planned("SE-19", "SE-20");
        pairing("SE-19", "SE-20").getByText("Change").click();
        page().getByLabel("Notes").fill("Mine.");

        // Meanwhile, at the other station.
        var id = Long.parseLong(page().url().replaceAll(".*/", ""));
        holding()
                .database()
                .write(
                        holding().author(),
                        "Notes",
                        tx -> {
                            var pairings = new Pairings(tx);
                            var theirs = pairings.thePairing(new PairingId(id));
                            return pairings.update(theirs.withNotes("Theirs."), Questions.ASK);
                        });
        page().getByRole(AriaRole.BUTTON, named("Save")).click();

        assertThat(page().getByRole(AriaRole.ALERT)).containsText("Notes: Theirs.");
        assertThat(page().getByLabel("Notes")).hasValue("Mine.");
        page().getByRole(AriaRole.BUTTON, named("Save")).click();
        assertThat(pairing("SE-19", "SE-20")).containsText("Mine.");
    }

    @Test
    void a_pairing_is_planned_without_script_and_without_a_mouse() {
        stock().enter("SE-21", "", Sex.FEMALE, "Clown");
        stock().enter("SE-22", "", Sex.MALE, "Clown");
        useWithoutScript();
        open("/season");
        page().locator(".planning summary").focus();
        page().keyboard().press("Enter");
        page().locator("#damTag").focus();
        page().keyboard().type("SE-21");
        page().keyboard().press("Tab");
        page().keyboard().type("SE-22");
        page().keyboard().press("Enter");
        var pairing = pairing("SE-21", "SE-22");
        assertThat(pairing.locator(".stage")).hasText("Planned");
        pairing.getByText("Put together").focus();
        page().keyboard().press("Enter");
        assertThat(pairing.locator(".stage")).containsText("Together");
    }

    @Test
    void a_pairing_that_is_gone_is_said_to_be_gone() {
        open("/season/pairings/999999");
        assertThat(page().locator("h1")).hasText("Not found");
    }

    private void planned(String damTag, String sireTag) {
        stock().enter(damTag, "", Sex.FEMALE, "Pastel");
        stock().enter(sireTag, "", Sex.MALE, "Clown");
        plan(damTag, sireTag);
    }

    private void plan(String damTag, String sireTag) {
        open("/season");
        if (!page().locator("#damTag").isVisible()) {
            page().locator(".planning summary").click();
        }
        page().locator("#damTag").fill(damTag);
        page().locator("#sireTag").fill(sireTag);
        page().getByRole(AriaRole.BUTTON, named("Plan it")).click();
    }

    private Locator pairing(String damTag, String sireTag) {
        return page().locator(".pairings > li")
                .filter(new Locator.FilterOptions().setHas(link(damTag)))
                .filter(new Locator.FilterOptions().setHas(link(sireTag)));
    }

    private Locator link(String tag) {
        return page().getByRole(AriaRole.LINK, named(tag));
    }

    private void press(Locator pairing, String button) {
        tap(
                pairing.getByRole(
                        AriaRole.BUTTON,
                        new Locator.GetByRoleOptions().setName(button).setExact(true)));
    }

    private static Page.GetByRoleOptions named(String name) {
        return named(name, true);
    }

    private static Page.GetByRoleOptions named(String name, boolean exact) {
        return new Page.GetByRoleOptions().setName(name).setExact(exact);
    }

    private Holding holding() {
        return bean(Holding.class);
    }

    private SeasonStock stock() {
        return new SeasonStock(holding());
    }
}
