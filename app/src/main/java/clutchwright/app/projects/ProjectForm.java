package clutchwright.app.projects;

import clutchwright.app.steering.ProjectRoutes;
import clutchwright.app.steering.ProjectRoutes.GoalRead;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.wording.RouteWords;
import clutchwright.engine.genetics.Sex;
import clutchwright.records.projects.Project;
import clutchwright.records.projects.ProjectId;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/// A project as its form holds it.
final class ProjectForm {

    static final String NAME = "name";
    static final String GOAL = "goal";
    private static final String PURCHASES = "purchases";
    private static final double PERCENT = 100;
    private static final double MOST = 1e9;
    private static final int MOST_SEASONS = 60;
    private static final int HUNDRED = 100;

    /// `1.0 Clown: 250`.
    private static final Pattern PURCHASE =
            Pattern.compile("(1\\.0|0\\.1)\\s+(.+?)\\s*:\\s*([0-9]{1,9}(?:[.,][0-9]{1,2})?)");

    private ProjectForm() {}

    /// Empty but for what is usual.
    static Form fresh(String species) {
        return of(
                new Project(
                        new ProjectId(0),
                        0,
                        "",
                        species,
                        "",
                        Project.Telling.BY_EYE,
                        Project.Means.USUAL,
                        0,
                        0,
                        Project.State.OPEN,
                        "",
                        List.of()));
    }

    static Form of(Project project) {
        var means = project.means();
        return Form.EMPTY
                .with("version", Long.toString(project.version()))
                .with(NAME, project.name())
                .with("species", project.species())
                .with(GOAL, project.goal())
                .with("told", project.telling().told().name())
                .with("tested", project.telling().tested())
                .with("testPrice", plain(project.telling().price()))
                .with("clutches", Integer.toString(means.clutches()))
                .with("eggs", Integer.toString(means.eggs()))
                .with("hatchRate", plain(PERCENT * means.hatchRate()))
                .with("maleSeasons", Integer.toString(means.maleSeasons()))
                .with("femaleSeasons", Integer.toString(means.femaleSeasons()))
                .with("confidence", plain(PERCENT * means.confidence()))
                .with("seasons", Integer.toString(means.seasons()))
                .with("clutchWorth", plain(project.clutchWorth()))
                .with("leastClutches", Integer.toString(project.leastClutches()))
                .with("state", project.state().name())
                .with("notes", project.notes())
                .with(
                        PURCHASES,
                        project.purchases().stream()
                                .map(ProjectForm::line)
                                .collect(Collectors.joining("\n")));
    }

    private static String line(Project.Purchase purchase) {
        return "%s %s: %s"
                .formatted(
                        purchase.sex() == Sex.MALE ? "1.0" : "0.1",
                        purchase.genes(),
                        plain(purchase.amount()));
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    static Entry<Project> read(ProjectRoutes routes, Form form, ProjectId id) {
        var fields = new Fields(form);
        var species = form.text("species");
        var name = fields.text(NAME, "Give the project a name.");
        var goal = goal(fields, routes, species, form.text(GOAL));
        var told = fields.choice("told", Project.Told.class);
        var tested = tested(fields, routes, species, form.text("tested"));
        var testPrice = fields.number("testPrice", 0, MOST);
        var clutches = fields.whole("clutches", 0, HUNDRED);
        var eggs = fields.whole("eggs", 1, HUNDRED);
        var hatchRate = fields.number("hatchRate", 1, PERCENT);
        var males = fields.whole("maleSeasons", 1, MOST_SEASONS);
        var females = fields.whole("femaleSeasons", 1, MOST_SEASONS);
        var confidence = fields.number("confidence", 1, 99.9);
        var seasons = fields.whole("seasons", 1, MOST_SEASONS);
        var worth = fields.number("clutchWorth", 0, MOST);
        var least = fields.whole("leastClutches", 0, HUNDRED);
        var state = fields.choice("state", Project.State.class);
        var purchases = purchases(fields, routes, species, form.text(PURCHASES));
        var version = form.text("version");
        return fields.into(
                () ->
                        new Project(
                                id,
                                version.matches("\\d{1,18}") ? Long.parseLong(version) : 0,
                                name.value(),
                                species,
                                goal.value(),
                                new Project.Telling(
                                        told.value(), tested.value(), testPrice.value()),
                                new Project.Means(
                                        clutches.value(),
                                        eggs.value(),
                                        hatchRate.value() / PERCENT,
                                        males.value(),
                                        females.value(),
                                        confidence.value() / PERCENT,
                                        seasons.value()),
                                worth.value(),
                                least.value(),
                                state.value(),
                                form.text("notes"),
                                purchases.value()));
    }

    private static Fields.Read<String> goal(
            Fields fields, ProjectRoutes routes, String species, String line) {
        if (line.isBlank()) {
            return fields.faulty(GOAL, RouteWords.GOAL_EXPECTED);
        }
        return switch (routes.goal(species, line)) {
            case GoalRead.Clear _ -> fields.understood(line);
            case GoalRead.Faulty(var sentence) -> fields.faulty(GOAL, sentence);
        };
    }

    private static Fields.Read<String> tested(
            Fields fields, ProjectRoutes routes, String species, String line) {
        var fault = line.isBlank() ? "" : routes.faultOfLine(species, line);
        return fault.isEmpty() ? fields.understood(line) : fields.faulty("tested", fault);
    }

    private static Fields.Read<List<Project.Purchase>> purchases(
            Fields fields, ProjectRoutes routes, String species, String text) {
        var purchases = new ArrayList<Project.Purchase>();
        var number = 0;
        for (var line : text.lines().toList()) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            var purchase = purchase(line.strip());
            if (purchase.isEmpty()) {
                return fields.faulty(PURCHASES, RouteWords.purchaseLine(number));
            }
            var fault = routes.faultOfLine(species, purchase.get().genes());
            if (!fault.isEmpty()) {
                return fields.faulty(PURCHASES, RouteWords.purchaseLine(number, fault));
            }
            purchases.add(purchase.get());
        }
        return fields.understood(purchases);
    }

    private static Optional<Project.Purchase> purchase(String line) {
        var parts = PURCHASE.matcher(line);
        return parts.matches()
                ? Optional.of(
                        new Project.Purchase(
                                parts.group(2),
                                parts.group(1).equals("1.0") ? Sex.MALE : Sex.FEMALE,
                                new BigDecimal(parts.group(3).replace(',', '.')).doubleValue()))
                : Optional.empty();
    }
}
