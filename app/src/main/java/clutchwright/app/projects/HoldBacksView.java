package clutchwright.app.projects;

import clutchwright.app.parts.Markup;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// Which hatchlings of a clutch to hold back.
///
/// @param projects under way, by name
/// @param complete whether it was not stopped before all were looked at
public record HoldBacksView(
        long clutch,
        String number,
        List<String> projects,
        int hatchlings,
        boolean worked,
        boolean complete,
        List<Line> lines)
        implements View {

    public HoldBacksView {
        projects = List.copyOf(projects);
        lines = List.copyOf(lines);
    }

    /// @param sex `if it is a female`; blank where it is sexed
    /// @param gains project by project, as sentences
    public record Line(
            String tag,
            String path,
            Markup genes,
            String sex,
            String price,
            String verdict,
            List<String> gains) {

        public Line {
            gains = List.copyOf(gains);
        }
    }

    @Override
    public String template() {
        return "projects/holdBacks.jte";
    }

    @Override
    public String title() {
        return "Hold-backs of clutch " + number;
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.PROJECTS);
    }
}
