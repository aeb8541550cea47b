package clutchwright.app.loggers;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.records.incubators.Incubators;
import clutchwright.records.incubators.Reading;
import clutchwright.records.incubators.Readings;
import clutchwright.records.incubators.Sensor;
import clutchwright.records.incubators.SensorId;
import clutchwright.records.incubators.Sensors;
import clutchwright.records.store.Database;
import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Against a real mail server on this computer.
class AlarmPostTest {

    @TempDir Path folder;
    private final GreenMail server =
            new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
    private Holding holding;
    private Sensor sensor;

    @BeforeEach
    void open() {
        server.start();
        server.setUser("keeper@example.org", "keeper", "secret");
        holding = new Holding(Database.open(folder, Clock.systemUTC()));
        sensor =
                holding.database()
                        .write(
                                holding.author(),
                                "test",
                                tx -> {
                                    mail(server.getSmtp().getPort()).put(tx);
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
                                                            Sensor.Source.NONE,
                                                            Sensor.Scale.CELSIUS,
                                                            0,
                                                            Duration.ofHours(1)))
                                            .theSaved();
                                });
    }

    @AfterEach
    void close() {
        holding.close();
        server.stop();
    }

    @Test
    void an_alarm_is_mailed_once_while_it_lasts_and_again_when_it_comes_back() throws Exception {
        try (var post = new AlarmPost(holding)) {
            hot(Instant.now().minus(Duration.ofMinutes(100)), 10);
            post.look();
            post.look();
            assertThat(server.getReceivedMessages()).hasSize(1);
            var mail = server.getReceivedMessages()[0];
            assertThat(mail.getSubject())
                    .startsWith("Clutchwright: The air of Cabinet: Too warm: up to 33.6 °C since");
            assertThat(mail.getAllRecipients()[0].toString()).isEqualTo("keeper@example.org");
            assertThat(text(mail)).contains("no safety device");

            took(List.of(new Reading(Instant.now().minusSeconds(2), 32.0)));
            post.look();
            assertThat(server.getReceivedMessages()).hasSize(1);
            assertThat(post.trouble()).isEmpty();
        }
    }

    @Test
    void a_mail_that_could_not_be_sent_is_said_and_tried_again() {
        try (var post = new AlarmPost(holding)) {
            hot(Instant.now().minus(Duration.ofMinutes(100)), 10);
            set(mail(1));
            post.look();
            assertThat(post.trouble()).isNotBlank();

            set(mail(server.getSmtp().getPort()));
            post.look();
            assertThat(post.trouble()).isEmpty();
            assertThat(server.getReceivedMessages()).hasSize(1);
        }
    }

    @Test
    void nothing_is_sent_while_nothing_is_wrong_or_no_server_is_set() {
        try (var post = new AlarmPost(holding)) {
            took(List.of(new Reading(Instant.now(), 31.6)));
            post.look();
            hot(Instant.now().minus(Duration.ofMinutes(100)), 10);
            holding.database()
                    .write(
                            holding.author(),
                            "test",
                            tx -> {
                                MailServer.forget(tx);
                                return true;
                            });
            post.look();
            assertThat(server.getReceivedMessages()).isEmpty();
        }
    }

    @Test
    void a_trial_says_why_it_cannot_be_sent() {
        try (var post = new AlarmPost(holding)) {
            assertThat(post.tried(mail(server.getSmtp().getPort()))).isEmpty();
            assertThat(server.getReceivedMessages()).hasSize(1);
            assertThat(post.tried(mail(1))).isPresent();
        }
    }

    private static MailServer mail(int port) {
        return new MailServer(
                "127.0.0.1",
                port,
                MailServer.Way.OPEN,
                "",
                "house@example.org",
                "keeper@example.org");
    }

    private void set(MailServer mail) {
        holding.database()
                .write(
                        holding.author(),
                        "test",
                        tx -> {
                            mail.put(tx);
                            return true;
                        });
    }

    private void hot(Instant from, int every) {
        took(
                IntStream.rangeClosed(0, 9)
                        .mapToObj(
                                i ->
                                        new Reading(
                                                from.plus(Duration.ofMinutes(i * (long) every)),
                                                33.6))
                        .toList());
    }

    private void took(List<Reading> readings) {
        holding.database()
                .write(
                        holding.author(),
                        "test",
                        tx -> {
                            new Readings(tx).took(sensor.id(), readings);
                            return true;
                        });
    }

    private static String text(jakarta.mail.internet.MimeMessage mail)
            throws IOException, jakarta.mail.MessagingException {
        return mail.getContent().toString();
    }
}
