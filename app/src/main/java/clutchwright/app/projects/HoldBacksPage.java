package clutchwright.app.projects;

import clutchwright.app.holding.Holding;
import clutchwright.app.steering.ProjectRoutes;
import clutchwright.app.steering.WorkDesk;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.web.Section;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ProjectWords;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.ClutchId;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.projects.Project;
import clutchwright.records.projects.Projects;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/// Which hatchlings of a clutch to hold back, and for which project.
@Controller
public class HoldBacksPage {

    private static final String PATH = "/projects/hold-backs";
    private static final String GONE = "This clutch is not on record any more.";

    private final Holding holding;
    private final Preferring preferring;
    private final ProjectRoutes routes;
    private final WorkDesk desk;
    private final Map<ClutchId, HoldBacks.Worked> worked = new ConcurrentHashMap<>();

    HoldBacksPage(Holding holding, Preferring preferring, ProjectRoutes routes, WorkDesk desk) {
        this.holding = holding;
        this.preferring = preferring;
        this.routes = routes;
        this.desk = desk;
    }

    @GetMapping(PATH)
    public Reply show(Form query) {
        return clutch(query)
                .<Reply>map(clutch -> Reply.show(view(clutch)))
                .orElseGet(() -> Reply.missing(GONE));
    }

    @PostMapping(PATH)
    public Reply work(Form form) {
        return clutch(form)
                .<Reply>map(
                        clutch ->
                                desk.start(
                                        "hold-backs " + clutch.id().value(),
                                        "Which to hold back of clutch " + clutch.number(),
                                        Section.PROJECTS,
                                        watch -> {
                                            worked.put(
                                                    clutch.id(),
                                                    new HoldBacks(holding, routes)
                                                            .work(clutch, watch));
                                            return Reply.go(
                                                    PATH + "?clutch=" + clutch.id().value());
                                        }))
                .orElseGet(() -> Reply.missing(GONE));
    }

    private Optional<Clutch> clutch(Form form) {
        var id = form.text("clutch");
        return id.matches("\\d{1,18}")
                ? holding.database()
                        .read(tx -> new Clutches(tx).find(new ClutchId(Long.parseLong(id))))
                : Optional.empty();
    }

    private HoldBacksView view(Clutch clutch) {
        var formats = new Formats(preferring.preferences());
        var words = new ProjectWords(formats);
        var projects =
                holding.database().read(tx -> new Projects(tx).all()).stream()
                        .filter(project -> project.state() == Project.State.OPEN)
                        .filter(project -> project.species().equals(clutch.species()))
                        .map(Project::name)
                        .toList();
        var found = Optional.ofNullable(worked.get(clutch.id()));
        return new HoldBacksView(
                clutch.id().value(),
                clutch.number().toString(),
                projects,
                clutch.hatchlings().size(),
                found.isPresent(),
                found.map(HoldBacks.Worked::complete).orElse(true),
                found.map(HoldBacks.Worked::lines).orElseGet(java.util.List::of).stream()
                        .map(
                                line ->
                                        new HoldBacksView.Line(
                                                line.animal().tag().value(),
                                                "/collection/" + line.animal().id(),
                                                holding.line(line.animal().id()).line(),
                                                line.sexed() ? "" : words.ifOfSex(line.sex()),
                                                words.price(line.price()),
                                                words.verdict(
                                                        line.gains().stream()
                                                                .findFirst()
                                                                .map(HoldBacks.Gain::sooner)
                                                                .orElse(0.0),
                                                        line.gains().stream()
                                                                .findFirst()
                                                                .map(gain -> gain.project().name())
                                                                .orElse("")),
                                                line.gains().stream()
                                                        .map(
                                                                gain ->
                                                                        words.gain(
                                                                                gain.project()
                                                                                        .name(),
                                                                                gain.without()
                                                                                        .chance(),
                                                                                gain.with()
                                                                                        .chance(),
                                                                                gain.without()
                                                                                        .year(),
                                                                                gain.with().year(),
                                                                                gain.sooner()))
                                                        .toList()))
                        .toList());
    }
}
