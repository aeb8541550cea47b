package clutchwright.engine.planning;

import static clutchwright.engine.planning.Projects.best;
import static clutchwright.engine.planning.Projects.goal;
import static clutchwright.engine.planning.Projects.routes;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.genetics.GeneticModel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import org.junit.jupiter.api.Test;

/// What must hold of routes whatever the genes are.
class RouteLawsTest {

    private static final GeneticModel MODEL =
            new TestGenes().recessive("a", "A").recessive("b", "B").incomplete("d", "D").model();

    private static final List<Goal> GOALS =
            List.of(
                    goal("a", "A/A", "b", "B/B"),
                    goal("a", "A/A", "b", "B/B", "d", "D/+"),
                    goal(1, 1, 0, "b", "B/B", "d", "D/D"));

    /// Two best chances, each seen in so many runs, differ by no more unless once in some ten
    /// thousand times.
    private static final double NOISE = 4 * Math.sqrt(0.25 / 20_000) * Math.sqrt(2);

    private static Projects few() {
        return Projects.with().female("a", "A/A", "d", "D/+").male("b", "B/B", "d", "D/+");
    }

    private static Routes routesFor(Goal goal, Stock stock, int clutches, double confidence) {
        return RouteSearch.of(
                MODEL,
                goal,
                stock,
                Biology.USUAL,
                new RouteLimits(clutches, confidence, 12, 20_000, 3));
    }

    @Test
    void more_clutches_never_lower_the_chance() {
        for (var goal : GOALS) {
            for (var season : List.of(4, 7, 12)) {
                var chances = new ArrayList<Double>();
                for (var clutches = 1; clutches <= 4; clutches++) {
                    chances.add(best(routesFor(goal, few().stock(), clutches, 0.9), season));
                }
                for (var i = 1; i < chances.size(); i++) {
                    assertThat(chances.get(i))
                            .as("%s by season %d: %s", goal, season, chances)
                            .isGreaterThanOrEqualTo(chances.get(i - 1) - NOISE);
                }
            }
        }
    }

    @Test
    void a_wider_stock_never_lengthens_the_best_route() {
        for (var goal : GOALS) {
            var seasons = new ArrayList<Integer>();
            seasons.add(quickest(routesFor(goal, few().stock(), 2, 0.8)));
            seasons.add(quickest(routesFor(goal, few().female("a", "A/+").stock(), 2, 0.8)));
            seasons.add(
                    quickest(
                            routesFor(
                                    goal,
                                    few().female("a", "A/+").male("a", "A/+", "b", "B/+").stock(),
                                    2,
                                    0.8)));

            assertThat(seasons).isSortedAccordingTo((one, other) -> other - one);
        }
    }

    private static int quickest(Routes found) {
        return routes(found).stream().mapToInt(Route::seasons).min().orElseThrow();
    }

    @Test
    void higher_confidence_never_takes_fewer_seasons_or_clutches() {
        for (var goal : GOALS) {
            var seasons = new ArrayList<Integer>();
            var clutches = new ArrayList<Integer>();
            for (var confidence : List.of(0.5, 0.8, 0.95)) {
                var found = routesFor(goal, few().stock(), 2, confidence);
                seasons.add(quickest(found));
                clutches.add(
                        routes(found).stream()
                                .mapToInt(
                                        route ->
                                                route.steps().stream()
                                                        .mapToInt(RouteStep::clutches)
                                                        .sum())
                                .min()
                                .orElseThrow());
            }

            assertThat(seasons).isSorted();
            assertThat(clutches).isSorted();
        }
    }

    @Test
    void the_same_seed_gives_the_same_routes() {
        var once = routesFor(GOALS.getFirst(), few().stock(), 3, 0.9);

        assertThat(routesFor(GOALS.getFirst(), few().stock(), 3, 0.9)).isEqualTo(once);
    }

    @Test
    void no_route_is_at_least_as_good_as_another_in_everything() {
        for (var goal : GOALS) {
            var found = routes(routesFor(goal, few().stock(), 3, 0.9));
            for (var one : found) {
                for (var other : found) {
                    var asGood =
                            one.seasons() <= other.seasons()
                                    && one.clutches() <= other.clutches()
                                    && one.chance() >= other.chance();
                    assertThat(asGood).as("%s and %s", one, other).isEqualTo(one == other);
                }
            }
        }
    }

    @Test
    void every_parent_is_there_and_grown() {
        for (var goal : GOALS) {
            for (var route : routes(routesFor(goal, few().stock(), 3, 0.9))) {
                var grown = new HashMap<Integer, Integer>();
                for (var step : route.steps()) {
                    for (var parent : List.of(step.dam(), step.sire())) {
                        if (parent instanceof RouteStep.Parent.Kept(var number)) {
                            assertThat(grown).containsKey(number);
                            assertThat(grown.get(number)).isLessThanOrEqualTo(step.season());
                        }
                    }
                    for (var kept : step.keep()) {
                        kept.sex()
                                .ifPresent(
                                        sex ->
                                                grown.put(
                                                        kept.number(),
                                                        step.season()
                                                                + Biology.USUAL.seasonsToMaturity(
                                                                        sex)));
                    }
                }
            }
        }
    }
}
