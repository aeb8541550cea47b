package clutchwright.app.web;

import java.io.Serializable;
import java.util.Optional;

/// One sentence about what was just done, shown once on the next page.
///
/// @param offer a button beside it, such as `Undo`
public record Flash(String text, Optional<Offer> offer) implements Serializable {

    public Flash(String text) {
        this(text, Optional.empty());
    }

    /// A button that posts to a path.
    public record Offer(String label, String path) implements Serializable {}
}
