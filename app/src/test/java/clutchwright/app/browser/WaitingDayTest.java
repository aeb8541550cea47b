package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.husbandry.Husbandry;
import com.microsoft.playwright.Clock;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/// The day of what happened is the day of the tap, whenever the page was opened and the entry sent;
/// and what happens where a browser keeps nothing.
///
/// The page is made to be of yesterday, and the phone's clock to be set to yesterday, shortly
// before
/// midnight.
class WaitingDayTest extends Waiting {

    @Test
    void a_tap_before_midnight_that_is_sent_after_it_is_of_the_day_before() {
        var animal = hungry("DAY-1");
        shortlyBeforeMidnight();
        open("/?meals=all");
        cut(true);
        page().getByLabel("DAY-1 is fed").click();
        waits(1);
        page().clock().fastForward("05:00");
        cut(false);
        assertThat(strip().getByRole(AriaRole.STATUS)).containsText("Sent: DAY-1 fed.");
        assertThat(of(animal)).extracting(meal -> meal.on()).contains(yesterday());
    }

    @Test
    void a_tap_after_midnight_on_a_page_of_the_day_before_is_of_the_new_day() {
        var animal = hungry("DAY-2");
        shortlyBeforeMidnight();
        open("/collection/" + animal);
        assertThat(page().getByLabel("Day").first()).hasValue(yesterday().toString());
        page().clock().fastForward("05:00");
        button("Taken").click();
        assertThat(page().locator(".flash")).containsText("DAY-2 fed.");
        assertThat(of(animal)).extracting(meal -> meal.on()).contains(today());
    }

    @Test
    void a_day_that_was_chosen_stays_as_it_was_chosen() {
        var animal = hungry("DAY-3");
        shortlyBeforeMidnight();
        open("/collection/" + animal);
        var chosen = today().minusDays(9);
        page().locator("#fedOn").fill(chosen.toString());
        page().clock().fastForward("05:00");
        button("Taken").click();
        assertThat(page().locator(".flash")).containsText("DAY-3 fed.");
        assertThat(of(animal)).extracting(meal -> meal.on()).contains(chosen);
    }

    /// The phone's clock is a day behind: only how long the page was open counts.
    @Test
    void a_phone_with_a_wrong_date_writes_the_day_of_the_house() {
        var animal = hungry("DAY-4");
        page().clock()
                .install(new Clock.InstallOptions().setTime(yesterday().atTime(12, 0).toString()));
        open("/?meals=all");
        page().getByLabel("DAY-4 is fed").click();
        assertThat(page().locator(".flash")).containsText("DAY-4 is fed.");
        assertThat(of(animal)).extracting(meal -> meal.on()).contains(today());
    }

    @Test
    void a_browser_that_keeps_nothing_says_so_and_sends_as_ever() {
        var animal = hungry("DAY-5");
        page().addInitScript(
                        "Storage.prototype.setItem = () => { throw new DOMException('full',"
                                + " 'QuotaExceededError'); };");
        open("/collection/" + animal);
        assertThat(strip()).containsText("This browser keeps nothing for this page");
        inspect("waiting-blocked");
        cut(true);
        button("Taken").click();
        // The page is still there, and what was typed.
        assertThat(strip()).containsText("without a signal, what you tap is lost");
        cut(false);
        button("Taken").click();
        assertThat(page().locator(".flash")).containsText("DAY-5 fed.");
        assertThat(of(animal)).hasSize(2);
    }

    private AnimalId hungry(String tag) {
        var animal = stock().female(tag, "Pastel").id();
        Written.to(
                bean(Holding.class),
                "Fed",
                tx ->
                        new Husbandry(tx)
                                .feed(animal, tx.today().minusDays(41), "pup", true, "")
                                .theSaved());
        return animal;
    }

    private void shortlyBeforeMidnight() {
        var yesterday = yesterday().toString();
        var today = today().toString();
        page().route(
                        url -> url.contains("/collection/") || url.contains("meals=all"),
                        route -> {
                            if (route.request().method().equals("GET")) {
                                var answer = route.fetch();
                                route.fulfill(
                                        new Route.FulfillOptions()
                                                .setResponse(answer)
                                                .setBody(answer.text().replace(today, yesterday)));
                            } else {
                                route.resume();
                            }
                        });
        page().clock().install(new Clock.InstallOptions().setTime(yesterday + "T23:58:00"));
    }

    private LocalDate today() {
        return bean(Holding.class).today();
    }

    private LocalDate yesterday() {
        return today().minusDays(1);
    }
}
