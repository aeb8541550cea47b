package clutchwright.app.web;

import java.util.List;
import java.util.Objects;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.crypto.password.PasswordEncoder;

/// The owner's one password, checked and set.
public final class OwnerPassword implements AuthenticationProvider {

    /// Shorter ones are guessed too soon.
    public static final int LEAST_LENGTH = 10;

    /// What the hash reads; more would be ignored unseen.
    public static final int MOST_LENGTH = 72;

    private final Preferring preferring;
    private final PasswordEncoder encoder;

    OwnerPassword(Preferring preferring, PasswordEncoder encoder) {
        this.preferring = preferring;
        this.encoder = encoder;
    }

    public boolean isSet() {
        return preferring.findPassword().isPresent();
    }

    public void set(String password) {
        preferring.setPassword(Objects.requireNonNull(encoder.encode(password)));
    }

    public void remove() {
        preferring.removePassword();
    }

    @Override
    public Authentication authenticate(Authentication attempt) {
        var typed = String.valueOf(attempt.getCredentials());
        var kept = preferring.findPassword();
        if (kept.isEmpty() || !encoder.matches(typed, kept.get())) {
            throw new BadCredentialsException("wrong password");
        }
        return UsernamePasswordAuthenticationToken.authenticated(
                "owner", null, List.of(new SimpleGrantedAuthority("ROLE_OWNER")));
    }

    @Override
    public boolean supports(Class<?> authentication) {
        return authentication == UsernamePasswordAuthenticationToken.class;
    }
}
