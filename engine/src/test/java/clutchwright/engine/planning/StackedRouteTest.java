package clutchwright.engine.planning;

import static clutchwright.engine.planning.Projects.best;
import static clutchwright.engine.planning.Projects.goal;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.casebook.TestGenes;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/// Five recessives from singles and doubles: more ways than can all be weighed.
class StackedRouteTest {

    private static final int SEASONS = 30;

    @Test
    void five_recessives_are_never_worse_than_stacking_one_gene_a_generation() {
        var genes = new TestGenes();
        for (var gene : List.of("a", "b", "c", "d", "e")) {
            genes.recessive(gene, gene.toUpperCase(Locale.ROOT));
        }
        var model = genes.model();
        var wanted = goal("a", "A/A", "b", "B/B", "c", "C/C", "d", "D/D", "e", "E/E");
        var stock =
                Projects.with()
                        .female("a", "A/A", "b", "B/B")
                        .male("b", "B/B")
                        .female("c", "C/C", "d", "D/D")
                        .male("e", "E/E")
                        .stock();
        var limits = new RouteLimits(6, 0.9, SEASONS, 2_000, 1);
        var pool = new GenePool(model, wanted, stock, Biology.USUAL);
        var alone = new Prospects(pool, stock, limits, (weighed, routes) -> false);
        alone.search();
        // Stopped at once it has the stacked route and what the stock gives directly.
        var stacked =
                alone.shortlist().stream()
                        .map(PolicySimulation::of)
                        .map(PolicySimulation::play)
                        .mapToDouble(played -> played.chanceBySeason().getLast())
                        .max()
                        .orElseThrow();

        var found = RouteSearch.of(model, wanted, stock, Biology.USUAL, limits);

        assertThat(stacked).isPositive();
        assertThat(best(found, SEASONS)).isGreaterThan(stacked);
        assertThat(((Routes.Found) found).method()).isEqualTo(Routes.Method.BEST_FOUND);
        // A triple and a triple put together, then bred with each other, is a good route:
        // 1/256 a hatchling, against 1/1024 at the end of the stack.
        assertThat(best(found, SEASONS)).isGreaterThan(0.2);
    }
}
