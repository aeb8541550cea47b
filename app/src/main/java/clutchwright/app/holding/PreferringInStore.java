package clutchwright.app.holding;

import clutchwright.app.web.Preferring;
import clutchwright.app.wording.Preferences;
import clutchwright.app.wording.Preferences.DateStyle;
import clutchwright.app.wording.Preferences.Look;
import clutchwright.app.wording.Preferences.Warmth;
import clutchwright.app.wording.Preferences.Weight;
import clutchwright.records.settings.Settings;
import java.util.Optional;

/// Preferences among the records; the password beside them, in a file of its own.
///
/// The password is not a record: a journal would keep the old ones, an undo would bring one back,
/// and a backup would carry it away.
final class PreferringInStore implements Preferring {

    private static final String WARMTH_UNIT = "warmth-unit";
    private static final String LOOK = "look";

    private final Holding holding;
    private final SecretFile password;

    PreferringInStore(Holding holding) {
        this.holding = holding;
        this.password = new SecretFile(holding.database().folder().resolve("password"));
    }

    @Override
    public Preferences preferences() {
        return holding.database().read(tx -> read(new Settings(tx)));
    }

    @Override
    public void prefer(Preferences preferences) {
        holding.database()
                .write(
                        holding.author(),
                        "Changed the settings",
                        tx -> {
                            var settings = new Settings(tx);
                            settings.put(Settings.WEIGHT_UNIT, preferences.weight().name());
                            settings.put(WARMTH_UNIT, preferences.warmth().name());
                            settings.put(Settings.DATE_STYLE, preferences.dates().name());
                            settings.put(LOOK, preferences.look().name());
                            settings.put(Settings.TAG_PATTERN, preferences.tagPattern());
                            return preferences;
                        });
    }

    @Override
    public Optional<String> findPassword() {
        return password.find();
    }

    @Override
    public void setPassword(String hashed) {
        password.keep(hashed);
    }

    @Override
    public void removePassword() {
        password.remove();
    }

    private static Preferences read(Settings settings) {
        var first = Preferences.FIRST;
        return new Preferences(
                choice(settings, Settings.WEIGHT_UNIT, Weight.class, first.weight()),
                choice(settings, WARMTH_UNIT, Warmth.class, first.warmth()),
                choice(settings, Settings.DATE_STYLE, DateStyle.class, first.dates()),
                choice(settings, LOOK, Look.class, first.look()),
                settings.find(Settings.TAG_PATTERN).orElse(first.tagPattern()));
    }

    /// A word that an older or newer version wrote and this one does not know counts as unset.
    private static <E extends Enum<E>> E choice(
            Settings settings, String name, Class<E> type, E otherwise) {
        var held = settings.find(name).orElse("");
        for (var member : type.getEnumConstants()) {
            if (member.name().equals(held)) {
                return member;
            }
        }
        return otherwise;
    }
}
