package clutchwright.app.projects;

import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// The house's projects, those under way first.
public record ProjectsView(List<Line> projects) implements View {

    public ProjectsView {
        projects = List.copyOf(projects);
    }

    /// @param stands how far its search is, as a sentence
    public record Line(long id, String name, String goal, boolean done, String stands) {}

    @Override
    public String template() {
        return "projects/projects.jte";
    }

    @Override
    public String title() {
        return "Projects";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.PROJECTS);
    }
}
