package clutchwright.app.labels;

import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// What a label leads to where that is not one thing: several, or nothing at the moment.
///
/// @param where the place it is at; may be blank
/// @param none what is said where there is no line
/// @param further where to go from there
public record ScannedView(String name, String where, String none, List<Line> lines, String further)
        implements View {

    public ScannedView {
        lines = List.copyOf(lines);
    }

    /// One of several.
    public record Line(String path, String name, String words) {}

    @Override
    public String template() {
        return "labels/scanned.jte";
    }

    @Override
    public String title() {
        return name;
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.COLLECTION);
    }
}
