package clutchwright.app.web;

import java.util.Optional;

/// The entry that the request at hand carries: what the request writes first is written under its
/// key.
public final class EntryInHand {

    static final ScopedValue<EntryInHand> NOW = ScopedValue.newInstance();

    private final String key;
    private boolean written;

    EntryInHand(String key) {
        this.key = key;
    }

    /// The key of what is about to be written, as it came; empty where there is none, or where
    /// something was written under it already in this request.
    public static Optional<String> key() {
        return NOW.isBound() && !NOW.get().written ? Optional.of(NOW.get().key) : Optional.empty();
    }

    /// Whatever else this request writes belongs to what it has written now.
    public static void isWritten() {
        NOW.get().written = true;
    }

    /// Another request wrote under the same key while this one was on its way.
    public static final class WrittenMeanwhile extends RuntimeException {

        private static final long serialVersionUID = 1;

        public WrittenMeanwhile() {
            super("another request wrote this entry");
        }
    }
}
