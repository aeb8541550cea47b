package clutchwright.app.today;

import clutchwright.records.settings.Settings;
import clutchwright.records.store.Transaction;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/// The secret end of the calendar's address. Only its digest is kept: whoever reads the records
/// cannot read the calendar by it.
final class CalendarSecret {

    static final String SETTING = "calendar/secret-digest";

    private static final int BYTES = 32;

    private CalendarSecret() {}

    static boolean isMade(Transaction tx) {
        return new Settings(tx).find(SETTING).isPresent();
    }

    /// A new one; the one before is void.
    static String make(Transaction tx) {
        var bytes = new byte[BYTES];
        new SecureRandom().nextBytes(bytes);
        var secret = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        new Settings(tx).put(SETTING, digest(secret));
        return secret;
    }

    static boolean fits(Transaction tx, String secret) {
        // In the same time wherever they differ.
        return new Settings(tx)
                .find(SETTING)
                .filter(
                        kept ->
                                MessageDigest.isEqual(
                                        kept.getBytes(StandardCharsets.UTF_8),
                                        digest(secret).getBytes(StandardCharsets.UTF_8)))
                .isPresent();
    }

    private static String digest(String secret) {
        try {
            return HexFormat.of()
                    .formatHex(
                            MessageDigest.getInstance("SHA-256")
                                    .digest(secret.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
