package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.checks.Questions;
import clutchwright.records.husbandry.Happening;
import clutchwright.records.pairings.Pairings;
import com.microsoft.playwright.Route;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/// Entries made while the network is worse than gone: it hangs, or the house answers with faults.
class WaitingTroubleTest extends Waiting {

    @Override
    protected boolean expects(String text) {
        // The house's own faults, which a test has made.
        return super.expects(text)
                || text.startsWith(
                        "Failed to load resource: the server responded with a status of 500");
    }

    @Test
    void a_weight_typed_without_a_signal_is_sent_once_it_is_back() {
        var dam = paired("TROUBLE-F1", "TROUBLE-M1");
        use(Device.PHONE);
        open("/today/round");
        cut(true);
        page().getByLabel("Weight of TROUBLE-F1").fill("1812");
        page().getByLabel("TROUBLE-F1 is weighed").click();
        waits(1);
        cut(false);

        assertThat(page().locator("aside.waiting [role=status], .flash").first())
                .containsText("TROUBLE-F1 weigh");
        assertThat(of(dam))
                .singleElement()
                .isInstanceOfSatisfying(
                        Happening.Weighing.class,
                        weighing -> assertThat(weighing.grams()).isEqualTo(1812));
    }

    /// The house took it, and its answer never came: what is sent again counts once.
    @Test
    void a_network_that_hangs_is_given_up_and_the_entry_counts_once() {
        var dam = paired("TROUBLE-F2", "TROUBLE-M2");
        use(Device.PHONE);
        open("/today/round");
        var asked = new AtomicInteger();
        page().route(
                        "**/today/weights/*",
                        route -> {
                            if (asked.getAndIncrement() == 0) {
                                // It arrives, and nothing comes back: the page waits in vain.
                                route.fetch();
                            } else {
                                route.resume();
                            }
                        });
        page().getByLabel("Weight of TROUBLE-F2").fill("1790");
        page().getByLabel("TROUBLE-F2 is weighed").click();

        // After twelve seconds it is kept here, and tried again by itself.
        page().waitForCondition(() -> asked.get() >= 2);
        assertThat(strip().locator("li")).hasCount(0);
        assertThat(of(dam)).hasSize(1);
    }

    @Test
    void what_the_house_cannot_take_three_times_is_set_aside_and_does_not_hold_up_the_others() {
        var first = paired("TROUBLE-F3", "TROUBLE-M3");
        var second = paired("TROUBLE-F4", "TROUBLE-M4");
        use(Device.PHONE);
        open("/today/round");
        page().route(
                        "**/today/weights/" + first.value(),
                        route ->
                                route.fulfill(
                                        new Route.FulfillOptions()
                                                .setStatus(500)
                                                .setContentType("text/html")
                                                .setBody(
                                                        "<main id=main><h1>Something went wrong</h1></main>")));
        cut(true);
        weigh("TROUBLE-F3", "1700");
        waits(1);
        weigh("TROUBLE-F4", "1800");
        waits(2);
        cut(false);

        assertThat(strip().locator("summary")).hasText("Refused (1)");
        assertThat(strip().locator("li")).containsText("Something went wrong");
        inspectHere("waiting-set-aside");
        assertThat(of(first)).isEmpty();
        assertThat(of(second)).hasSize(1);

        strip().getByText("Discard").first().click();
        strip().getByText("Yes, discard").click();
        assertThat(strip().locator("li")).hasCount(0);
    }

    private void weigh(String tag, String grams) {
        page().getByLabel("Weight of " + tag).fill(grams);
        page().getByLabel(tag + " is weighed").click();
    }

    private AnimalId paired(String damTag, String sireTag) {
        var dam = stock().female(damTag, "Pastel").id();
        var sire = stock().male(sireTag, "Clown").id();
        var today = bean(Holding.class).today();
        Written.to(
                bean(Holding.class),
                "Paired",
                tx -> {
                    var pairings = new Pairings(tx);
                    var planned =
                            pairings.plan(today.getYear(), dam, sire, "", Questions.ALL_THE_SAME)
                                    .theSaved();
                    return pairings.update(
                                    planned.begun(today.minusDays(9)), Questions.ALL_THE_SAME)
                            .theSaved();
                });
        return dam;
    }
}
