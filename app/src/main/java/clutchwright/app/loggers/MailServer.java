package clutchwright.app.loggers;

import clutchwright.records.settings.Settings;
import clutchwright.records.store.Transaction;
import java.util.Optional;

/// By which server alarms are mailed, and to whom.
///
/// @param user blank where the server asks for none
public record MailServer(String host, int port, Way way, String user, String from, String to) {

    private static final String NAME = "alarm-mail/";

    /// How the way to the server is kept secret.
    public enum Way {
        TLS,
        STARTTLS,
        OPEN
    }

    /// Nothing unless the keeper has set it.
    public static Optional<MailServer> find(Transaction tx) {
        var settings = new Settings(tx);
        return settings.find(NAME + "host")
                .filter(host -> !host.isBlank())
                .map(
                        host ->
                                new MailServer(
                                        host,
                                        Integer.parseInt(
                                                settings.find(NAME + "port").orElse("587")),
                                        Way.valueOf(
                                                settings.find(NAME + "way")
                                                        .orElse(Way.STARTTLS.name())),
                                        settings.find(NAME + "user").orElse(""),
                                        settings.find(NAME + "from").orElse(""),
                                        settings.find(NAME + "to").orElse("")));
    }

    public void put(Transaction tx) {
        var settings = new Settings(tx);
        settings.put(NAME + "host", host);
        settings.put(NAME + "port", Integer.toString(port));
        settings.put(NAME + "way", way.name());
        settings.put(NAME + "user", user);
        settings.put(NAME + "from", from);
        settings.put(NAME + "to", to);
    }

    public static void forget(Transaction tx) {
        for (var name : new Settings(tx).under(NAME).keySet()) {
            new Settings(tx).remove(name);
        }
    }
}
