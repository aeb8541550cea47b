package clutchwright.app.loggers;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.records.incubators.Incubators;
import clutchwright.records.incubators.Reading;
import clutchwright.records.incubators.Readings;
import clutchwright.records.incubators.Sensor;
import clutchwright.records.incubators.SensorId;
import clutchwright.records.incubators.Sensors;
import clutchwright.records.journal.Journal;
import clutchwright.records.store.Database;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Against a real broker of the open standard MQTT 3.1.1 (OASIS): what is sent is kept, once,
/// whatever fails in between.
class LiveReadingsTest {

    private static final Instant DAWN = Instant.parse("2024-05-10T04:00:00Z");

    @TempDir Path folder;
    @TempDir Path brokerFolder;
    private MosquittoBroker broker;
    private Holding holding;
    private Sensor sensor;

    @BeforeEach
    void open() throws Exception {
        broker = new MosquittoBroker(brokerFolder);
        holding = new Holding(Database.open(folder, Clock.systemUTC()));
        sensor =
                holding.database()
                        .write(
                                holding.author(),
                                "test",
                                tx -> {
                                    new Broker(broker.address(), "").put(tx);
                                    var cabinet =
                                            new Incubators(tx).add("Cabinet", 31.7, "").theSaved();
                                    return new Sensors(tx)
                                            .add(
                                                    new Sensor(
                                                            new SensorId(0),
                                                            1,
                                                            "Shelf",
                                                            cabinet.id(),
                                                            Optional.empty(),
                                                            new Sensor.Source("house/shelf", "t"),
                                                            Sensor.Scale.CELSIUS,
                                                            0.2,
                                                            Duration.ofHours(1)))
                                            .theSaved();
                                });
    }

    @AfterEach
    void close() throws Exception {
        holding.close();
        broker.close();
    }

    @Test
    void what_is_sent_is_kept_as_corrected_and_stands_in_no_journal() throws Exception {
        try (var live = new LiveReadings(holding)) {
            live.look();
            assertThat(live.state()).isInstanceOf(LiveReadings.State.Connected.class);
            int changes = changes();

            send(0, 31.5);
            send(5, 31.6);
            send(5, 31.6);
            broker.publish("house/shelf", "no reading", false);
            broker.publish(
                    "house/shelf", "{\"t\": -127, \"time\": \"2024-05-10T04:06:00Z\"}", false);
            send(10, 31.7);
            await(() -> kept().size() == 3);

            assertThat(kept())
                    .containsExactly(reading(0, 31.7), reading(5, 31.8), reading(10, 31.9));
            assertThat(changes()).isEqualTo(changes);
        }
    }

    @Test
    void what_is_sent_while_we_are_away_comes_when_we_are_back() throws Exception {
        try (var live = new LiveReadings(holding)) {
            live.look();
            send(0, 31.5);
            await(() -> kept().size() == 1);
        }
        for (int minute = 1; minute <= 40; minute++) {
            send(minute, 31 + minute / 100.0);
        }
        assertThat(kept()).hasSize(1);

        try (var live = new LiveReadings(holding)) {
            live.look();
            await(() -> kept().size() == 41);
        }
        assertThat(kept()).extracting(Reading::at).doesNotHaveDuplicates().isSorted();
    }

    @Test
    void a_broker_that_goes_and_comes_is_found_again() throws Exception {
        try (var live = new LiveReadings(holding)) {
            live.look();
            send(0, 31.5);
            await(() -> kept().size() == 1);

            broker.stop();
            await(() -> live.state() instanceof LiveReadings.State.Failing);
            live.look();
            assertThat(live.state()).isInstanceOf(LiveReadings.State.Failing.class);

            broker.start();
            live.look();
            assertThat(live.state()).isInstanceOf(LiveReadings.State.Connected.class);
            send(1, 31.6);
            await(() -> kept().size() == 2);
        }
    }

    @Test
    void what_the_broker_kept_without_a_time_may_be_of_any_age_and_is_not_taken() throws Exception {
        broker.publish("house/shelf", "{\"t\": 35.5}", true);
        try (var live = new LiveReadings(holding)) {
            live.look();
            send(0, 31.5);
            await(() -> !kept().isEmpty());
            assertThat(kept()).containsExactly(reading(0, 31.7));
        }
    }

    @Test
    void nothing_is_asked_of_the_network_unless_a_broker_is_set() {
        holding.database()
                .write(
                        holding.author(),
                        "test",
                        tx -> {
                            Broker.forget(tx);
                            return true;
                        });
        try (var live = new LiveReadings(holding)) {
            live.look();
            assertThat(live.state()).isEqualTo(new LiveReadings.State.Off());
        }
    }

    private void send(int minute, double celsius) throws Exception {
        broker.publish(
                "house/shelf",
                "{\"t\": %s, \"time\": \"%s\"}"
                        .formatted(celsius, DAWN.plus(Duration.ofMinutes(minute))),
                false);
    }

    private static Reading reading(int minute, double celsius) {
        return new Reading(DAWN.plus(Duration.ofMinutes(minute)), celsius);
    }

    private List<Reading> kept() {
        return holding.database()
                .read(
                        tx ->
                                new Readings(tx)
                                        .between(
                                                sensor.id(),
                                                DAWN.minus(Duration.ofDays(1)),
                                                Instant.now().plus(Duration.ofDays(1))));
    }

    private int changes() {
        return holding.database().read(tx -> new Journal(tx).latest(1_000).size());
    }

    private static void await(BooleanSupplier so) throws InterruptedException {
        var until = Instant.now().plus(Duration.ofSeconds(30));
        while (!so.getAsBoolean() && Instant.now().isBefore(until)) {
            Thread.sleep(20);
        }
        assertThat(so.getAsBoolean()).isTrue();
    }
}
