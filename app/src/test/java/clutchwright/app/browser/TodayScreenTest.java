package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.Serving;
import clutchwright.app.cli.DataFolder;
import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.Preferences;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Particulars;
import clutchwright.records.animals.Tag;
import clutchwright.records.checks.Questions;
import clutchwright.records.husbandry.Happening;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.pairings.SignSeen;
import clutchwright.records.places.Places;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.Media;
import java.net.InetAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// What is due today, as a keeper reads it in the morning.
class TodayScreenTest extends Browsing {

    @TempDir Path folder;

    @Test
    void an_empty_house_teaches_the_three_ways_to_begin() {
        try (var house = start(false)) {
            page().navigate(house.address());
            assertThat(link("Import a sheet")).hasAttribute("href", "/settings/import");
            assertThat(link("Add an animal")).hasAttribute("href", "/collection/new");
            assertThat(page().locator("main code")).hasText("./clutchwright serve --demo");
            inspect("today-empty");
        }
    }

    @Test
    void the_demo_house_says_what_is_due() {
        try (var house = start(true)) {
            page().navigate(house.address());
            assertThat(page().locator("main")).containsText("animals in the house");
            assertThat(page().locator(".lines li").first()).isVisible();
            inspect("today-demo");
        }
    }

    /// Common practice, no source: young hatch about 57 days after laying at 31.7 °C, so that on
    /// that day half are still to come, the next of them within hours.
    @Test
    void a_clutch_of_57_days_is_to_be_looked_after_now() {
        var stock = new Stock(holding());
        var today = holding().today();
        var clutch =
                stock.clutch(
                        stock.female("TODAY-F1", "Pastel"),
                        stock.male("TODAY-M1", "Clown"),
                        today.minusDays(57),
                        6,
                        0);
        open("/");
        var line = line("Now", "Clutch " + clutch.number()).first();
        assertThat(line)
                .containsText(
                        Pattern.compile(
                                "6 eggs: expected to pip about .*; 9 in 10 between %s and "
                                        .formatted(formats().dayOfYear(today))));
        line.getByRole(AriaRole.LINK).click();
        assertThat(page()).hasURL(address("/eggs/" + clutch.id().value() + "/hatch"));
    }

    /// The model alone: 29 days after the pre-lay shed, 9 in 10 within 1.645 x 3.5 days, which is
    /// 23.2 to 34.8. Gaps: common practice, no source.
    @Test
    void a_female_that_has_shed_before_laying_is_given_a_range_of_days() {
        var stock = new Stock(holding());
        var today = holding().today();
        var dam = stock.female("TODAY-F2", "Pastel");
        var sire = stock.male("TODAY-M2", "Clown");
        sign(dam.id().value(), sire.id().value(), today.minusDays(20));
        open("/");
        assertThat(line("This week", "TODAY-F2"))
                .containsText(
                        "Expected to lay about %s; 9 in 10 between %s and %s."
                                .formatted(
                                        formats().dayOfYear(today.plusDays(9)),
                                        formats().dayOfYear(today.plusDays(3)),
                                        formats().dayOfYear(today.plusDays(15))));

        stock.clutch(dam, sire, today, 5, 0);
        open("/");
        assertThat(line("This week", "TODAY-F2").filter(saying("Expected to lay"))).hasCount(0);
    }

    @Test
    void a_meal_is_written_down_with_one_tap_and_taken_back_with_another() {
        var stock = new Stock(holding());
        var animal = stock.female("TODAY-F3", "Pastel");
        Written.to(
                holding(),
                "Fed TODAY-F3",
                tx ->
                        new Husbandry(tx)
                                .feed(animal.id(), tx.today().minusDays(40), "rat pup", true, "")
                                .theSaved());
        use(Device.PHONE);
        open("/?meals=all");
        var hungry = line("Meals, long ago", "TODAY-F3");
        assertThat(hungry).containsText("No meal taken for 40 days.");
        assertThat(hungry).containsText("rat pup");
        inspect("today-meals");

        page().getByLabel("TODAY-F3 is fed").click();
        assertThat(page().getByRole(AriaRole.STATUS)).containsText("TODAY-F3 is fed.");
        assertThat(line("Meals, long ago", "TODAY-F3")).hasCount(0);
        Map<AnimalId, Happening.Meal> last =
                holding().database().read(tx -> new Husbandry(tx).lastMealsTaken());
        assertThat(last)
                .hasEntrySatisfying(
                        animal.id(),
                        meal -> {
                            assertThat(meal.on()).isEqualTo(holding().today());
                            assertThat(meal.prey()).isEqualTo("rat pup");
                        });

        page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Undo")).click();
        open("/?meals=all");
        assertThat(line("Meals, long ago", "TODAY-F3")).hasCount(1);
    }

    @Test
    void a_whole_rack_is_fed_except_for_those_that_are_unticked() {
        var rack =
                Written.to(
                                holding(),
                                "Put three into a rack",
                                tx -> {
                                    var places = new Places(tx);
                                    for (int i = 1; i <= 3; i++) {
                                        var tub =
                                                places.theTub(
                                                        "Long room", "R7", Integer.toString(i));
                                        new Animals(tx)
                                                .add(
                                                        Particulars.of(
                                                                        new Tag("RACK-" + i),
                                                                        "python-regius")
                                                                .withPlace(tub.id()),
                                                        Questions.ALL_THE_SAME)
                                                .theSaved();
                                    }
                                    return places.theTub("Long room", "R7", "1").rack().value();
                                })
                        .result();
        use(Device.PHONE);
        open("/");
        page().getByText("Long room, rack R7 · 3").click();
        assertThat(page()).hasURL(address("/today/racks/" + rack));
        inspect("today-rack");

        page().getByRole(AriaRole.CHECKBOX, new Page.GetByRoleOptions().setName("RACK-2"))
                .uncheck();
        page().getByLabel("What", new Page.GetByLabelOptions().setExact(false))
                .first()
                .fill("rat, small");
        page().getByLabel("refused").check();
        page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Fed").setExact(true))
                .click();

        assertThat(page().getByRole(AriaRole.STATUS))
                .containsText("Long room, rack R7: 2 animals fed, 1 refused.");
        assertThat(fedWith("rat, small")).isEqualTo(2);
        page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Undo")).click();
        assertThat(page().getByRole(AriaRole.STATUS)).isVisible();
        assertThat(fedWith("rat, small")).isZero();

        open("/today/racks/" + rack);
        for (var box : page().getByRole(AriaRole.CHECKBOX).all()) {
            box.uncheck();
        }
        page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Fed").setExact(true))
                .click();
        assertThat(page().locator(".faults")).containsText("Tick at least one of them.");
    }

    @Test
    void a_phone_subscribes_to_the_days_by_a_secret_address() throws Exception {
        var stock = new Stock(holding());
        stock.clutch(
                stock.female("TODAY-F9", "Pastel"),
                stock.male("TODAY-M9", "Clown"),
                holding().today().minusDays(50),
                6,
                0);
        open("/");
        page().getByText("These days on your phone's calendar").click();
        assertThat(page().locator("main")).containsText("There is no address yet.");
        page().getByRole(AriaRole.BUTTON, named("Make an address")).click();
        var address = page().locator("code.address").textContent();
        inspect("today-calendar");

        var found = fetched(address);
        assertThat(found.statusCode()).isEqualTo(200);
        assertThat(found.headers().firstValue("Content-Type").orElseThrow())
                .startsWith("text/calendar");
        assertThat(found.body()).contains("TODAY-F9").contains("BEGIN:VEVENT");
        assertThat(fetched(address.replaceAll("[^/]{8}[.]ics", "xxxxxxxx.ics")).statusCode())
                .isEqualTo(404);

        // A new one makes the old one void.
        page().getByRole(AriaRole.BUTTON, named("Make a new address")).click();
        var second = page().locator("code.address").textContent();
        assertThat(fetched(address).statusCode()).isEqualTo(404);
        assertThat(fetched(second).statusCode()).isEqualTo(200);
        page().getByRole(AriaRole.BUTTON, named("Revoke it")).click();
        assertThat(page().getByRole(AriaRole.STATUS)).containsText("void");
        assertThat(fetched(second).statusCode()).isEqualTo(404);
    }

    /// Common practice, no source: a female that is to breed is weighed every month.
    @Test
    void a_paired_female_is_weighed_where_it_is_asked_for() {
        var stock = new Stock(holding());
        var dam = stock.female("TODAY-F20", "Pastel");
        var sire = stock.male("TODAY-M20", "Clown");
        var today = holding().today();
        Written.to(
                holding(),
                "Paired",
                tx -> {
                    new Husbandry(tx).weigh(dam.id(), today.minusDays(40), 1712, "").theSaved();
                    var pairings = new Pairings(tx);
                    var pairing =
                            pairings.plan(
                                            today.getYear(),
                                            dam.id(),
                                            sire.id(),
                                            "",
                                            Questions.ALL_THE_SAME)
                                    .theSaved();
                    return pairings.update(
                                    pairing.begun(today.minusDays(20)), Questions.ALL_THE_SAME)
                            .theSaved();
                });
        use(Device.PHONE);
        weights();
        assertThat(line("Weights, long ago", "TODAY-F20")).containsText("Not weighed for 40 days.");
        assertThat(line("Weights, long ago", "TODAY-F20")).containsText("1,712 g");
        inspect("today-weights");

        weigh("much");
        assertThat(page().locator("main")).containsText("Nothing was written");
        weights();
        weigh("1840");
        assertThat(page().getByRole(AriaRole.STATUS)).containsText("TODAY-F20 weighs 1,840 g.");
        assertThat(line("Weights, long ago", "TODAY-F20")).hasCount(0);

        page().getByRole(AriaRole.BUTTON, named("Undo")).click();
        weights();
        assertThat(line("Weights, long ago", "TODAY-F20")).hasCount(1);
    }

    /// Rack 2 comes before rack 10, as it does on the wall.
    @Test
    void the_round_goes_from_tub_to_tub_and_what_is_done_is_tapped_there() {
        var stock = new Stock(holding());
        var today = holding().today();
        var dam = stock.female("TODAY-F30", "Pastel");
        var sire = stock.male("TODAY-M30", "Clown");
        var first = stock.young("TODAY-Y1", dam, sire, today.minusDays(9));
        var second = stock.young("TODAY-Y2", dam, sire, today.minusDays(16));
        stock.put(first, "Nursery", "10", "1");
        stock.put(second, "Nursery", "2", "4");
        use(Device.PHONE);
        open("/today/round");

        var stops = page().locator(".round h2");
        var names = stops.allTextContents();
        assertThat(names.indexOf("Nursery, rack 2"))
                .isNotNegative()
                .isLessThan(names.indexOf("Nursery, rack 10"));
        assertThat(line("Nursery, rack 10", "TODAY-Y1")).hasCount(1);
        assertThat(line("Nursery, rack 10", "TODAY-Y1")).containsText("tub 1");
        assertThat(line("Nursery, rack 10", "TODAY-Y1")).containsText("Look for its first shed.");
        // Sixteen days old it may as well eat before anybody has seen it shed.
        assertThat(line("Nursery, rack 2", "TODAY-Y2")).hasCount(2);
        inspect("today-round");
        page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        assertThat(page().locator(".quick").first()).isHidden();
        assertThat(page().locator(".top")).isHidden();
        page().screenshot(
                        new Page.ScreenshotOptions()
                                .setFullPage(true)
                                .setPath(Path.of("target", "screens", "today-round-print.png")));
        page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));

        tap(page().getByLabel("TODAY-Y1 shed whole"));
        assertThat(page().locator("h1")).hasText("The round");
        assertThat(line("Nursery, rack 10", "TODAY-Y1")).containsText("Offer its first meal.");
        tap(page().getByLabel("TODAY-Y1 is fed"));
        assertThat(line("Nursery, rack 10", "TODAY-Y1")).hasCount(0);
        page().getByRole(AriaRole.BUTTON, named("Undo")).click();
        open("/today/round");
        assertThat(line("Nursery, rack 10", "TODAY-Y1")).containsText("Offer its first meal.");
    }

    /// Today, with the females that stand behind “more” as well.
    private void weights() {
        open("/");
        page().evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
    }

    private void weigh(String typed) {
        page().getByLabel("Weight of TODAY-F20").fill(typed);
        page().getByLabel("TODAY-F20 is weighed").click();
    }

    private static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    private static HttpResponse<String> fetched(String address) throws Exception {
        try (var client = HttpClient.newHttpClient()) {
            return client.send(
                    HttpRequest.newBuilder(URI.create(address)).build(),
                    HttpResponse.BodyHandlers.ofString());
        }
    }

    private long fedWith(String prey) {
        return holding()
                .database()
                .read(tx -> new Husbandry(tx).lastMealsTaken().values().stream())
                .filter(meal -> meal.prey().equals(prey))
                .count();
    }

    private void sign(long dam, long sire, LocalDate shed) {
        Written.to(
                holding(),
                "Saw a pre-lay shed",
                tx -> {
                    var pairings = new Pairings(tx);
                    var pairing =
                            pairings.plan(
                                            shed.getYear(),
                                            new AnimalId(dam),
                                            new AnimalId(sire),
                                            "",
                                            Questions.ASK)
                                    .theSaved();
                    return pairings.see(pairing.id(), SignSeen.Kind.PRE_LAY_SHED, shed, "")
                            .theSaved();
                });
    }

    private Serving.Running start(boolean demo) {
        return switch (Serving.start(
                new Serving.Plan(
                        new DataFolder(folder),
                        demo,
                        0,
                        InetAddress.ofLiteral("127.0.0.1"),
                        List.of()))) {
            case Serving.Running running -> running;
            case Serving.Refused(var why) -> throw new IllegalStateException(why);
        };
    }

    private Locator line(String group, String text) {
        return page().getByRole(AriaRole.REGION, new Page.GetByRoleOptions().setName(group))
                .locator("li")
                .filter(saying(text));
    }

    private static Locator.FilterOptions saying(String text) {
        return new Locator.FilterOptions().setHasText(text);
    }

    private Locator link(String name) {
        return page().getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(name));
    }

    private Holding holding() {
        return bean(Holding.class);
    }

    private static Formats formats() {
        return new Formats(Preferences.FIRST);
    }
}
