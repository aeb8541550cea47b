package clutchwright.app.loggers;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.SecretFile;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.Preferences;
import clutchwright.app.wording.SensorWords;
import clutchwright.engine.incubation.SensorAlarm;
import clutchwright.records.incubators.SensorId;
import jakarta.mail.Authenticator;
import jakarta.mail.Message;
import jakarta.mail.MessagingException;
import jakarta.mail.PasswordAuthentication;
import jakarta.mail.Session;
import jakarta.mail.Transport;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/// Mails what sensors call for, once for each alarm while it lasts. One that could not be sent is
/// tried again; after a restart those that last are sent once more.
public final class AlarmPost implements AutoCloseable {

    private static final int EVERY_SECONDS = 60;
    private static final String PATIENCE_MILLISECONDS = "10000";

    private final Holding holding;
    private final SecretFile password;
    private final Set<Told> told = new HashSet<>();
    private final ScheduledExecutorService beat =
            Executors.newSingleThreadScheduledExecutor(
                    Thread.ofPlatform().daemon().name("alarm-post").factory());
    private volatile String trouble = "";

    public AlarmPost(Holding holding) {
        this.holding = holding;
        this.password = new SecretFile(holding.database().folder().resolve("mail-password"));
    }

    private record Told(SensorId sensor, SensorAlarm.Kind kind) {}

    public void begin() {
        var _ =
                beat.scheduleWithFixedDelay(
                        this::look, EVERY_SECONDS, EVERY_SECONDS, TimeUnit.SECONDS);
    }

    /// Why the last mail could not be sent; blank where it was.
    public String trouble() {
        return trouble;
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

    /// Sends what is new.
    public synchronized void look() {
        try {
            var server = holding.database().read(MailServer::find);
            if (server.isEmpty()) {
                told.clear();
                trouble = "";
                return;
            }
            send(server.get(), holding.database().read(Watched::all));
        } catch (MessagingException | RuntimeException e) {
            // Tried again with the next beat.
            trouble = String.valueOf(e.getMessage());
        }
    }

    /// A mail to try the settings by.
    ///
    /// @return why it could not be sent; nothing where it was
    public synchronized Optional<String> tried(MailServer server) {
        try {
            send(
                    server,
                    "Clutchwright: this is how an alarm arrives",
                    "Nothing is wrong. Alarms of your incubators come to this address.\n");
            return Optional.empty();
        } catch (MessagingException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    private void send(MailServer server, List<Watched> sensors) throws MessagingException {
        var words =
                new SensorWords(
                        new Formats(Preferences.FIRST), holding.database().clock().getZone());
        var lasting = new HashSet<Told>();
        var fresh = new ArrayList<Told>();
        var lines = new ArrayList<String>();
        for (var watched : sensors) {
            for (var alarm : watched.alarms()) {
                var one = new Told(watched.sensor().id(), alarm.kind());
                lasting.add(one);
                if (!told.contains(one)) {
                    fresh.add(one);
                    lines.add(watched.where() + ": " + words.of(alarm));
                }
            }
        }
        told.retainAll(lasting);
        if (!lines.isEmpty()) {
            send(
                    server,
                    "Clutchwright: " + lines.getFirst(),
                    String.join("\n", lines) + "\n\n" + SensorWords.CAUTION + "\n");
            told.addAll(fresh);
        }
        trouble = "";
    }

    private void send(MailServer server, String subject, String text) throws MessagingException {
        var message = new MimeMessage(session(server));
        message.setFrom(new InternetAddress(server.from(), true));
        message.setRecipients(Message.RecipientType.TO, InternetAddress.parse(server.to(), true));
        message.setSubject(subject, StandardCharsets.UTF_8.name());
        message.setText(text, StandardCharsets.UTF_8.name());
        Transport.send(message);
    }

    private Session session(MailServer server) {
        var known = new Properties();
        var kind = server.way() == MailServer.Way.TLS ? "smtps" : "smtp";
        known.setProperty("mail.transport.protocol", kind);
        known.setProperty("mail.transport.protocol.rfc822", kind);
        known.setProperty("mail." + kind + ".host", server.host());
        known.setProperty("mail." + kind + ".port", Integer.toString(server.port()));
        known.setProperty("mail." + kind + ".connectiontimeout", PATIENCE_MILLISECONDS);
        known.setProperty("mail." + kind + ".timeout", PATIENCE_MILLISECONDS);
        known.setProperty("mail." + kind + ".writetimeout", PATIENCE_MILLISECONDS);
        known.setProperty("mail." + kind + ".ssl.checkserveridentity", "true");
        if (server.way() == MailServer.Way.STARTTLS) {
            known.setProperty("mail.smtp.starttls.enable", "true");
            known.setProperty("mail.smtp.starttls.required", "true");
        }
        if (server.user().isBlank()) {
            return Session.getInstance(known);
        }
        known.setProperty("mail." + kind + ".auth", "true");
        return Session.getInstance(
                known,
                new Authenticator() {
                    @Override
                    protected PasswordAuthentication getPasswordAuthentication() {
                        return new PasswordAuthentication(
                                server.user(), password.find().orElse(""));
                    }
                });
    }

    @Override
    public void close() {
        beat.shutdownNow();
    }
}
