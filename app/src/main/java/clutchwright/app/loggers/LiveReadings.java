package clutchwright.app.loggers;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.SecretFile;
import clutchwright.records.incubators.Reading;
import clutchwright.records.incubators.Readings;
import clutchwright.records.incubators.Sensor;
import clutchwright.records.incubators.Sensors;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.MqttCallback;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.MqttMessage;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

/// Fetches what sensors send, and keeps it.
///
/// A message is acknowledged only once it is in the store, and the broker knows us by name: what
/// comes while the connection or this program is down is delivered later. Twice delivered is once
/// kept, since a reading is known by its sensor and its time.
public final class LiveReadings implements AutoCloseable {

    private static final int EVERY_SECONDS = 5;
    private static final int PATIENCE_SECONDS = 5;
    private static final int AT_LEAST_ONCE = 1;

    private final Holding holding;
    private final SecretFile password;
    private final ScheduledExecutorService beat =
            Executors.newSingleThreadScheduledExecutor(
                    Thread.ofPlatform().daemon().name("live-readings").factory());
    private Optional<Connection> connection = Optional.empty();
    private volatile State state = new State.Off();

    public LiveReadings(Holding holding) {
        this.holding = holding;
        this.password = new SecretFile(holding.database().folder().resolve("broker-password"));
    }

    /// How it stands with the broker.
    public sealed interface State {

        /// None is set, or no sensor sends.
        record Off() implements State {}

        record Connected(Instant since, int topics) implements State {}

        /// @param why as the other side says it
        record Failing(String why) implements State {}
    }

    private record Connection(Broker broker, MqttClient client, Set<String> topics) {}

    /// Begins to look every few seconds whether what is to be fetched is being fetched.
    public void begin() {
        var _ = beat.scheduleWithFixedDelay(this::look, 0, EVERY_SECONDS, TimeUnit.SECONDS);
    }

    /// Looks at once, after something was changed.
    public void look() {
        try {
            lookNow();
        } catch (MqttException e) {
            state = new State.Failing(String.valueOf(e.getMessage()));
        } catch (RuntimeException e) {
            // The beat must go on: whatever it was may have passed when it looks again.
            state = new State.Failing(e.toString());
        }
    }

    public State state() {
        return state;
    }

    public boolean hasPassword() {
        return password.find().isPresent();
    }

    public void keepPassword(String text) {
        password.keep(text);
    }

    public void forgetPassword() {
        password.remove();
    }

    private synchronized void lookNow() throws MqttException {
        var broker = holding.database().read(Broker::find);
        var topics =
                holding.database().read(tx -> new Sensors(tx).live()).stream()
                        .map(sensor -> sensor.source().topic())
                        .collect(Collectors.toSet());
        if (broker.isEmpty() || topics.isEmpty()) {
            leave();
            state = new State.Off();
            return;
        }
        if (connection.filter(now -> isAsWanted(now, broker.get(), topics)).isPresent()) {
            return;
        }
        leave();
        connection = Optional.of(connect(broker.get(), topics));
        state = new State.Connected(holding.database().clock().instant(), topics.size());
    }

    private static boolean isAsWanted(Connection now, Broker broker, Set<String> topics) {
        return now.client().isConnected()
                && now.broker().equals(broker)
                && now.topics().equals(topics);
    }

    private Connection connect(Broker broker, Set<String> topics) throws MqttException {
        var fresh = "clutchwright-" + UUID.randomUUID();
        var name =
                holding.database()
                        .write(
                                holding.author(),
                                "Gave the broker a name to know this house by",
                                tx -> Broker.client(tx, fresh));
        var client = new MqttClient(broker.address(), name, new MemoryPersistence());
        client.setTimeToWait(TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS));
        client.setManualAcks(true);
        client.setCallback(new Arriving(client));
        var options = new MqttConnectOptions();
        options.setCleanSession(false);
        options.setConnectionTimeout(PATIENCE_SECONDS);
        if (!broker.user().isBlank()) {
            options.setUserName(broker.user());
            password.find().ifPresent(text -> options.setPassword(text.toCharArray()));
        }
        try {
            client.connect(options);
            for (var topic : topics) {
                client.subscribe(topic, AT_LEAST_ONCE);
            }
            return new Connection(broker, client, topics);
        } catch (MqttException e) {
            client.close(true);
            throw e;
        }
    }

    private void leave() throws MqttException {
        if (connection.isPresent()) {
            var client = connection.get().client();
            connection = Optional.empty();
            if (client.isConnected()) {
                client.disconnect();
            }
            client.close(true);
        }
    }

    private void keep(String topic, Message message) {
        var now = holding.database().clock().instant();
        var found = new ArrayList<Said>();
        for (var sensor : holding.database().read(tx -> new Sensors(tx).live())) {
            if (sensor.source().topic().equals(topic)) {
                message.reading(sensor, now)
                        .ifPresent(reading -> found.add(new Said(sensor, reading)));
            }
        }
        if (!found.isEmpty()) {
            var _ =
                    holding.database()
                            .write(
                                    holding.author(),
                                    "Readings of " + topic,
                                    tx -> {
                                        for (var said : found) {
                                            new Readings(tx)
                                                    .took(
                                                            said.sensor().id(),
                                                            List.of(said.reading()));
                                        }
                                        return true;
                                    });
        }
    }

    private record Said(Sensor sensor, Reading reading) {}

    private final class Arriving implements MqttCallback {

        private final MqttClient client;

        Arriving(MqttClient client) {
            this.client = client;
        }

        @Override
        public void connectionLost(Throwable cause) {
            state = new State.Failing("the connection was lost; it is being tried again");
        }

        @Override
        public void messageArrived(String topic, MqttMessage message) throws MqttException {
            keep(topic, Message.of(message.getPayload(), message.isRetained()));
            client.messageArrivedComplete(message.getId(), message.getQos());
        }

        @Override
        public void deliveryComplete(IMqttDeliveryToken token) {
            // Nothing is ever sent.
        }
    }

    @Override
    public void close() {
        beat.shutdownNow();
        synchronized (this) {
            try {
                leave();
            } catch (MqttException e) {
                // It is gone all the same.
                state = new State.Off();
            }
        }
    }
}
