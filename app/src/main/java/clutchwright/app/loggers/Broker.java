package clutchwright.app.loggers;

import clutchwright.records.settings.Settings;
import clutchwright.records.store.Transaction;
import java.util.Optional;

/// Where sensors' messages are fetched from, by the open standard MQTT.
///
/// @param address such as `tcp://192.168.1.5:1883`, or `ssl://` for an encrypted way
/// @param user blank where the broker asks for none
public record Broker(String address, String user) {

    private static final String ADDRESS = "broker/address";
    private static final String USER = "broker/user";
    private static final String CLIENT = "broker/client";

    /// Nothing unless the keeper has set one: nothing is asked of the network unasked.
    public static Optional<Broker> find(Transaction tx) {
        var settings = new Settings(tx);
        return settings.find(ADDRESS)
                .filter(address -> !address.isBlank())
                .map(address -> new Broker(address, settings.find(USER).orElse("")));
    }

    public void put(Transaction tx) {
        var settings = new Settings(tx);
        settings.put(ADDRESS, address);
        settings.put(USER, user);
    }

    public static void forget(Transaction tx) {
        new Settings(tx).remove(ADDRESS);
        new Settings(tx).remove(USER);
    }

    /// By which the broker knows us again, and keeps for us what comes while we are away.
    static String client(Transaction tx, String fresh) {
        var settings = new Settings(tx);
        return settings.find(CLIENT)
                .orElseGet(
                        () -> {
                            settings.put(CLIENT, fresh);
                            return fresh;
                        });
    }
}
