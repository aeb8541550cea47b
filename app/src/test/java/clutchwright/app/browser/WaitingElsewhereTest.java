package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.Serving;
import clutchwright.app.cli.DataFolder;
import clutchwright.app.holding.Holding;
import clutchwright.app.web.Preferring;
import clutchwright.engine.pedigree.AnimalId;
import java.net.InetAddress;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.security.crypto.password.PasswordEncoder;

/// A phone that has to sign in, at a program that is stopped and started while entries wait.
class WaitingElsewhereTest extends Waiting {

    private static final String PASSWORD = "nine quiet royals";

    @TempDir Path folder;
    private Serving.Running running;
    private AnimalId animal;

    @BeforeEach
    void a_phone_is_signed_in() {
        running = start(0);
        var encoder = running.context().getBean(PasswordEncoder.class);
        running.context().getBean(Preferring.class).setPassword(encoder.encode(PASSWORD));
        animal = new Stock(holding()).female("WAIT-E1", "Pastel").id();
        use(Device.PHONE);
        // A device elsewhere is played by requests that say that they were passed on.
        page().context().setExtraHTTPHeaders(Map.of("X-Forwarded-For", "192.0.2.7"));
        page().navigate(running.address());
        signIn();
        page().navigate(running.address() + "collection/" + animal);
    }

    @AfterEach
    void stop() {
        page().close();
        running.close();
    }

    @Test
    void what_was_tapped_is_kept_while_signed_out_and_sent_after_signing_in() {
        cut(true);
        button("Taken").click();
        waits(1);
        page().context().clearCookies();
        cut(false);
        assertThat(strip()).containsText("Sign in to send.");
        waits(1);
        assertThat(of(holding(), animal)).isEmpty();
        inspect("waiting-signed-out");

        strip().getByText("Sign in", exactly()).click();
        // Who is not in yet sees how much waits, and not what.
        assertThat(strip()).containsText("Waiting to be sent: 1. Sign in to send.");
        assertThat(strip()).not().containsText("WAIT-E1");
        inspect("waiting-sign-in");
        signIn();
        assertThat(strip()).containsText("Sent: WAIT-E1 fed.");
        assertThat(of(holding(), animal)).hasSize(1);
    }

    @Test
    void a_tap_of_somebody_whose_sign_in_has_run_out_is_not_lost() {
        page().context().clearCookies();
        button("Taken").click();
        waits(1);
        assertThat(strip()).containsText("Sign in to send.");
        assertThat(of(holding(), animal)).isEmpty();
    }

    @Test
    void the_program_is_started_again_between_the_tap_and_the_signal() {
        var port = URI.create(running.address()).getPort();
        stopTheClock();
        // It stops in the middle: one meal is written and its answer is lost.
        page().route(
                        "**/fed",
                        route -> {
                            route.fetch();
                            route.abort();
                        });
        button("Taken").click();
        waits(1);
        page().unroute("**/fed");
        running.close();
        button("Taken").click();
        waits(2);

        running = start(port);
        button("Send now").click();
        // A session does not outlive the program.
        assertThat(strip()).containsText("Sign in to send.");
        page().navigate(running.address() + "sign-in");
        signIn();
        assertThat(strip()).containsText("Sent: WAIT-E1 fed; WAIT-E1 fed.");
        assertThat(of(holding(), animal)).hasSize(2);
    }

    private void signIn() {
        page().getByLabel("Password").fill(PASSWORD);
        button("Sign in").click();
        assertThat(page().locator("h1")).hasText("Today");
    }

    private static com.microsoft.playwright.Locator.GetByTextOptions exactly() {
        return new com.microsoft.playwright.Locator.GetByTextOptions().setExact(true);
    }

    private Holding holding() {
        return running.context().getBean(Holding.class);
    }

    private Serving.Running start(int port) {
        return switch (Serving.start(
                new Serving.Plan(
                        new DataFolder(folder),
                        false,
                        port,
                        InetAddress.ofLiteral("127.0.0.1"),
                        List.of()))) {
            case Serving.Running started -> started;
            case Serving.Refused(var why) -> throw new IllegalStateException(why);
        };
    }
}
