package clutchwright.app.projects;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// The form of a project.
///
/// @param id 0 for a new one
/// @param theirs what somebody else has made of it meanwhile; none as a rule
public record ProjectEditView(
        long id, String name, Form form, List<Choice> species, List<String> theirs)
        implements View {

    public ProjectEditView {
        species = List.copyOf(species);
        theirs = List.copyOf(theirs);
    }

    public boolean isNew() {
        return id == 0;
    }

    public String address() {
        return isNew() ? "/projects" : "/projects/" + id;
    }

    @Override
    public String template() {
        return "projects/edit.jte";
    }

    @Override
    public String title() {
        return isNew() ? "New project" : name;
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.PROJECTS);
    }
}
