package clutchwright.engine.planning;

import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Sex;
import java.util.ArrayList;
import java.util.List;

/// Finds the routes to a goal: which pairings, in which order, and what to keep of each.
///
/// What is kept is told by eye alone: a look and a sex; what it holds unseen stays a chance. No
/// route that is given back is worse than another in seasons, clutches and chance. After a season
/// the same search from what is then owned gives the routes anew. `docs/mathematics.md`,
/// "Routes".
public final class RouteSearch {

    private static final int FEW = 4;

    private final GeneticModel model;
    private final Goal goal;
    private final Stock stock;
    private final Biology biology;
    private final RouteLimits limits;
    private final SearchWatch watch;

    private RouteSearch(
            GeneticModel model,
            Goal goal,
            Stock stock,
            Biology biology,
            RouteLimits limits,
            SearchWatch watch) {
        this.model = model;
        this.goal = goal;
        this.stock = stock;
        this.biology = biology;
        this.limits = limits;
        this.watch = watch;
    }

    public static Routes of(
            GeneticModel model, Goal goal, Stock stock, Biology biology, RouteLimits limits) {
        return of(model, goal, stock, biology, limits, SearchWatch.NONE);
    }

    /// @throws IllegalArgumentException if the model does not know a locus of the goal
    public static Routes of(
            GeneticModel model,
            Goal goal,
            Stock stock,
            Biology biology,
            RouteLimits limits,
            SearchWatch watch) {
        return new RouteSearch(model, goal, stock, biology, limits, watch).routes();
    }

    private Routes routes() {
        var owned = new GenePool(model, goal, stock, biology);
        var having =
                stock.animals().stream()
                        .filter(own -> owned.meets(owned.kindOf(own.genotype(), own.sex())))
                        .toList();
        var males = count(having, Sex.MALE);
        var females = count(having, Sex.FEMALE);
        if (goal.isMetBy(males, females)) {
            return new Routes.Refused(
                    new ImpossibleGoal.AlreadyOwned(having.stream().map(Stock.Own::id).toList()));
        }
        var refused = new Possibility(model, goal, stock, limits).refused();
        if (refused.isPresent()) {
            return new Routes.Refused(refused.get());
        }
        var missing = goal.without(males, females);
        var used = withoutWhoHides();
        var pool = new GenePool(model, missing, used, biology);
        var prospects = new Prospects(pool, used, limits, watch);
        prospects.search();
        var plans = prospects.shortlist();
        var played = played(plans);
        if (played.isEmpty()) {
            return new Routes.Refused(new ImpossibleGoal.OutOfReach(limits.seasons()));
        }
        return new Routes.Found(
                BestRoutes.of(played, limits.confidence()),
                prospects.isComplete() ? Routes.Method.EXHAUSTIVE : Routes.Method.BEST_FOUND,
                prospects.weighed(),
                (long) plans.size() * limits.runs(),
                stock.animals().stream()
                        .filter(own -> !used.animals().contains(own))
                        .map(Stock.Own::id)
                        .toList());
    }

    /// Who may have what hides the goal's genes, and is not needed for them, is left aside, as a
    /// breeder would: else nothing can be read on its descendants, and every gene hangs together
    /// with every other. A stock of a few animals is taken as it is.
    private Stock withoutWhoHides() {
        if (stock.animals().size() <= FEW) {
            return stock;
        }
        var hiding = GenePool.hiding(model, goal, stock);
        var rest =
                new Stock(
                        stock.animals().stream()
                                .filter(own -> hiding.stream().noneMatch(own.genotype()::mayHave))
                                .toList());
        return new Possibility(model, goal, rest, limits).refused().isEmpty() ? rest : stock;
    }

    private static int count(List<Stock.Own> animals, Sex sex) {
        return (int) animals.stream().filter(own -> own.sex() == sex).count();
    }

    /// Those that ever reach the goal.
    private List<Route> played(List<RoutePlan> plans) {
        // What is worked out when first asked for is, before they are played side by side.
        var ready = plans.stream().map(PolicySimulation::of).toList();
        var played = ready.parallelStream().map(PolicySimulation::play).toList();
        var routes = new ArrayList<Route>();
        for (var i = 0; i < plans.size(); i++) {
            if (played.get(i).chanceBySeason().getLast() > 0) {
                routes.add(route(plans.get(i), played.get(i)));
            }
        }
        return routes;
    }

    private Route route(RoutePlan plan, PolicySimulation.Played played) {
        var chances = played.chanceBySeason();
        var seasons = limits.seasons();
        for (var s = chances.size(); s >= 1; s--) {
            if (chances.get(s - 1) >= limits.confidence()) {
                seasons = s;
            }
        }
        return new Route(
                seasons,
                played.clutches(),
                chances.get(seasons - 1),
                new RouteWriter(plan).steps(),
                chances,
                limits.runs());
    }
}
