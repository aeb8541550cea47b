package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.husbandry.Happening;
import clutchwright.records.husbandry.Husbandry;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/// A phone in the snake room, with the network really cut: what is tapped is on record once.
class WaitingTest extends Waiting {

    @Test
    void what_is_tapped_without_a_signal_is_kept_shown_and_sent_once() {
        var animal = stock().female("WAIT-1", "Pastel");
        use(Device.PHONE);
        open("/collection/" + animal.id());
        cut(true);
        page().getByLabel("Weight", new Page.GetByLabelOptions().setExact(true)).fill("1450");
        button("Weigh").click();

        waits(1);
        assertThat(strip().getByRole(AriaRole.STATUS)).hasText(noSignal());
        assertThat(page().locator(".waits-here")).containsText("WAIT-1 weighed: 1450 g");
        assertThat(of(animal.id())).isEmpty();
        // The field is free for the next one.
        assertThat(page().getByLabel("Weight", new Page.GetByLabelOptions().setExact(true)))
                .hasValue("");
        strip().locator("summary").click();
        assertThat(strip().locator("li")).hasCount(1);
        assertThat(strip().locator("li")).containsText("WAIT-1 weighed: 1450 g");

        cut(false);
        assertThat(strip().getByRole(AriaRole.STATUS)).hasText("Sent: WAIT-1 weighed: 1450 g.");
        assertThat(strip().locator("li")).hasCount(0);
        assertThat(page().locator(".waits-here")).hasCount(0);
        assertThat(of(animal.id())).hasSize(1);
        page().getByText("Show the page as it is now").click();
        assertThat(strip()).isHidden();
        assertThat(of(animal.id())).hasSize(1);
    }

    @Test
    void it_waits_over_the_closing_of_the_page_and_is_sent_when_any_page_opens() {
        var animal = stock().female("WAIT-2", "Pastel");
        use(Device.PHONE);
        open("/collection/" + animal.id());
        cut(true);
        button("Taken").click();
        waits(1);
        var phone = page().context();
        page().close();

        cut(phone, false);
        var later = phone.newPage();
        later.navigate(address("/settings"));
        assertThat(strip(later).getByRole(AriaRole.STATUS)).hasText("Sent: WAIT-2 fed.");
        assertThat(of(animal.id()))
                .singleElement()
                .isInstanceOfSatisfying(
                        Happening.Meal.class, meal -> assertThat(meal.taken()).isTrue());
    }

    @Test
    void several_are_sent_in_the_order_in_which_they_were_tapped() {
        var animal = stock().female("WAIT-3", "Pastel");
        open("/collection/" + animal.id());
        cut(true);
        for (var prey : new String[] {"first", "second", "third"}) {
            page().locator("#prey").fill(prey);
            button("Refused").click();
            assertThat(page().locator(".waits-here")).containsText(prey);
        }
        waits(3);
        strip().locator("summary").click();
        assertThat(strip().locator("li span.grow"))
                .containsText(
                        new String[] {
                            "WAIT-3 refused a meal: first",
                            "WAIT-3 refused a meal: second",
                            "WAIT-3 refused a meal: third"
                        });
        inspect("waiting");

        cut(false);
        assertThat(strip().getByRole(AriaRole.STATUS)).containsText("third.");
        // Newest first.
        assertThat(of(animal.id()))
                .extracting(meal -> ((Happening.Meal) meal).prey())
                .containsExactly("third", "second", "first");
    }

    /// The worst case: it was written, and the phone does not know.
    @Test
    void an_entry_whose_answer_was_lost_is_on_record_once() {
        var animal = stock().female("WAIT-4", "Pastel");
        var lost = new AtomicInteger();
        page().route(
                        "**/fed",
                        route -> {
                            if (lost.getAndIncrement() < 2) {
                                route.fetch();
                                route.abort();
                            } else {
                                route.resume();
                            }
                        });
        open("/collection/" + animal.id());
        stopTheClock();
        button("Taken").click();
        waits(1);
        assertThat(of(animal.id())).hasSize(1);
        button("Send now").click();
        assertThat(strip().getByRole(AriaRole.STATUS)).hasText(noSignal());
        button("Send now").click();
        assertThat(strip().getByRole(AriaRole.STATUS)).hasText("Sent: WAIT-4 fed.");
        assertThat(lost).hasValue(3);
        assertThat(of(animal.id())).hasSize(1);
    }

    @Test
    void what_was_taken_back_before_the_phone_sent_it_again_stays_taken_back() {
        var animal = stock().female("WAIT-5", "Pastel");
        page().route(
                        "**/fed",
                        route -> {
                            route.fetch();
                            route.abort();
                        });
        open("/collection/" + animal.id());
        stopTheClock();
        button("Taken").click();
        waits(1);
        var desk = page().context().browser().newPage();
        desk.navigate(address("/collection/" + animal.id()));
        desk.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Undo"))
                .first()
                .click();
        assertThat(desk.getByRole(AriaRole.STATUS)).isVisible();
        assertThat(of(animal.id())).isEmpty();
        desk.context().close();

        page().unroute("**/fed");
        button("Send now").click();
        assertThat(strip().getByRole(AriaRole.STATUS)).hasText("Sent: WAIT-5 fed.");
        assertThat(of(animal.id())).isEmpty();
    }

    @Test
    void two_pages_of_one_phone_send_it_once() {
        var animal = stock().female("WAIT-6", "Pastel");
        open("/collection/" + animal.id());
        var second = page().context().newPage();
        second.navigate(address("/collection/" + animal.id()));
        cut(true);
        for (int i = 0; i < 3; i++) {
            button("Taken").click();
            waits(i + 1);
        }
        assertThat(strip(second).locator("summary")).hasText("Waiting to be sent (3)");
        cut(false);
        assertThat(strip().locator("li")).hasCount(0);
        assertThat(strip(second).locator("li")).hasCount(0);
        // Both may have sent one at the same moment: that is what keys are for.
        assertThat(of(animal.id())).hasSize(3);
    }

    @Test
    void what_the_records_refuse_is_kept_with_the_reason_and_put_right() {
        var animal = stock().female("WAIT-7", "Pastel");
        open("/collection/" + animal.id());
        cut(true);
        page().getByLabel("Weight", new Page.GetByLabelOptions().setExact(true)).fill("14,x5");
        button("Weigh").click();
        waits(1);
        button("Taken").click();
        waits(2);

        cut(false);
        // The second is not held up by the first.
        assertThat(strip().locator("summary")).hasText("Refused (1)");
        assertThat(of(animal.id())).singleElement().isInstanceOf(Happening.Meal.class);
        assertThat(strip().locator("li"))
                .containsText("Refused: Write a number from 0.1 to 200000, not “14,x5”.");
        inspect("waiting-refused");

        strip().getByText("Put it right").click();
        var weight = page().getByLabel("Weight", new Page.GetByLabelOptions().setExact(true));
        assertThat(weight).hasValue("14,x5");
        // Still wrong: the page says so, and the entry stays.
        button("Weigh").click();
        assertThat(page().locator(".faults")).containsText("not “14,x5”");
        assertThat(strip().locator("summary")).hasText("Refused (1)");
        weight.fill("1445");
        button("Weigh").click();
        assertThat(page().locator(".flash")).containsText("WAIT-7 weighed.");
        assertThat(strip()).isHidden();
        assertThat(of(animal.id())).hasSize(2);
    }

    @Test
    void what_is_refused_at_once_stands_on_the_page_as_it_does_without_script() {
        var animal = stock().female("WAIT-8", "Pastel");
        open("/collection/" + animal.id());
        var weight = page().getByLabel("Weight", new Page.GetByLabelOptions().setExact(true));
        weight.fill("heavy");
        button("Weigh").click();
        assertThat(page().locator(".faults")).isFocused();
        assertThat(weight).hasValue("heavy");
        assertThat(strip()).isHidden();
        weight.fill("900");
        button("Weigh").click();
        assertThat(page().locator(".flash")).containsText("WAIT-8 weighed.");
        assertThat(of(animal.id())).hasSize(1);
    }

    @Test
    void it_is_discarded_only_after_a_question() {
        var animal = stock().female("WAIT-9", "Pastel");
        open("/collection/" + animal.id());
        cut(true);
        button("Taken").click();
        waits(1);
        strip().locator("summary").click();
        var line = strip().locator("li");
        button(line, "Discard").click();
        assertThat(line).containsText("Discard it for good?");
        assertThat(button(line, "Keep")).isFocused();
        button(line, "Keep").click();
        waits(1);
        button(line, "Discard").click();
        button(line, "Yes, discard").click();
        assertThat(strip()).isHidden();
        cut(false);
        page().reload();
        assertThat(strip()).isHidden();
        assertThat(of(animal.id())).isEmpty();
    }

    @Test
    void a_tap_on_today_is_not_taken_twice_while_it_waits() {
        var animal = stock().female("WAIT-10", "Pastel");
        Written.to(
                bean(Holding.class),
                "Fed",
                tx ->
                        new Husbandry(tx)
                                .feed(animal.id(), tx.today().minusDays(41), "pup", true, "")
                                .theSaved());
        use(Device.PHONE);
        open("/?meals=all");
        cut(true);
        page().getByLabel("WAIT-10 is fed").click();
        waits(1);
        assertThat(page().getByLabel("WAIT-10 is fed")).isDisabled();
        assertThat(page().getByLabel("WAIT-10 refused")).isDisabled();
        inspect("waiting-today");

        cut(false);
        assertThat(strip().getByRole(AriaRole.STATUS)).hasText("Sent: WAIT-10 fed.");
        page().getByText("Show the page as it is now").click();
        assertThat(page().getByLabel("WAIT-10 is fed")).hasCount(0);
        assertThat(of(animal.id())).hasSize(2);
    }

    @Test
    void eggs_are_candled_one_after_the_other_without_a_signal() {
        var stock = stock();
        var clutch =
                stock.clutch(
                        stock.female("WAIT-F1", "Pastel"),
                        stock.male("WAIT-M1", "Clown"),
                        bean(Holding.class).today().minusDays(20),
                        3,
                        0);
        use(Device.PHONE);
        open("/eggs/%d/candle".formatted(clutch.id().value()));
        assertThat(page().locator("h1")).hasText("Egg 1");
        cut(true);
        var finding = page().locator("button[name=finding]");
        finding.nth(0).click();
        assertThat(page().locator("h1")).hasText("Egg 2");
        finding.nth(2).click();
        assertThat(page().locator("h1")).hasText("Egg 3");
        inspect("waiting-candle");
        finding.nth(4).click();
        assertThat(page().locator("h1")).hasText("Every waiting egg has been looked at");
        assertThat(finding.nth(0)).isDisabled();
        waits(3);

        cut(false);
        var number = clutch.number();
        assertThat(strip().getByRole(AriaRole.STATUS))
                .hasText(
                        "Sent: Clutch %s, egg 1: veins; Clutch %s, egg 2: doubtful; Clutch %s, egg 3: slug."
                                .formatted(number, number, number));
        open("/eggs/%d".formatted(clutch.id().value()));
        List<String> looks =
                bean(Holding.class)
                        .database()
                        .read(tx -> new Clutches(tx).find(clutch.id()).orElseThrow().eggs())
                        .stream()
                        .flatMap(egg -> egg.candlings().stream())
                        .map(look -> look.finding().name())
                        .toList();
        assertThat(looks).containsExactly("GOOD", "DOUBTFUL", "SLUG");
    }

    @Test
    void an_entry_of_another_collection_at_this_address_is_not_sent_to_this_one() {
        var animal = stock().female("WAIT-11", "Pastel");
        open("/collection/" + animal.id());
        cut(true);
        button("Taken").click();
        waits(1);
        page().evaluate(
                        """
                        () => {
                          const name = Object.keys(localStorage).find((key) => key.startsWith("clutchwright.entry."));
                          const entry = JSON.parse(localStorage.getItem(name));
                          entry.house = "0".repeat(32);
                          localStorage.setItem(name, JSON.stringify(entry));
                        }""");
        cut(false);
        page().reload();
        assertThat(strip().locator("summary")).hasText("Of another collection (1)");
        strip().locator("summary").click();
        assertThat(strip()).containsText("not sent to this one");
        assertThat(of(animal.id())).isEmpty();
    }

    @Test
    void without_script_the_forms_work_as_ever() {
        var animal = stock().female("WAIT-12", "Pastel");
        useWithoutScript();
        open("/collection/" + animal.id());
        button("Taken").click();
        assertThat(page().locator(".flash")).containsText("WAIT-12 fed.");
        assertThat(of(animal.id())).hasSize(1);
    }

    private static String noSignal() {
        return "No signal. It is sent by itself when there is one.";
    }

    private static Locator button(Locator within, String name) {
        return within.locator("button").filter(new Locator.FilterOptions().setHasText(name));
    }
}
