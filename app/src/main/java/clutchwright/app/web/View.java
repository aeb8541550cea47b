package clutchwright.app.web;

import java.util.Optional;

/// Everything that one template shows, worked out before it is drawn.
///
/// Implemented by a record beside its page. Its template gets it as `view`, and the [Frame] as
/// `frame`.
public interface View {

    /// The template's path under `src/main/jte`, such as `settings/settings.jte`.
    String template();

    /// What the browser's tab says.
    String title();

    /// The screen it belongs to; empty for pages outside of all screens and for pieces of a page.
    default Optional<Section> section() {
        return Optional.empty();
    }
}
