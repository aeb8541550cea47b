package clutchwright.app.steering;

import clutchwright.app.holding.Holding;
import clutchwright.app.wording.ReadingWords;
import clutchwright.app.wording.RouteWords;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Reading;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.planning.Biology;
import clutchwright.engine.planning.Goal;
import clutchwright.engine.planning.ImpossibleGoal;
import clutchwright.engine.planning.RouteLimits;
import clutchwright.engine.planning.RouteSearch;
import clutchwright.engine.planning.Routes;
import clutchwright.engine.planning.SearchWatch;
import clutchwright.engine.planning.Stock;
import clutchwright.engine.probability.Fraction;
import clutchwright.records.animals.Animals;
import clutchwright.records.projects.Project;
import clutchwright.records.projects.ProjectId;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/// The routes to the goals of the house's projects. They are worked out when asked for, and held
/// until the project changes or the program ends.
public final class ProjectRoutes {

    private static final Duration LONGEST_WAIT = Duration.ofMinutes(5);

    private final Holding holding;
    private final Map<ProjectId, Answer> answers = new ConcurrentHashMap<>();

    ProjectRoutes(Holding holding) {
        this.holding = holding;
    }

    /// What a search came to.
    ///
    /// @param revision of the records it was searched in
    /// @param firstYear in which the clutches of season 1 hatch
    /// @param seconds that it took
    public record Answer(
            Project project, long revision, int firstYear, Result result, double seconds) {}

    public sealed interface Result {

        /// @param notes of animals that are left out or have to wait
        record Found(Goal goal, Stock stock, Routes.Found routes, List<String> notes)
                implements Result {

            public Found {
                notes = List.copyOf(notes);
            }
        }

        /// @param sentence why no route leads there, or none is needed
        record Refused(String sentence, List<String> notes) implements Result {

            public Refused {
                notes = List.copyOf(notes);
            }
        }
    }

    /// What a goal's line was read as.
    public sealed interface GoalRead {

        record Clear(Goal goal) implements GoalRead {}

        record Faulty(String sentence) implements GoalRead {}
    }

    /// The last search for the project as it is now; empty where there was none.
    public Optional<Answer> last(Project project) {
        return Optional.ofNullable(answers.get(project.id()))
                .filter(answer -> answer.project().equals(project));
    }

    /// Whether something was written down since that search.
    public boolean isOld(Answer answer) {
        return answer.revision() != holding.database().revision();
    }

    /// Searches anew.
    public Answer search(Project project, SearchWatch watch) {
        holding.await(LONGEST_WAIT);
        var revision = holding.database().revision();
        var year = HouseStock.nextSeason(holding.today());
        var before = System.nanoTime();
        var result =
                switch (goal(project.species(), project.goal())) {
                    case GoalRead.Faulty(var sentence) -> new Result.Refused(sentence, List.of());
                    case GoalRead.Clear(var goal) -> search(project, goal, year, watch);
                };
        var answer =
                new Answer(project, revision, year, result, (System.nanoTime() - before) / 1e9);
        answers.put(project.id(), answer);
        return answer;
    }

    private Result search(Project project, Goal goal, int year, SearchWatch watch) {
        var biology = biology(project.means());
        var stock = stock(project.species(), year, biology);
        var model = holding.catalogue(project.species()).model();
        return switch (RouteSearch.of(
                model, goal, stock.stock(), biology, limits(project.means()), watch)) {
            case Routes.Found found -> new Result.Found(goal, stock.stock(), found, stock.notes());
            case Routes.Refused(var reason) -> refused(reason, stock);
        };
    }

    private Result refused(ImpossibleGoal reason, HouseStock stock) {
        return new Result.Refused(RouteWords.of(reason, this::tag), stock.notes());
    }

    /// What the house has of a species, as a project sees it.
    public HouseStock stock(String species, int firstYear, Biology biology) {
        var knowledge = holding.knowledge();
        return HouseStock.of(
                holding.database().read(tx -> new Animals(tx).all()),
                species,
                (animal, sex) -> knowledge.asParent(animal.id(), sex),
                firstYear,
                biology);
    }

    private String tag(AnimalId animal) {
        return holding.knowledge().find(animal).map(found -> found.tag().value()).orElse("?");
    }

    /// Reads a goal as the keeper writes it.
    public GoalRead goal(String species, String line) {
        return holding.findLines(species)
                .map(lines -> goal(lines, line))
                .orElseGet(() -> new GoalRead.Faulty("There is no catalogue of " + species + "."));
    }

    private static GoalRead goal(GeneLine lines, String line) {
        return switch (lines.read(line)) {
            case Reading.Unclear(var faults, _) ->
                    new GoalRead.Faulty(
                            faults.stream().map(ReadingWords::of).collect(Collectors.joining(" ")));
            case Reading.Understood(var genes, _, _) ->
                    switch (Goal.read(genes, lines.catalogue().model())) {
                        case Goal.Reading.Clear(var goal) -> new GoalRead.Clear(goal);
                        case Goal.Reading.NamesNothing() ->
                                new GoalRead.Faulty(RouteWords.namesNothing(line));
                        case Goal.Reading.InDoubt(var name) ->
                                new GoalRead.Faulty(RouteWords.inDoubt(name));
                        case Goal.Reading.AsksForPhase(var name) ->
                                new GoalRead.Faulty(RouteWords.asksForPhase(name));
                        case Goal.Reading.ThreeAlleles _ ->
                                new GoalRead.Faulty(RouteWords.THREE_ALLELES);
                    };
        };
    }

    public static Biology biology(Project.Means means) {
        return new Biology(
                means.eggs(),
                fraction(means.hatchRate()),
                Fraction.HALF,
                means.maleSeasons(),
                means.femaleSeasons());
    }

    private static RouteLimits limits(Project.Means means) {
        return new RouteLimits(
                means.clutches(),
                means.confidence(),
                means.seasons(),
                RouteLimits.USUAL_RUNS,
                RouteLimits.USUAL.seed());
    }

    private static Fraction fraction(double share) {
        return Fraction.of(
                BigDecimal.valueOf(share).movePointRight(9).toBigInteger(),
                BigDecimal.TEN.pow(9).toBigInteger());
    }
}
