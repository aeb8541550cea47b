package clutchwright.app.web;

import clutchwright.app.wording.Preferences;
import java.util.Optional;

/// Preferences that last as long as the program runs.
final class PreferringInMemory implements Preferring {

    private volatile Preferences preferences = Preferences.FIRST;
    private volatile Optional<String> password = Optional.empty();

    @Override
    public Preferences preferences() {
        return preferences;
    }

    @Override
    public void prefer(Preferences changed) {
        preferences = changed;
    }

    @Override
    public Optional<String> findPassword() {
        return password;
    }

    @Override
    public void setPassword(String hashed) {
        password = Optional.of(hashed);
    }

    @Override
    public void removePassword() {
        password = Optional.empty();
    }
}
