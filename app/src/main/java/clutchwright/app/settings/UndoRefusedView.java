package clutchwright.app.settings;

import clutchwright.app.holding.ChangeLine;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// A change could not be taken back.
///
/// @param what it was
/// @param later the changes to be taken back first; none where what stands in the way is not in
///     the journal
public record UndoRefusedView(String what, List<ChangeLine> later) implements View {

    public UndoRefusedView {
        later = List.copyOf(later);
    }

    @Override
    public String template() {
        return "settings/undoRefused.jte";
    }

    @Override
    public String title() {
        return "Not taken back";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SETTINGS);
    }
}
