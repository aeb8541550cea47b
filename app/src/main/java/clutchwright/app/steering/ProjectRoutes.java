package clutchwright.app.steering;

import clutchwright.app.holding.Holding;
import clutchwright.app.wording.ReadingWords;
import clutchwright.app.wording.RouteWords;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.notation.Reading;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.planning.Biology;
import clutchwright.engine.planning.Goal;
import clutchwright.engine.planning.ImpossibleGoal;
import clutchwright.engine.planning.Route;
import clutchwright.engine.planning.RouteLimits;
import clutchwright.engine.planning.RouteSearch;
import clutchwright.engine.planning.RouteStep;
import clutchwright.engine.planning.Routes;
import clutchwright.engine.planning.SearchWatch;
import clutchwright.engine.planning.Stock;
import clutchwright.engine.planning.ToldApart;
import clutchwright.engine.probability.Fraction;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.projects.Project;
import clutchwright.records.projects.ProjectId;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

        /// @param model as hets are told in the project
        /// @param stock with the animals that could be bought
        /// @param method how far the search went
        /// @param runs of each route that was played through
        /// @param playedRuns of all of them
        /// @param notes of animals that are left out or have to wait
        record Found(
                Goal goal,
                GeneticModel model,
                Stock stock,
                List<Offered> routes,
                Routes.Method method,
                int weighed,
                int runs,
                long playedRuns,
                List<String> notes)
                implements Result {

            public Found {
                routes = List.copyOf(routes);
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

    /// A route, and what is to be bought for it.
    ///
    /// @param buys none where the house's own animals do
    public record Offered(Route route, List<Project.Purchase> buys) {

        public Offered {
            buys = List.copyOf(buys);
        }

        public double price() {
            return buys.stream().mapToDouble(Project.Purchase::amount).sum();
        }

        private boolean isNoBetterThan(Offered other) {
            return price() >= other.price()
                    && route.seasons() >= other.route.seasons()
                    && route.clutches() >= other.route.clutches()
                    && route.chance() <= other.route.chance()
                    && !(price() == other.price()
                            && route.seasons() == other.route.seasons()
                            && route.clutches() == other.route.clutches()
                            && route.chance() == other.route.chance());
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
        var biology = biology(project);
        var house = stock(project.species(), year, biology(project.means()));
        var model = told(project, goal);
        var own = search(project, model, goal, house.stock(), biology, watch);
        if (project.purchases().isEmpty() || !goOn(watch)) {
            return result(project, goal, model, house, house.stock(), List.of(own));
        }
        var more = new ArrayList<>(house.stock().animals());
        more.addAll(purchased(project));
        var stock = new Stock(more);
        return result(
                project,
                goal,
                model,
                house,
                stock,
                List.of(own, search(project, model, goal, stock, biology, watch)));
    }

    /// The best that the routes to a project's goal come to.
    ///
    /// @param chance of having reached it by the last season looked at
    /// @param year by which the chance is the one asked for; empty where it never is
    /// @param meanSeasons until it is reached; where it is not, all that are looked at count
    public record Reach(double chance, Optional<Integer> year, double meanSeasons) {

        static Reach none(Project project) {
            return new Reach(0, Optional.empty(), project.means().seasons());
        }
    }

    /// What the house's animals come to without some, and with one that would be kept. A goal
    /// that is owned already is reached for certain.
    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    public Reach reach(
            Project project, Set<AnimalId> without, Optional<Stock.Own> with, SearchWatch watch) {
        if (!(goal(project.species(), project.goal()) instanceof GoalRead.Clear(var goal))) {
            return Reach.none(project);
        }
        var year = HouseStock.nextSeason(holding.today());
        var biology = biology(project);
        var animals = new ArrayList<Stock.Own>();
        stock(project.species(), year, biology).stock().animals().stream()
                .filter(own -> !without.contains(own.id()))
                .forEach(animals::add);
        with.ifPresent(animals::add);
        var found = search(project, told(project, goal), goal, new Stock(animals), biology, watch);
        return switch (found) {
            case Routes.Refused(var reason) ->
                    reason instanceof ImpossibleGoal.AlreadyOwned
                            ? new Reach(1, Optional.of(year), 0)
                            : Reach.none(project);
            case Routes.Found(var all, _, _, _, _) ->
                    new Reach(
                            all.stream()
                                    .mapToDouble(route -> route.chanceBySeason().getLast())
                                    .max()
                                    .orElse(0),
                            all.stream()
                                    .filter(route -> route.chance() >= project.means().confidence())
                                    .map(route -> year + route.seasons() - 1)
                                    .min(Integer::compare),
                            all.stream()
                                    .mapToDouble(ProjectRoutes::meanSeasons)
                                    .min()
                                    .orElse(project.means().seasons()));
        };
    }

    private static double meanSeasons(Route route) {
        return route.chanceBySeason().stream().mapToDouble(chance -> 1 - chance).sum();
    }

    /// A hatchling as the project would have it, if it is of that sex.
    public Stock.Own asStock(Project project, Animal animal, Sex sex) {
        var biology = biology(project);
        var hatched =
                animal.hatched()
                        .span()
                        .map(span -> span.earliest().getYear())
                        .orElse(holding.today().getYear());
        return new Stock.Own(
                animal.id(),
                sex,
                holding.knowledge().asParent(animal.id(), sex),
                Math.max(
                        1,
                        hatched
                                + biology.seasonsToMaturity(sex)
                                - HouseStock.nextSeason(holding.today())
                                + 1));
    }

    private static boolean goOn(SearchWatch watch) {
        return watch.goOn(0, 0);
    }

    private static Routes search(
            Project project,
            GeneticModel model,
            Goal goal,
            Stock stock,
            Biology biology,
            SearchWatch watch) {
        return RouteSearch.of(model, goal, stock, biology, limits(project.means()), watch);
    }

    /// Of searches without and with what could be bought.
    private Result result(
            Project project,
            Goal goal,
            GeneticModel model,
            HouseStock house,
            Stock stock,
            List<Routes> searches) {
        var offered = new ArrayList<Offered>();
        var method = Routes.Method.EXHAUSTIVE;
        var weighed = 0;
        var played = 0L;
        for (var routes : searches) {
            if (routes instanceof Routes.Found found) {
                found.routes().stream()
                        .map(route -> new Offered(route, buys(project, route)))
                        .filter(one -> !offered.contains(one))
                        .forEach(offered::add);
                weighed += found.weighed();
                played += found.playedRuns();
                if (found.method() == Routes.Method.BEST_FOUND) {
                    method = Routes.Method.BEST_FOUND;
                }
            }
        }
        if (offered.isEmpty()) {
            var refused = (Routes.Refused) searches.getLast();
            return new Result.Refused(RouteWords.of(refused.reason(), this::tag), house.notes());
        }
        return new Result.Found(
                goal,
                model,
                stock,
                offered.stream()
                        .filter(one -> offered.stream().noneMatch(one::isNoBetterThan))
                        .toList(),
                method,
                weighed,
                offered.getFirst().route().runs(),
                played,
                house.notes());
    }

    /// Animals that could be bought have numbers below zero, in the order of the project.
    private List<Stock.Own> purchased(Project project) {
        var lines = holding.lines(project.species());
        var bought = new ArrayList<Stock.Own>();
        for (var i = 0; i < project.purchases().size(); i++) {
            var purchase = project.purchases().get(i);
            if (lines.read(purchase.genes()) instanceof Reading.Understood(var genes, _, _)) {
                bought.add(
                        new Stock.Own(
                                new AnimalId(-1L - i),
                                purchase.sex(),
                                lines.asParent(genes, purchase.sex()).parent(),
                                1));
            }
        }
        return bought;
    }

    private static List<Project.Purchase> buys(Project project, Route route) {
        return route.steps().stream()
                .flatMap(step -> Stream.of(step.dam(), step.sire()))
                .flatMap(
                        parent ->
                                parent instanceof RouteStep.Parent.Own(var animals)
                                                && isPurchase(animals.getFirst())
                                        ? Stream.of(animals.getFirst())
                                        : Stream.empty())
                .distinct()
                .map(id -> purchase(project, id))
                .toList();
    }

    public static boolean isPurchase(AnimalId id) {
        return id.value() < 0;
    }

    /// @throws IndexOutOfBoundsException if it is none of the project's
    public static Project.Purchase purchase(Project project, AnimalId id) {
        return project.purchases().get(Math.toIntExact(-1 - id.value()));
    }

    /// Proven by a first clutch of its own an animal breeds for the project a season later.
    private static Biology biology(Project project) {
        var biology = biology(project.means());
        return project.telling().told() == Project.Told.TEST_CLUTCH
                ? new Biology(
                        biology.eggs(),
                        biology.hatchRate(),
                        biology.males(),
                        biology.maleSeasons() + 1,
                        biology.femaleSeasons() + 1)
                : biology;
    }

    private GeneticModel told(Project project, Goal goal) {
        var model = holding.catalogue(project.species()).model();
        return project.telling().told() == Project.Told.BY_EYE
                ? model
                : ToldApart.at(tested(project, goal), model);
    }

    /// The loci of the goal at which a test tells; all of them where the keeper names none.
    private List<LocusId> tested(Project project, Goal goal) {
        var line = project.telling().tested();
        if (!line.isBlank()
                && holding.lines(project.species()).read(line)
                        instanceof Reading.Understood(var genes, _, _)) {
            return genes.statements().stream()
                    .map(Genes.Statement::locus)
                    .filter(goal.loci()::containsKey)
                    .distinct()
                    .toList();
        }
        return List.copyOf(goal.loci().keySet());
    }

    /// What is wrong with a line of genes; blank if nothing is.
    public String faultOfLine(String species, String line) {
        return holding.findLines(species)
                .map(
                        lines ->
                                lines.read(line) instanceof Reading.Unclear(var faults, _)
                                        ? faults.stream()
                                                .map(ReadingWords::of)
                                                .collect(Collectors.joining(" "))
                                        : "")
                .orElse("");
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
