package clutchwright.app.collection;

import clutchwright.app.web.View;
import java.util.List;

/// Completions of a field, as a piece of a page.
public record CompletionView(List<Completion> completions) implements View {

    public CompletionView {
        completions = List.copyOf(completions);
    }

    /// @param value what is filled in
    /// @param label what stands beside it; may be blank
    public record Completion(String value, String label) {}

    @Override
    public String template() {
        return "collection/completions.jte";
    }

    @Override
    public String title() {
        return "";
    }
}
