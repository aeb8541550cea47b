package clutchwright.app.projects;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.steering.LongWork;
import clutchwright.app.steering.ProjectRoutes;
import clutchwright.app.steering.WorkDesk;
import clutchwright.app.web.Choice;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.web.Section;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ProjectWords;
import clutchwright.app.wording.SpeciesWords;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Problem;
import clutchwright.records.projects.Project;
import clutchwright.records.projects.ProjectId;
import clutchwright.records.projects.Projects;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// What the house breeds towards over generations, and the routes there.
@Controller
public class ProjectsPage {

    private static final String PATH = "/projects";
    private static final String GONE = "This project is not on record any more.";

    private final Holding holding;
    private final Preferring preferring;
    private final ProjectRoutes routes;
    private final WorkDesk desk;

    ProjectsPage(Holding holding, Preferring preferring, ProjectRoutes routes, WorkDesk desk) {
        this.holding = holding;
        this.preferring = preferring;
        this.routes = routes;
        this.desk = desk;
    }

    @GetMapping(PATH)
    public Reply list() {
        var projects = holding.database().read(tx -> new Projects(tx).all());
        var sheet = sheet();
        return Reply.show(new ProjectsView(projects.stream().map(sheet::line).toList()));
    }

    @GetMapping(PATH + "/new")
    public Reply fresh() {
        return Reply.show(edit(Optional.empty(), ProjectForm.fresh(holding.mainSpecies())));
    }

    @PostMapping(PATH)
    public Reply add(Form form) {
        return switch (ProjectForm.read(routes, form, new ProjectId(0))) {
            case Entry.Faulty<Project>(var faulty) -> Reply.faulty(edit(Optional.empty(), faulty));
            case Entry.Understood<Project>(var project) ->
                    answer(
                            Written.to(
                                    holding,
                                    "Began the project " + project.name(),
                                    tx -> new Projects(tx).add(project)),
                            Optional.empty(),
                            form);
        };
    }

    @GetMapping(PATH + "/{id}")
    public Reply show(@PathVariable long id, Form query) {
        var asked = query.text("route");
        var number = asked.matches("\\d{1,3}") ? Integer.parseInt(asked) : 0;
        return find(id).<Reply>map(project -> Reply.show(sheet().view(project, number)))
                .orElseGet(() -> Reply.missing(GONE));
    }

    @GetMapping(PATH + "/{id}/edit")
    public Reply edit(@PathVariable long id) {
        return find(id).<Reply>map(
                        project -> Reply.show(edit(Optional.of(project), ProjectForm.of(project))))
                .orElseGet(() -> Reply.missing(GONE));
    }

    @PostMapping(PATH + "/{id}")
    public Reply save(@PathVariable long id, Form form) {
        var found = find(id);
        if (found.isEmpty()) {
            return Reply.missing(GONE);
        }
        return switch (ProjectForm.read(routes, form, new ProjectId(id))) {
            case Entry.Faulty<Project>(var faulty) -> Reply.faulty(edit(found, faulty));
            case Entry.Understood<Project>(var project) ->
                    answer(
                            Written.to(
                                    holding,
                                    "Changed the project " + project.name(),
                                    tx -> new Projects(tx).update(project)),
                            found,
                            form);
        };
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private Reply answer(Written<Edit<Project>> written, Optional<Project> before, Form form) {
        return switch (written.result()) {
            case Edit.Saved<Project>(var saved) ->
                    written.going(PATH + "/" + saved.id(), saved.name() + " is saved.");
            case Edit.Refused<Project>(var problems) ->
                    Reply.faulty(edit(before, withProblems(form, problems)));
            case Edit.Stale<Project>(var current) ->
                    Reply.conflictWith(
                            new ProjectEditView(
                                    current.id().value(),
                                    current.name(),
                                    form.with("version", Long.toString(current.version())),
                                    species(),
                                    theirs(current)));
        };
    }

    private List<String> theirs(Project current) {
        var theirs = new java.util.ArrayList<String>();
        theirs.add(current.name());
        theirs.add("Goal: " + current.goal());
        theirs.addAll(new ProjectWords(formats()).means(current));
        return theirs;
    }

    private static Form withProblems(Form form, List<Problem> problems) {
        var faulty = form;
        for (var problem : problems) {
            faulty =
                    problem instanceof Problem.NameTaken(_, var name)
                            ? faulty.withFault(
                                    ProjectForm.NAME,
                                    "Another project is called “%s”.".formatted(name))
                            : faulty.withFault(ProjectForm.NAME, "Give it a name and a goal.");
        }
        return faulty;
    }

    @PostMapping(PATH + "/{id}/remove")
    public Reply remove(@PathVariable long id, Form form) {
        var version = form.text("version");
        var written =
                Written.to(
                        holding,
                        "Removed a project",
                        tx ->
                                new Projects(tx)
                                        .remove(
                                                new ProjectId(id),
                                                version.matches("\\d{1,18}")
                                                        ? Long.parseLong(version)
                                                        : 0));
        return switch (written.result()) {
            case Edit.Saved<Project>(var removed) ->
                    written.going(PATH, removed.name() + " is removed.");
            case Edit.Refused<Project> _ -> Reply.missing(GONE);
            case Edit.Stale<Project> _ ->
                    Reply.conflict("Somebody else changed this project: look, and try again.");
        };
    }

    /// Looks for the routes behind a page of its own.
    @PostMapping(PATH + "/{id}/search")
    public Reply search(@PathVariable long id) {
        return find(id).<Reply>map(
                        project ->
                                desk.start(
                                        "project " + id,
                                        "Looking for the routes of " + project.name(),
                                        Section.PROJECTS,
                                        watch -> search(project, watch)))
                .orElseGet(() -> Reply.missing(GONE));
    }

    private Reply.Go search(Project project, LongWork.Watch watch) {
        routes.search(
                project, (weighed, found) -> watch.goOn(ProjectWords.searching(weighed, found)));
        return Reply.go(PATH + "/" + project.id());
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private ProjectEditView edit(Optional<Project> project, Form form) {
        return new ProjectEditView(
                project.map(found -> found.id().value()).orElse(0L),
                project.map(Project::name).orElse(""),
                form,
                species(),
                List.of());
    }

    private List<Choice> species() {
        return Catalogue.shippedSpecies().stream()
                .map(id -> new Choice(id, SpeciesWords.name(holding.catalogue(id).species())))
                .toList();
    }

    private Optional<Project> find(long id) {
        return holding.database().read(tx -> new Projects(tx).find(new ProjectId(id)));
    }

    private ProjectSheet sheet() {
        return new ProjectSheet(holding, routes, formats());
    }

    private Formats formats() {
        return new Formats(preferring.preferences());
    }
}
