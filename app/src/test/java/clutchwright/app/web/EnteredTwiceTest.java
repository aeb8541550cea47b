package clutchwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.Serving;
import clutchwright.app.cli.DataFolder;
import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Particulars;
import clutchwright.records.animals.Tag;
import clutchwright.records.husbandry.Happening;
import clutchwright.records.husbandry.Husbandry;
import java.net.CookieManager;
import java.net.InetAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// What a form with a key is answered, over the wire.
class EnteredTwiceTest {

    private static final Pattern TOKEN = Pattern.compile("data-token=\"([^\"]+)\"");

    @TempDir private Path folder;
    private Serving.Running running;
    private HttpClient client;
    private AnimalId animal;

    @BeforeEach
    void start() {
        running =
                (Serving.Running)
                        Serving.start(
                                new Serving.Plan(
                                        new DataFolder(folder),
                                        false,
                                        0,
                                        InetAddress.ofLiteral("127.0.0.1"),
                                        List.of()));
        client = HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
        animal =
                Written.to(
                                holding(),
                                "Added W-1",
                                tx ->
                                        new Animals(tx)
                                                .add(
                                                        Particulars.of(
                                                                new Tag("W-1"),
                                                                holding().mainSpecies()))
                                                .theSaved())
                        .result()
                        .id();
    }

    @AfterEach
    void stop() {
        client.close();
        running.close();
    }

    @Test
    void the_second_arrival_is_answered_as_the_first_and_writes_nothing() throws Exception {
        var key = UUID.randomUUID().toString();
        var first = client.send(fed(key), HttpResponse.BodyHandlers.ofString());
        var second = client.send(fed(key), HttpResponse.BodyHandlers.ofString());

        assertThat(first.statusCode()).isEqualTo(303);
        assertThat(first.headers().firstValue("Entry-Taken")).hasValue(key);
        assertThat(second.statusCode()).isEqualTo(303);
        assertThat(second.headers().firstValue("Entry-Taken")).hasValue(key);
        assertThat(location(second)).isEqualTo(location(first)).hasValue("/collection/" + animal);
        assertThat(get("/collection/" + animal)).contains("W-1 fed.").contains("/undo");
        assertThat(meals()).hasSize(1);
    }

    @Test
    void a_form_without_a_key_or_with_a_text_that_is_none_is_written_each_time() throws Exception {
        client.send(fed(""), HttpResponse.BodyHandlers.ofString());
        client.send(fed(""), HttpResponse.BodyHandlers.ofString());
        client.send(fed("1' or 1"), HttpResponse.BodyHandlers.ofString());
        assertThat(meals()).hasSize(3);
    }

    /// All stand before the one door to the store, which is held shut until they have come.
    @Test
    void of_many_that_arrive_at_once_one_is_written_and_all_are_answered() throws Exception {
        var key = UUID.randomUUID().toString();
        var request = fed(key);
        var shut = new CountDownLatch(1);
        var open = new CountDownLatch(1);
        var door =
                CompletableFuture.runAsync(
                        () ->
                                holding()
                                        .database()
                                        .write(
                                                holding().author(),
                                                "",
                                                _ -> {
                                                    shut.countDown();
                                                    return waited(open);
                                                }));
        assertThat(waited(shut)).isTrue();
        var sent =
                IntStream.range(0, 6)
                        .mapToObj(
                                _ ->
                                        client.sendAsync(
                                                request, HttpResponse.BodyHandlers.ofString()))
                        .toList();
        open.countDown();
        door.join();

        for (var each : sent) {
            assertThat(each.join().statusCode()).isEqualTo(303);
            assertThat(each.join().headers().firstValue("Entry-Taken")).hasValue(key);
        }
        assertThat(meals()).hasSize(1);
    }

    @Test
    void a_refusal_leaves_the_key_free() throws Exception {
        var key = UUID.randomUUID().toString();
        var refused =
                client.send(
                        post("fedOn=never&taken=yes&entryKey=" + key),
                        HttpResponse.BodyHandlers.ofString());
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(client.send(fed(key), HttpResponse.BodyHandlers.ofString()).statusCode())
                .isEqualTo(303);
        assertThat(meals()).hasSize(1);
    }

    private HttpRequest fed(String key) throws Exception {
        return post(
                "fedOn=%s&taken=yes&entryKey=%s"
                        .formatted(holding().today(), key.replace(' ', '+')));
    }

    private HttpRequest post(String body) throws Exception {
        var token = TOKEN.matcher(get("/ready"));
        assertThat(token.find()).isTrue();
        return HttpRequest.newBuilder(address("/collection/" + animal + "/fed"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("X-XSRF-TOKEN", token.group(1))
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
    }

    private String get(String path) throws Exception {
        return client.send(
                        HttpRequest.newBuilder(address(path)).build(),
                        HttpResponse.BodyHandlers.ofString())
                .body();
    }

    private List<Happening> meals() {
        return holding().database().read(tx -> new Husbandry(tx).of(animal));
    }

    private static Optional<String> location(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location");
    }

    private static boolean waited(CountDownLatch latch) {
        try {
            latch.await();
            return true;
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private Holding holding() {
        return running.context().getBean(Holding.class);
    }

    private URI address(String path) {
        return URI.create(running.address() + path.substring(1));
    }
}
