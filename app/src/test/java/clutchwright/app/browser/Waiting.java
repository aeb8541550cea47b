package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.husbandry.Happening;
import clutchwright.records.husbandry.Husbandry;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;

/// What tests of entries that wait for a signal have in common.
abstract class Waiting extends Browsing {

    @Override
    protected boolean expects(String text) {
        // The network that a test has cut.
        return text.startsWith("Failed to load resource: net::ERR_");
    }

    protected void cut(boolean isCut) {
        cut(page().context(), isCut);
    }

    protected static void cut(BrowserContext phone, boolean isCut) {
        phone.setOffline(isCut);
    }

    /// Nothing is sent by itself from now on: only what a test does sends.
    protected void stopTheClock() {
        page().clock().install();
        page().clock().pauseAt(System.currentTimeMillis() + 60_000);
    }

    protected Locator strip() {
        return strip(page());
    }

    protected static Locator strip(Page page) {
        return page.locator("aside.waiting");
    }

    protected void waits(int entries) {
        assertThat(strip().locator("summary"))
                .hasText("Waiting to be sent (%d)".formatted(entries));
    }

    protected Locator button(String name) {
        return page().getByRole(
                        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    protected static List<Happening> of(Holding holding, AnimalId animal) {
        return holding.database().read(tx -> new Husbandry(tx).of(animal));
    }

    protected List<Happening> of(AnimalId animal) {
        return of(bean(Holding.class), animal);
    }

    protected Stock stock() {
        return new Stock(bean(Holding.class));
    }
}
