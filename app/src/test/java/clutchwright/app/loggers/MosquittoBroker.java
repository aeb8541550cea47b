package clutchwright.app.loggers;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

/// A real broker, mosquitto, from the distribution's packages; `check` installs it.
final class MosquittoBroker implements AutoCloseable {

    private final Path folder;
    private final int port;
    private Process process;

    MosquittoBroker(Path folder) throws IOException, InterruptedException {
        this.folder = folder;
        try (var free = new ServerSocket(0)) {
            this.port = free.getLocalPort();
        }
        start();
    }

    String address() {
        return "tcp://localhost:" + port;
    }

    void start() throws IOException, InterruptedException {
        var settings = folder.resolve("mosquitto.conf");
        Files.writeString(
                settings,
                """
                listener %d 127.0.0.1
                allow_anonymous true
                persistence false
                """
                        .formatted(port));
        process =
                new ProcessBuilder(program(), "-c", settings.toString())
                        .redirectErrorStream(true)
                        .redirectOutput(folder.resolve("mosquitto.log").toFile())
                        .start();
        var until = Instant.now().plus(Duration.ofSeconds(20));
        while (!answers()) {
            if (!process.isAlive() || Instant.now().isAfter(until)) {
                throw new IOException(Files.readString(folder.resolve("mosquitto.log")));
            }
            Thread.sleep(50);
        }
    }

    /// As a sensor sends: at least once.
    void publish(String topic, String text, boolean retained) throws MqttException {
        var client =
                new MqttClient(address(), MqttClient.generateClientId(), new MemoryPersistence());
        client.connect();
        client.publish(topic, text.getBytes(StandardCharsets.UTF_8), 1, retained);
        client.disconnect();
        client.close();
    }

    private static String program() throws IOException {
        return Stream.concat(
                        Stream.of(System.getenv("PATH").split(":")),
                        List.of("/usr/sbin", "/usr/local/sbin", "/opt/homebrew/sbin").stream())
                .map(folder -> Path.of(folder).resolve("mosquitto"))
                .filter(Files::isExecutable)
                .map(Path::toString)
                .findFirst()
                .orElseThrow(
                        () ->
                                new IOException(
                                        "the tests of live readings need mosquitto: install it"));
    }

    private boolean answers() {
        try (var socket = new Socket("127.0.0.1", port)) {
            return socket.isConnected();
        } catch (IOException e) {
            return false;
        }
    }

    void stop() throws InterruptedException {
        process.destroy();
        if (!process.waitFor(10, TimeUnit.SECONDS)) {
            process.destroyForcibly();
        }
    }

    @Override
    public void close() throws InterruptedException {
        stop();
    }
}
