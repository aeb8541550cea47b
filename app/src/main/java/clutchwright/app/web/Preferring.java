package clutchwright.app.web;

import clutchwright.app.wording.Preferences;
import java.util.Optional;

/// Where the keeper's preferences and the owner's password are kept.
public interface Preferring {

    Preferences preferences();

    void prefer(Preferences preferences);

    /// The password in the form in which it is stored, from which it cannot be read back; empty
    /// where none was set.
    Optional<String> findPassword();

    /// @param hashed as [#findPassword] gives it
    void setPassword(String hashed);

    void removePassword();
}
