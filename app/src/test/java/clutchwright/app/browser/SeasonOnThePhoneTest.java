package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.PassingTime;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Date;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// One season as the room knows it, day by day, with nothing but a phone: from the first animal
/// put on record, through pairing, laying and candling, to the last hatchling's first meal.
class SeasonOnThePhoneTest extends Browsing {

    @TempDir Path folder;
    private PassingTime house;
    private String sensor = "";
    private int pictures;

    @BeforeEach
    void the_season_begins() {
        house = PassingTime.begins(LocalDate.of(2025, 11, 3), folder);
        use(Device.PHONE);
    }

    @AfterEach
    void the_season_ends() {
        house.close();
    }

    @Test
    void from_the_first_pairing_to_the_last_hatchling() {
        comes("2025-11-03");
        add("F-1", "Fen", "Female", "2021-07-02", "Pastel", "het Clown");
        weigh("1820");
        add("M-1", "Moss", "Male", "2022-06-30", "Clown", "");
        weigh("910");
        visit("/");
        keep("today-quiet");

        comes("2025-11-20");
        visit("/season/predict?damTag=F-1&sireTag=M-1");
        // Half of a het's and a visual's young are visual, and half of all are Pastel.
        assertThat(page().locator("main")).containsText("Pastel Clown");
        keep("predicted");
        tap(page().getByText(Pattern.compile("Plan this pairing for \\d{4}")));
        happens("Put together");
        comes("2025-11-22");
        visit("/season?season=2026");
        happens("Lock seen");
        keep("locked");

        comes("2025-12-24");
        visit("/");
        // Never left alone since, and nobody weighed her in the month.
        page().getByLabel("Weight of F-1").fill("1905");
        keep("today-weight");
        tap(button("F-1 Fen is weighed"));

        comes("2026-02-20");
        visit("/season?season=2026");
        happens("Building");
        page().getByLabel("Weight of F-1").fill("2010");
        tap(button("F-1 is weighed"));
        assertThat(page().getByRole(AriaRole.STATUS)).containsText("F-1 weighs 2,010 g.");
        comes("2026-03-03");
        visit("/season?season=2026");
        happens("Ovulation");
        happens("Separated");
        // Forty-seven days from ovulation to laying: common practice, and the nineteenth of April.
        assertThat(card().locator(".expected")).containsText("19 Apr");
        comes("2026-03-21");
        visit("/season?season=2026");
        happens("Pre-lay shed");
        keep("shed");

        comes("2026-04-18");
        visit("/");
        assertThat(page().locator("main")).containsText("F-1");
        keep("today-laying");

        comes("2026-04-19");
        aCabinetWithALogger();
        visit("/season?season=2026");
        card().getByText("Laid …").click();
        page().getByLabel("Good eggs").fill("6");
        page().getByLabel("Slugs").fill("1");
        tap(button("Record the clutch"));
        assertThat(page().locator(".head")).containsText("6 waiting, 1 slug");
        var clutch = page().url().replaceAll("[?#].*", "");
        page().getByRole(AriaRole.COMBOBOX, named("Box")).fill("A1");
        page().getByLabel("Incubator").fill("Cabinet");
        page().getByLabel("Or the first so many").fill("6");
        tap(button("Put into the box"));
        assertThat(page().locator(".flash")).containsText("6 eggs put into box A1.");
        keep("laid");

        comes("2026-04-27");
        visit("/");
        assertThat(page().locator("main")).containsText("Not candled yet.");
        page().getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Clutch 26-01"))
                .last()
                .click();
        for (int egg = 1; egg <= 6; egg++) {
            assertThat(page().locator("h1")).hasText("Egg " + egg);
            if (egg == 1) {
                keep("candling");
            }
            tap(page().locator("button[name=finding]").nth(egg == 6 ? 1 : 0));
        }
        assertThat(page().locator(".head")).containsText("5 waiting, 1 doubtful, 1 slug");
        keep("candled");

        comes("2026-05-24");
        bring("cabinet.csv", log("2026-04-19", "2026-05-24", 31.0));
        keep("logger");
        page().navigate(clutch);
        // Thirty-five days at 31.0 °C, and then on at what it is set to.
        assertThat(page().locator(".pipping")).containsText("By what Shelf said");
        keep("felt");

        comes("2026-06-17");
        visit("/");
        assertThat(page().locator("main")).containsText("Silent since");
        assertThat(page().locator("main")).containsText("Clutch 26-01 of F-1 Fen");
        // At 31.0 °C it takes 59.16 days, which are over this morning: half of such clutches pip
        // later, within the next days.
        assertThat(page().locator("main"))
                .containsText("6 eggs: expected to pip about 19 June; 9 in 10 between 17 June and");
        assertThat(page().locator("main")).containsText("by what Shelf said");
        keep("today-hatching");
        page().navigate(clutch + "/hatch");
        for (int egg = 1; egg <= 6; egg++) {
            page().locator(".guesses label").nth(egg % 2).click();
            page().locator(".sexes label").nth(2).click();
            keep("bench");
            tap(button("Name this hatchling"));
            assertThat(page().locator(".progress")).containsText(egg + " of 6 eggs named");
        }
        keep("hatched");

        comes("2026-06-28");
        visit("/");
        // The logger lies in a drawer since, and nothing waits for it.
        assertThat(page().locator("main")).not().containsText("Silent since");
        // Eleven days old: usual days for a first shed, and the first meal after it.
        tap(button("26-01A shed whole"));
        assertThat(page().locator("main")).containsText("Offer its first meal.");
        tap(button("26-01A refused"));
        assertThat(page().locator("main")).not().containsText("Offer its first meal.");
        keep("today-hatchlings");
        visit("/today/round");
        assertThat(page().locator(".round")).containsText("Look for its first shed.");
        tap(button("26-01B shed in pieces"));
        assertThat(page().locator("h1")).hasText("The round");
        keep("round");
        visit("/season/calendar?season=2026");
        keep("glance");
    }

    private void aCabinetWithALogger() {
        visit("/eggs/incubators");
        page().getByLabel("Name").fill("Cabinet");
        page().getByLabel("Set to, in °C").fill("31.5");
        tap(button("Add it"));
        page().getByLabel("What it is called").fill("Shelf");
        tap(button("Add it"));
        assertThat(page().locator("h1")).hasText("Shelf");
        sensor = page().url();
    }

    /// A reading an hour, as loggers write them.
    private static String log(String from, String to, double celsius) {
        var hours = ChronoUnit.HOURS.between(startOf(from), startOf(to)) + 8;
        return LongStream.range(9, hours + 1)
                .mapToObj(hour -> startOf(from).plusHours(hour) + "," + celsius)
                .collect(Collectors.joining("\n", "Time,Temperature (°C)\n", "\n"));
    }

    private static LocalDateTime startOf(String day) {
        return LocalDate.parse(day).atStartOfDay();
    }

    private void bring(String name, String text) {
        page().navigate(sensor);
        page().locator("#file")
                .setInputFiles(
                        new FilePayload(name, "text/csv", text.getBytes(StandardCharsets.UTF_8)));
        tap(button("Bring it in"));
        if (page().locator("h1").textContent().equals("Which columns?")) {
            tap(button("Bring it in"));
        }
        assertThat(page().locator("main")).containsText("readings of " + name);
    }

    private void comes(String day) {
        var date = LocalDate.parse(day);
        house.comes(date);
        page().context()
                .clock()
                .setFixedTime(
                        Date.from(
                                date.atTime(LocalTime.NOON)
                                        .atZone(ZoneId.systemDefault())
                                        .toInstant()));
    }

    private void add(
            String tag, String name, String sex, String hatched, String shows, String stated) {
        visit("/collection/new");
        page().locator("#tag").fill(tag);
        page().locator("#name").fill(name);
        page().getByText(sex, new Page.GetByTextOptions().setExact(true)).first().click();
        page().locator("#hatched").fill(hatched);
        page().locator("#shows").fill(shows);
        page().locator("#stated").fill(stated);
        keep("new-animal");
        tap(button("Add it"));
        assertThat(page().locator("h1")).hasText(name);
    }

    private void weigh(String grams) {
        page().locator("#weight").fill(grams);
        tap(button("Weigh"));
        assertThat(page().locator("main")).containsText("1 weight".substring(2));
    }

    private Locator card() {
        return page().locator(".pairings > li");
    }

    private void happens(String what) {
        tap(
                card().getByRole(
                                AriaRole.BUTTON,
                                new Locator.GetByRoleOptions().setName(what).setExact(true)));
    }

    private Locator button(String name) {
        return page().getByRole(AriaRole.BUTTON, named(name));
    }

    private static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name).setExact(true);
    }

    private void keep(String name) {
        inspectHere("phone-%02d-%s".formatted(++pictures, name));
    }

    private void visit(String path) {
        page().navigate(house.address() + path);
    }
}
