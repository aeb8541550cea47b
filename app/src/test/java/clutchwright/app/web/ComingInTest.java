package clutchwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.Serving;
import clutchwright.app.cli.DataFolder;
import java.io.IOException;
import java.net.CookieManager;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Who may come in. A device elsewhere is played by a request that says it was passed on.
class ComingInTest {

    private static final String PASSWORD = "nine quiet royals";

    @TempDir private Path folder;
    private Serving.Running running;
    private HttpClient client;

    @BeforeEach
    void start() {
        running = (Serving.Running) Serving.start(plan("127.0.0.1"));
        client = HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
    }

    @AfterEach
    void stop() {
        client.close();
        running.close();
    }

    @Test
    void the_keeper_at_the_machine_needs_no_password() throws Exception {
        assertThat(atHome("/settings").statusCode()).isEqualTo(200);
    }

    @Test
    void another_device_is_told_how_to_be_let_in_while_no_password_is_set() throws Exception {
        var answer = elsewhere("/settings");
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).contains("set a password", "--listen");
    }

    @Test
    void a_page_of_another_site_that_points_its_name_here_gets_nothing() throws Exception {
        // The browser sends the site's own name; Java's client may not, so the socket is ours.
        assertThat(rawStatus("GET /settings HTTP/1.1\r\nHost: elsewhere.example\r\n"))
                .isEqualTo(403);
        assertThat(rawStatus("GET /settings HTTP/1.1\r\nHost: localhost\r\n")).isEqualTo(200);
        assertThat(rawStatus("GET /settings HTTP/1.1\r\nHost: home.example\r\n")).isEqualTo(200);
    }

    @Test
    void another_device_signs_in_with_the_password_and_not_with_another() throws Exception {
        running.context().getBean(OwnerPassword.class).set(PASSWORD);

        var sent = elsewhere("/settings");
        assertThat(sent.statusCode()).isEqualTo(303);
        assertThat(sent.headers().firstValue("Location")).hasValue("/sign-in?next=%2Fsettings");

        assertThat(signIn("guessed wrongly").statusCode()).isEqualTo(401);
        assertThat(elsewhere("/settings").statusCode()).isEqualTo(303);

        var signedIn = signIn(PASSWORD);
        assertThat(signedIn.statusCode()).isEqualTo(303);
        var cookie = String.join("; ", signedIn.headers().allValues("Set-Cookie"));
        assertThat(cookie).contains("clutchwright=", "HttpOnly", "SameSite=Lax");
        assertThat(elsewhere("/settings").statusCode()).isEqualTo(200);
    }

    @Test
    void who_scans_a_label_comes_to_it_after_signing_in() throws Exception {
        running.context().getBean(OwnerPassword.class).set(PASSWORD);

        var sent = elsewhere("/a/12");
        var asked = sent.headers().firstValue("Location").orElseThrow();
        assertThat(asked).isEqualTo("/sign-in?next=%2Fa%2F12");

        assertThat(signIn(asked, "guessed wrongly").body()).contains("value=\"/a/12\"");
        assertThat(signIn(asked, PASSWORD).headers().firstValue("Location")).hasValue("/a/12");
    }

    @Test
    void a_link_that_was_made_up_leads_to_no_other_site() throws Exception {
        running.context().getBean(OwnerPassword.class).set(PASSWORD);
        for (var elsewhere :
                List.of(
                        "//evil.example/",
                        "/\\evil.example/",
                        "https://evil.example/",
                        "/a\r\nSet-Cookie: x=y",
                        "/sign-in?next=/a/1")) {
            var answer = signIn("/sign-in?next=" + encoded(elsewhere), PASSWORD);
            assertThat(answer.headers().firstValue("Location")).as(elsewhere).hasValue("/");
        }
    }

    @Test
    void who_guesses_too_often_must_wait_even_with_the_right_one() throws Exception {
        running.context().getBean(OwnerPassword.class).set(PASSWORD);
        for (int guess = 0; guess < SignInLimit.PER_ADDRESS; guess++) {
            assertThat(signIn("guess " + guess).statusCode()).isEqualTo(401);
        }
        var answer = signIn(PASSWORD);
        assertThat(answer.statusCode()).isEqualTo(429);
        assertThat(answer.headers().firstValue("Retry-After")).isPresent();
        assertThat(answer.body()).contains("Too many wrong passwords. Try again in 15 minutes.");
    }

    @Test
    void a_form_without_its_token_changes_nothing() throws Exception {
        var answer =
                client.send(
                        HttpRequest.newBuilder(address("/settings/password"))
                                .header("Content-Type", "application/x-www-form-urlencoded")
                                .POST(
                                        HttpRequest.BodyPublishers.ofString(
                                                "password="
                                                        + encoded(PASSWORD)
                                                        + "&again="
                                                        + encoded(PASSWORD)))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).contains("Nothing was changed");
        assertThat(running.context().getBean(OwnerPassword.class).isSet()).isFalse();
    }

    @Test
    void browsers_are_told_to_run_nothing_but_ours() throws Exception {
        var headers = atHome("/").headers();
        assertThat(headers.firstValue("Content-Security-Policy").orElseThrow())
                .contains("default-src 'self'", "script-src 'self'", "frame-ancestors 'none'")
                .doesNotContain("unsafe");
        assertThat(headers.firstValue("X-Content-Type-Options")).hasValue("nosniff");
        assertThat(headers.firstValue("X-Frame-Options")).hasValue("DENY");
        assertThat(headers.firstValue("Referrer-Policy")).hasValue("same-origin");
    }

    @Test
    void it_does_not_open_to_other_devices_while_no_password_is_set() {
        running.close();
        assertThat(Serving.start(plan("0.0.0.0")))
                .isInstanceOfSatisfying(
                        Serving.Refused.class,
                        refused -> assertThat(refused.why()).contains("no password is set"));
    }

    private Serving.Plan plan(String address) {
        return new Serving.Plan(
                new DataFolder(folder),
                false,
                0,
                InetAddress.ofLiteral(address),
                List.of("home.example"));
    }

    private HttpResponse<String> signIn(String password) throws Exception {
        return signIn("/sign-in", password);
    }

    private HttpResponse<String> signIn(String asked, String password) throws Exception {
        var page = elsewhere(asked).body();
        var next = Pattern.compile("name=\"next\" value=\"([^\"]*)\"").matcher(page);
        assertThat(next.find()).isTrue();
        var token = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"").matcher(page);
        assertThat(token.find()).isTrue();
        return client.send(
                HttpRequest.newBuilder(address("/sign-in"))
                        .header("X-Forwarded-For", "192.0.2.7")
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(
                                HttpRequest.BodyPublishers.ofString(
                                        "who=owner&password="
                                                + encoded(password)
                                                + "&next="
                                                + encoded(next.group(1))
                                                + "&_csrf="
                                                + encoded(token.group(1))))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> atHome(String path) throws Exception {
        return client.send(
                HttpRequest.newBuilder(address(path)).build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> elsewhere(String path) throws Exception {
        return client.send(
                HttpRequest.newBuilder(address(path))
                        .header("X-Forwarded-For", "192.0.2.7")
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private int rawStatus(String head) throws IOException {
        var address = URI.create(running.address());
        try (var socket = new Socket("127.0.0.1", address.getPort())) {
            socket.getOutputStream()
                    .write(
                            (head + "Connection: close\r\n\r\n")
                                    .getBytes(StandardCharsets.US_ASCII));
            var answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return Integer.parseInt(answer.substring(9, 12));
        }
    }

    private URI address(String path) {
        return URI.create(running.address() + path.substring(1));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
