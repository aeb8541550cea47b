package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.Test;

/// What stands around every page.
class FrameTest extends Browsing {

    @Test
    void every_screen_that_is_listed_is_there() {
        open("/");
        var links = page().getByRole(AriaRole.NAVIGATION).getByRole(AriaRole.LINK).all();
        org.assertj.core.api.Assertions.assertThat(links).isNotEmpty();
        for (var path : links.stream().map(link -> link.getAttribute("href")).toList()) {
            open(path);
            assertThat(page().locator("nav.screens [aria-current=page]")).hasCount(1);
            assertThat(page().locator("h1")).isVisible();
        }
    }

    @Test
    void the_first_key_leads_past_the_frame() {
        open("/");
        page().keyboard().press("Tab");
        assertThat(page().locator(".skip")).isFocused();
        page().keyboard().press("Enter");
        assertThat(page().locator("main")).isFocused();
    }

    @Test
    void an_address_that_leads_nowhere_says_so_within_the_frame() {
        open("/no-such-page");
        assertThat(page().locator("h1")).hasText("Not found");
        assertThat(page().getByRole(AriaRole.NAVIGATION)).isVisible();
        inspect("not-found");
    }

    @Test
    void on_a_phone_the_screens_lie_under_the_thumb_and_are_large_enough_to_hit() {
        use(Device.PHONE);
        open("/");
        for (Locator link : page().getByRole(AriaRole.NAVIGATION).getByRole(AriaRole.LINK).all()) {
            var box = link.boundingBox();
            org.assertj.core.api.Assertions.assertThat(box.height).isGreaterThanOrEqualTo(44);
            org.assertj.core.api.Assertions.assertThat(box.y + box.height).isEqualTo(844);
        }
    }
}
