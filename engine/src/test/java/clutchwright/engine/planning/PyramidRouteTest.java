package clutchwright.engine.planning;

import static clutchwright.engine.planning.Projects.best;
import static clutchwright.engine.planning.Projects.goal;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.pedigree.AnimalId;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/// Four recessives from animals that show one each.
class PyramidRouteTest {

    private static final int SEASONS = 20;
    private static final RouteLimits LIMITS = new RouteLimits(5, 0.9, SEASONS, 4_000, 1);
    private static final Goal FOUR = goal("a", "A/A", "b", "B/B", "c", "C/C", "d", "D/D");

    private static TestGenes genes() {
        var genes = new TestGenes();
        for (var gene : List.of("a", "b", "c", "d")) {
            genes.recessive(gene, gene.toUpperCase(Locale.ROOT));
        }
        return genes;
    }

    private static Projects singles() {
        var stock = Projects.with();
        for (var gene : List.of("a", "b", "c", "d")) {
            var visual = gene.toUpperCase(Locale.ROOT) + "/" + gene.toUpperCase(Locale.ROOT);
            stock.female(gene, visual).male(gene, visual);
        }
        return stock;
    }

    /// Two doubles, then who carries all four, then 1/256 a hatchling: five clutches of 5.4 young
    /// a season bring it at one in ten a season, for the ten seasons or so that are left.
    @Test
    void two_heaps_of_two_bring_four() {
        var found = RouteSearch.of(genes().model(), FOUR, singles().stock(), Biology.USUAL, LIMITS);

        assertThat(best(found, SEASONS)).isGreaterThan(0.5);
    }

    /// What hides every gene is avoided where it is not needed: animals that may have it widen the
    /// stock, and the route is no worse.
    @Test
    void animals_with_what_hides_the_goal_do_no_harm() {
        var model =
                genes().incomplete("fire", "Fire")
                        .masking("fire", "Super Fire", new Masking.Everything())
                        .model();
        var stock =
                singles()
                        .female("fire", "Fire/+", "a", "A/A")
                        .male("fire", "Fire/+", "b", "B/+")
                        .stock();

        var found = RouteSearch.of(model, FOUR, stock, Biology.USUAL, LIMITS);

        assertThat(best(found, SEASONS)).isGreaterThan(0.5);
        assertThat(((Routes.Found) found).leftAside())
                .containsExactly(new AnimalId(9), new AnimalId(10));
    }

    /// Where only an animal with what hides it has a gene, that animal is used.
    @Test
    void whoever_is_needed_is_used_though_it_may_hide_the_goal() {
        var model =
                new TestGenes()
                        .recessive("a", "A")
                        .incomplete("fire", "Fire")
                        .masking("fire", "Super Fire", new Masking.Everything())
                        .model();
        var stock = Projects.with().male("fire", "Fire/+", "a", "A/+");
        for (var i = 0; i < 5; i++) {
            stock.female("fire", "Fire/+", "a", "A/+");
        }

        var found = RouteSearch.of(model, goal("a", "A/A"), stock.stock(), Biology.USUAL, LIMITS);

        assertThat(best(found, 1)).isPositive();
        assertThat(((Routes.Found) found).leftAside()).isEmpty();
    }
}
