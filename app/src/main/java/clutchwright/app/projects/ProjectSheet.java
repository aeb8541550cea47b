package clutchwright.app.projects;

import clutchwright.app.holding.Holding;
import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.app.parts.GeneLineMarkup.Carried;
import clutchwright.app.parts.Markup;
import clutchwright.app.parts.Strands;
import clutchwright.app.steering.ProjectRoutes;
import clutchwright.app.steering.ProjectRoutes.Answer;
import clutchwright.app.steering.ProjectRoutes.Offered;
import clutchwright.app.steering.ProjectRoutes.Result;
import clutchwright.app.wording.Chances;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.KinshipWords;
import clutchwright.app.wording.ProjectWords;
import clutchwright.app.wording.RouteWords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.planning.Keeping;
import clutchwright.engine.planning.Route;
import clutchwright.engine.planning.RouteStep;
import clutchwright.engine.planning.Routes;
import clutchwright.records.projects.Project;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/// Sets a project's routes out for its page.
final class ProjectSheet {

    private static final int LONGEST_FRACTION = 9;

    private final Holding holding;
    private final ProjectRoutes routes;
    private final ProjectWords words;

    ProjectSheet(Holding holding, ProjectRoutes routes, Formats formats) {
        this.holding = holding;
        this.routes = routes;
        this.words = new ProjectWords(formats);
    }

    ProjectsView.Line line(Project project) {
        return new ProjectsView.Line(
                project.id().value(),
                project.name(),
                project.goal(),
                project.state() == Project.State.DONE,
                routes.last(project)
                        .map(answer -> stands(project, answer))
                        .orElse(ProjectWords.NOT_SEARCHED));
    }

    private String stands(Project project, Answer answer) {
        return switch (answer.result()) {
            case Result.Refused(var sentence, _) -> sentence;
            case Result.Found found -> {
                var best = found.routes().get(first(project, found) - 1);
                yield lead(project, answer, best);
            }
        };
    }

    private String lead(Project project, Answer answer, Offered offered) {
        var route = offered.route();
        return words.lead(
                answer.firstYear() + route.seasons() - 1,
                route.seasons(),
                route.clutches(),
                route.chance(),
                project.means().confidence());
    }

    ProjectView view(Project project, int asked) {
        var answer = routes.last(project);
        var result = answer.map(Answer::result);
        var found = result.filter(Result.Found.class::isInstance).map(Result.Found.class::cast);
        var shown =
                found.map(
                        some ->
                                asked == 0
                                        ? first(project, some)
                                        : Math.min(asked, some.routes().size()));
        return new ProjectView(
                project.id().value(),
                project.version(),
                project.name(),
                project.goal(),
                project.state() == Project.State.DONE,
                words.means(project),
                project.notes(),
                answer.isPresent(),
                answer.filter(routes::isOld).isPresent(),
                result.map(one -> one instanceof Result.Refused(var sentence, _) ? sentence : "")
                        .orElse(""),
                found.map(some -> choices(answer.orElseThrow(), some, shown.orElse(1)))
                        .orElseGet(List::of),
                found.map(some -> shown(project, answer.orElseThrow(), some, shown.orElseThrow())),
                found.map(some -> how(some, answer.orElseThrow())).orElse(""),
                found.map(some -> RouteDocument.cautions(some.model(), some.goal()))
                        .orElseGet(List::of),
                result.map(this::notes).orElseGet(List::of));
    }

    /// The quickest that reaches the chance asked for; if none does, the likeliest.
    private static int first(Project project, Result.Found found) {
        var likeliest = 1;
        for (var i = 0; i < found.routes().size(); i++) {
            var chance = found.routes().get(i).route().chance();
            if (chance >= project.means().confidence()) {
                return i + 1;
            }
            if (chance > found.routes().get(likeliest - 1).route().chance()) {
                likeliest = i + 1;
            }
        }
        return likeliest;
    }

    private List<ProjectView.Choice> choices(Answer answer, Result.Found found, int shown) {
        return IntStream.rangeClosed(1, found.routes().size())
                .mapToObj(
                        number -> {
                            var offered = found.routes().get(number - 1);
                            return new ProjectView.Choice(
                                    number,
                                    words.choice(
                                            answer.firstYear() + offered.route().seasons() - 1,
                                            offered.route().clutches(),
                                            offered.route().chance(),
                                            offered.buys()),
                                    number == shown);
                        })
                .toList();
    }

    private ProjectView.Shown shown(
            Project project, Answer answer, Result.Found found, int number) {
        var offered = found.routes().get(number - 1);
        var route = offered.route();
        var strands = new RouteStrands(found.model(), found.goal(), found.stock());
        var drawn = new HashMap<Integer, Strands>();
        route.steps().forEach(step -> drawn.putAll(strands.of(step)));
        var inbreeding = holding.knowledge().kinship(project.species()).map(RouteKinship::new);
        var steps = new ArrayList<ProjectView.Step>();
        for (var step : route.steps()) {
            steps.add(
                    step(
                            project,
                            answer,
                            route,
                            step,
                            steps.size() + 1,
                            drawn,
                            inbreeding.map(one -> one.ofYoung(step)).orElse(0.0)));
        }
        return new ProjectView.Shown(
                number,
                lead(project, answer, offered),
                words.buys(offered.buys()),
                new RouteTree(nodes(project, answer, route, drawn))
                        .draw(ProjectWords.TREE.formatted(number)),
                steps,
                ChanceDrawing.draw(
                        route.chanceBySeason(),
                        answer.firstYear(),
                        project.means().confidence(),
                        ProjectWords.CHANCES),
                IntStream.range(0, route.chanceBySeason().size())
                        .mapToObj(
                                i ->
                                        new ProjectView.Season(
                                                answer.firstYear() + i,
                                                Chances.percent(route.chanceBySeason().get(i))))
                        .toList());
    }

    private List<RouteTree.Node> nodes(
            Project project, Answer answer, Route route, Map<Integer, Strands> drawn) {
        var nodes = new ArrayList<RouteTree.Node>();
        for (var step : route.steps()) {
            nodes.add(
                    new RouteTree.Node(
                            "step-" + (nodes.size() + 1),
                            answer.firstYear() + step.season() - 1,
                            treeParent(project, step.dam()),
                            treeParent(project, step.sire()),
                            step.keep().stream()
                                    .map(
                                            keeping ->
                                                    new RouteTree.Kept(
                                                            keeping.number(),
                                                            name(keeping)
                                                                    + " "
                                                                    + RouteWords.look(keeping),
                                                            keeping.sex(),
                                                            keeping.isGoal(),
                                                            Optional.ofNullable(
                                                                    drawn.get(keeping.number()))))
                                    .toList()));
        }
        return nodes;
    }

    private RouteTree.Parent treeParent(Project project, RouteStep.Parent parent) {
        return switch (parent) {
            case RouteStep.Parent.Kept(var number) ->
                    new RouteTree.Parent("K" + number, Optional.of(number));
            case RouteStep.Parent.Own(var animals) ->
                    new RouteTree.Parent(
                            animals.stream()
                                    .map(id -> name(project, id))
                                    .collect(Collectors.joining(" or ")),
                            Optional.empty());
        };
    }

    private String name(Project project, AnimalId id) {
        return ProjectRoutes.isPurchase(id)
                ? words.bought(ProjectRoutes.purchase(project, id))
                : tag(id);
    }

    private String tag(AnimalId id) {
        return holding.knowledge().find(id).map(found -> found.tag().value()).orElse("?");
    }

    private ProjectView.Step step(
            Project project,
            Answer answer,
            Route route,
            RouteStep step,
            int number,
            Map<Integer, Strands> drawn,
            double inbreeding) {
        return new ProjectView.Step(
                "step-" + number,
                answer.firstYear() + step.season() - 1,
                parents(project, route, step.dam()),
                parents(project, route, step.sire()),
                words.clutches(step.clutches(), step.chance()),
                step.keep().stream().map(keeping -> keep(keeping, drawn)).toList(),
                inbreeding > 0 ? KinshipWords.young(inbreeding) : "",
                inbreeding >= RouteWords.CLOSE,
                predict(step),
                words.why(project, step));
    }

    private List<ProjectView.Parent> parents(
            Project project, Route route, RouteStep.Parent parent) {
        return switch (parent) {
            case RouteStep.Parent.Kept(var number) ->
                    List.of(
                            new ProjectView.Parent(
                                    "K" + number, "", new Markup().text(lookOf(route, number))));
            case RouteStep.Parent.Own(var animals) ->
                    animals.stream()
                            .map(
                                    id ->
                                            ProjectRoutes.isPurchase(id)
                                                    ? new ProjectView.Parent(
                                                            name(project, id), "", new Markup())
                                                    : new ProjectView.Parent(
                                                            tag(id),
                                                            "/collection/" + id,
                                                            holding.line(id).line()))
                            .toList();
        };
    }

    private static String lookOf(Route route, int number) {
        return route.steps().stream()
                .flatMap(step -> step.keep().stream())
                .filter(keeping -> keeping.number() == number)
                .map(RouteWords::look)
                .findFirst()
                .orElse("");
    }

    private String predict(RouteStep step) {
        if (step.dam() instanceof RouteStep.Parent.Own(var dams)
                && step.sire() instanceof RouteStep.Parent.Own(var sires)
                && !ProjectRoutes.isPurchase(dams.getFirst())
                && !ProjectRoutes.isPurchase(sires.getFirst())) {
            return "/season/predict?damTag=%s&sireTag=%s"
                    .formatted(encoded(dams.getFirst()), encoded(sires.getFirst()));
        }
        return "";
    }

    private String encoded(AnimalId id) {
        return URLEncoder.encode(tag(id), StandardCharsets.UTF_8);
    }

    private ProjectView.Keep keep(Keeping keeping, Map<Integer, Strands> drawn) {
        return new ProjectView.Keep(
                name(keeping),
                keeping.isGoal(),
                words.count(keeping),
                RouteWords.look(keeping),
                new GeneLineMarkup(
                                List.of(),
                                keeping.carries().stream()
                                        .map(
                                                held ->
                                                        new Carried(
                                                                held.allele().name(),
                                                                held.chance()))
                                        .toList())
                        .carried(),
                Optional.ofNullable(drawn.get(keeping.number()))
                        .map(Strands::large)
                        .orElseGet(Markup::new),
                perHatchling(keeping));
    }

    private static String perHatchling(Keeping keeping) {
        var fraction = keeping.perHatchling().toString();
        var percent = Chances.percent(keeping.perHatchling().value());
        return fraction.length() > LONGEST_FRACTION || !fraction.contains("/")
                ? percent
                : fraction + ", that is " + percent;
    }

    private static String name(Keeping keeping) {
        return keeping.isGoal() ? "Goal" : "K" + keeping.number();
    }

    private String how(Result.Found found, Answer answer) {
        return RouteWords.method(
                found.method() == Routes.Method.EXHAUSTIVE ? "exhaustive" : "best found",
                found.runs(),
                Math.round(found.playedRuns() / Math.max(1e-3, answer.seconds())));
    }

    private List<String> notes(Result result) {
        return switch (result) {
            case Result.Found found -> found.notes();
            case Result.Refused(_, var notes) -> notes;
        };
    }
}
