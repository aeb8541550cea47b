package clutchwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.ResultType;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.RegisterExtension;

/// What every browser test begins and ends with: a fresh browser window at the desk, and no word of
/// complaint from the browser when the test is over.
///
/// ```java
/// class SettingsTest extends Browsing {
///     @Test
///     void weights_in_ounces_stay_chosen() {
///         open("/settings");
///         page().getByLabel("Ounces").check();
///         ...
///         inspect("settings");
///     }
/// }
/// ```
public abstract class Browsing {

    private static final List<String> WCAG_AA =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa");

    private static final Path SCREENS = Path.of("target", "screens");

    @RegisterExtension final Starting starting = new Starting();

    private final List<String> complaints = new ArrayList<>();
    private BrowserContext window;
    private Page page;

    /// The two widths that every screen is looked at in.
    public enum Device {
        DESK(1280, 900),
        PHONE(390, 844);

        private final int width;
        private final int height;

        Device(int width, int height) {
            this.width = width;
            this.height = height;
        }
    }

    @BeforeEach
    void open_a_window() {
        use(Device.DESK);
    }

    @AfterEach
    void the_browser_did_not_complain() {
        window.close();
        assertThat(complaints).as("errors in the browser's console").isEmpty();
    }

    protected Page page() {
        return page;
    }

    /// A thing of the running program, to prepare what a test needs.
    protected <T> T bean(Class<T> type) {
        return house().bean(type);
    }

    protected String address(String path) {
        return house().address() + path.substring(1);
    }

    /// Goes on with a fresh window of another size.
    protected void use(Device device) {
        use(device, true);
    }

    /// Goes on with a fresh window in which no script runs.
    protected void useWithoutScript() {
        use(Device.DESK, false);
    }

    private void use(Device device, boolean script) {
        if (window != null) {
            window.close();
        }
        window =
                house().browser()
                        .newContext(
                                new Browser.NewContextOptions()
                                        .setViewportSize(device.width, device.height)
                                        .setHasTouch(device == Device.PHONE)
                                        .setJavaScriptEnabled(script)
                                        .setReducedMotion(ReducedMotion.REDUCE)
                                        .setLocale("en-GB"));
        page = window.newPage();
        // What follows is worked out behind the pages, which show it when it is there.
        page.setDefaultTimeout(30_000);
        PlaywrightAssertions.setDefaultAssertionTimeout(30_000);
        page.onConsoleMessage(
                message -> {
                    if (message.type().equals("error")
                            && !isExpected(message.text())
                            && !expects(message.text())) {
                        complaints.add(page.url() + ": " + message.text());
                    }
                });
        page.onPageError(error -> complaints.add(page.url() + ": " + error));
    }

    /// @param path beginning with `/`
    protected void open(String path) {
        page.navigate(address(path));
    }

    /// Presses a button whose form a script sends, and waits for what comes of it: another page, or
    /// this one with its faults.
    protected void tap(Locator button) {
        page.evaluate("document.querySelector('#main > *').setAttribute('data-tapped', '')");
        button.click();
        PlaywrightAssertions.assertThat(page.locator("[data-tapped]")).hasCount(0);
        page.waitForLoadState();
    }

    /// Holds the page to WCAG 2.2 AA and to the width of the window, at the desk and on the phone,
    /// light and dark, and leaves a picture of each in `target/screens`.
    protected void inspect(String name) {
        for (var device : Device.values()) {
            for (var look : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                page.setViewportSize(device.width, device.height);
                page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(look));
                var picture =
                        "%s-%d-%s".formatted(name, device.width, look).toLowerCase(Locale.ROOT);
                takePicture(picture);
                if (look == ColorScheme.LIGHT) {
                    isAccessible(picture, every());
                } else if (device == darkDevice(name)) {
                    isAccessible(picture, ofColours());
                }
                fitsTheWindow(picture);
            }
        }
        page.setViewportSize(Device.DESK.width, Device.DESK.height);
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
    }

    /// Holds the page to the same as it stands, in the window of the device that is in use.
    protected void inspectHere(String name) {
        takePicture(name);
        // What sticks to the bottom covers other things wherever one scrolls to, so the rules look
        // at a window in which nothing need be scrolled.
        var size = page.viewportSize();
        growToThePage();
        isAccessible(name, every());
        page.setViewportSize(size.width, size.height);
        fitsTheWindow(name);
    }

    /// Colours are the same at both widths but for the frame, which all screens share: in the dark
    /// half of the screens are held to their contrast at the desk, half on the phone.
    private static Device darkDevice(String name) {
        return name.length() % 2 == 0 ? Device.DESK : Device.PHONE;
    }

    /// The window grows to the page's height first: a picture of the scrolled page would have the
    /// phone's bar of screens in its middle.
    private void takePicture(String picture) {
        page.evaluate("document.fonts.ready.then(() => true)");
        var size = page.viewportSize();
        growToThePage();
        page.screenshot(new Page.ScreenshotOptions().setPath(SCREENS.resolve(picture + ".png")));
        page.setViewportSize(size.width, size.height);
    }

    private void growToThePage() {
        var size = page.viewportSize();
        var height = (Number) page.evaluate("document.documentElement.scrollHeight");
        page.setViewportSize(size.width, Math.max(size.height, height.intValue()));
    }

    private AxeBuilder every() {
        return axe().withTags(WCAG_AA);
    }

    /// In the dark a page is the same but for its colours.
    private AxeBuilder ofColours() {
        return axe().withRules(List.of("color-contrast"));
    }

    private AxeBuilder axe() {
        var onlyViolations = new AxeRunOptions();
        onlyViolations.setResultTypes(List.of(ResultType.Violations.getKey()));
        // Pages have no frames of other origins, whose reports would need a window of their own.
        return new AxeBuilder(page).options(onlyViolations).setLegacyMode(true);
    }

    private static void isAccessible(String picture, AxeBuilder rules) {
        assertThat(rules.analyze().getViolations())
                .as("accessibility of " + picture)
                .extracting(Browsing::describe)
                .isEmpty();
    }

    private void fitsTheWindow(String picture) {
        var overflow =
                page.evaluate(
                        "document.documentElement.scrollWidth"
                                + " - document.documentElement.clientWidth");
        assertThat(((Number) overflow).intValue())
                .as("pixels by which " + picture + " is wider than its window")
                .isLessThanOrEqualTo(0);
    }

    private static String describe(Rule rule) {
        return rule.getId()
                + ": "
                + rule.getHelp()
                + rule.getNodes().stream().map(node -> "\n  " + node.getHtml()).toList();
    }

    /// What else the browser may complain of in a test.
    protected boolean expects(String text) {
        return false;
    }

    /// A page that a test asks for though it is not there, or refuses a form, is logged as well, as
    /// is a live piece that was still on its way when the page was left; that is no fault.
    private static boolean isExpected(String text) {
        return text.startsWith("Failed to load resource: the server responded with a status of 4")
                || text.startsWith("htmx:sendAbort")
                || text.startsWith("htmx:afterRequest");
    }

    private House house() {
        return starting.house;
    }

    static final class Starting implements BeforeEachCallback {

        private House house;

        @Override
        public void beforeEach(ExtensionContext context) {
            house = House.of(context);
        }
    }
}
