package clutchwright.engine.casebook;

import static clutchwright.engine.planning.Projects.best;
import static clutchwright.engine.planning.Projects.error;
import static clutchwright.engine.planning.Projects.goal;
import static clutchwright.engine.planning.Projects.limits;
import static clutchwright.engine.planning.Projects.routes;
import static clutchwright.engine.planning.Projects.textbook;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.planning.Biology;
import clutchwright.engine.planning.Projects;
import clutchwright.engine.planning.RouteLimits;
import clutchwright.engine.planning.RouteSearch;
import clutchwright.engine.planning.RouteStep;
import clutchwright.engine.planning.Routes;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference;
import clutchwright.engine.reference.Reference.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;

/// Projects over generations whose chances can be worked out by hand.
class G01_RoutesTest {

    private static final GeneticModel TWO =
            new TestGenes().recessive("a", "A").recessive("b", "B").model();

    /// One of six eggs of two double hets.
    private static final double ONE_CLUTCH = 1 - Math.pow(15.0 / 16, 6);

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "two recessives from two visuals, double hets re-bred each season",
            locator = "1 - (15/16)^(6 T): 0.321065843, 0.539048, 0.687044; 1/16 a hatchling")
    void a_pair_of_double_hets_bred_again_each_season() {
        var stock =
                Projects.with().female("a", "A/+", "b", "B/+").male("a", "A/+", "b", "B/+").stock();
        var found =
                RouteSearch.of(TWO, goal("a", "A/A", "b", "B/B"), stock, textbook(6), limits(1, 3));

        assertThat(best(found, 1)).isEqualTo(0.321065843, within(error(0.32)));
        assertThat(best(found, 2)).isEqualTo(0.539048, within(error(0.54)));
        assertThat(best(found, 3)).isEqualTo(0.687044, within(error(0.69)));
        var keep = routes(found).getFirst().steps().getLast().keep().getFirst();
        assertThat(keep.perHatchling()).isEqualTo(Fraction.of(1, 16));
        assertThat(keep.isGoal()).isTrue();
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "three double het females, 18 eggs a season",
            locator = "1 - (15/16)^18 = 0.687044 in the first")
    void three_females_do_in_one_season_what_one_does_in_three() {
        var stock =
                Projects.with()
                        .female("a", "A/+", "b", "B/+")
                        .female("a", "A/+", "b", "B/+")
                        .female("a", "A/+", "b", "B/+")
                        .male("a", "A/+", "b", "B/+")
                        .stock();
        var found =
                RouteSearch.of(TWO, goal("a", "A/A", "b", "B/B"), stock, textbook(6), limits(3, 2));

        assertThat(best(found, 1)).isEqualTo(0.687044, within(error(0.69)));
        assertThat(routes(found).getFirst().steps().getFirst().dam())
                .isEqualTo(
                        new RouteStep.Parent.Own(
                                List.of(new AnimalId(1), new AnimalId(2), new AnimalId(3))));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "two recessives from two visuals, one clutch of six a season",
            locator =
                    "re-bred double hets 0.311032536 by season 2 and above 0.522203 by season 3,"
                            + " where the back-cross to a visual has 0.226883534")
    void at_equal_horizons_double_hets_bred_again_beat_the_back_cross() {
        var stock = Projects.with().female("a", "A/A").male("b", "B/B").stock();
        var found =
                RouteSearch.of(TWO, goal("a", "A/A", "b", "B/B"), stock, textbook(6), limits(1, 3));

        assertThat(best(found, 2)).isEqualTo(0.311032536, within(error(0.31)));
        // A first clutch without a pair of double hets, 1 in 32, is made good in season 2.
        var late = (1 - 2 * Math.pow(0.5, 12)) - 31.0 / 32;
        var third = 31.0 / 32 * (1 - Math.pow(15.0 / 16, 12)) + late * ONE_CLUTCH;
        assertThat(best(found, 3)).isEqualTo(third, within(error(third)));
        assertThat(best(found, 3)).isGreaterThan(0.226883534 + error(0.23));
        var steps = routes(found).getFirst().steps();
        assertThat(steps).hasSize(2);
        assertThat(steps.getLast().dam()).isInstanceOf(RouteStep.Parent.Kept.class);
        assertThat(steps.getLast().sire()).isInstanceOf(RouteStep.Parent.Kept.class);
        assertThat(steps.getFirst().keep())
                .allSatisfy(
                        kept -> {
                            assertThat(kept.shows()).isEmpty();
                            assertThat(kept.perHatchling()).isEqualTo(Fraction.HALF);
                            assertThat(kept.carries())
                                    .extracting(Outcome.Held::chance)
                                    .containsExactly(Fraction.WHOLE, Fraction.WHOLE);
                        });
        // 1 - 2 (1/2)^6
        assertThat(steps.getFirst().chance()).isEqualTo(31.0 / 32, within(1e-12));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "clutches of six until the first double visual of two double hets",
            locator = "mean clutches 16777216/5386591 = 3.11462593")
    void clutches_until_it_is_there() {
        var stock =
                Projects.with().female("a", "A/+", "b", "B/+").male("a", "A/+", "b", "B/+").stock();
        var found =
                RouteSearch.of(
                        TWO, goal("a", "A/A", "b", "B/B"), stock, textbook(6), limits(1, 50));

        // Four and a half standard errors: the variance of the wait is (1 - p) / p^2.
        var error = 4.5 * Math.sqrt((1 - ONE_CLUTCH) / ONE_CLUTCH / ONE_CLUTCH / 20_000);
        assertThat(routes(found).getFirst().clutches()).isEqualTo(3.11462593, within(error));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "an incomplete dominant brought into a recessive, back-cross to the dam",
            locator = "3367/4096 twice: 11336689/16777216 = 0.675719321 by season 2")
    void an_incomplete_dominant_and_a_recessive_by_a_back_cross() {
        var model = new TestGenes().incomplete("d", "D").recessive("r", "R").model();
        var stock = Projects.with().female("r", "R/R").male("d", "D/+").stock();
        var found =
                RouteSearch.of(
                        model, goal("d", "D/+", "r", "R/R"), stock, textbook(6), limits(1, 2));

        assertThat(best(found, 2)).isEqualTo(0.675719321, within(error(0.68)));
        var last = routes(found).getFirst().steps().getLast();
        assertThat(last.dam()).isEqualTo(new RouteStep.Parent.Own(List.of(new AnimalId(1))));
        assertThat(last.keep().getFirst().perHatchling()).isEqualTo(Fraction.of(1, 4));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "an incomplete dominant that dies homozygous, with a recessive",
            locator = "among hatchlings of two D r-hets D and r shows at 1/6")
    void who_does_not_hatch_is_left_out() {
        var model =
                new TestGenes()
                        .incomplete("d", "D")
                        .recessive("r", "R")
                        .viability("d", "D/D", Fraction.NONE)
                        .model();
        var stock =
                Projects.with().female("d", "D/+", "r", "R/+").male("d", "D/+", "r", "R/+").stock();
        var found =
                RouteSearch.of(
                        model, goal("d", "D/+", "r", "R/R"), stock, textbook(6), limits(1, 1));

        assertThat(routes(found).getFirst().steps().getFirst().keep().getFirst().perHatchling())
                .isEqualTo(Fraction.of(1, 6));
        // Of an egg: 1/2 of 1/4.
        var six = 1 - Math.pow(7.0 / 8, 6);
        assertThat(best(found, 1)).isEqualTo(six, within(error(six)));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "two alleles of one series and a recessive",
            locator = "M/L r/r from M/+ r-het by L/+ r-het: 1/16; from M/L visuals: 1/2")
    void a_compound_of_a_series_with_a_recessive() {
        var model =
                new TestGenes()
                        .locus(
                                "s",
                                List.of("M", "L"),
                                "M/+",
                                "M",
                                "L/+",
                                "L",
                                "M/M",
                                "MM",
                                "L/M",
                                "ML",
                                "L/L",
                                "LL")
                        .recessive("r", "R")
                        .model();
        var wanted = goal("s", "L/M", "r", "R/R");
        var hets =
                Projects.with().female("s", "M/+", "r", "R/+").male("s", "L/+", "r", "R/+").stock();

        var direct = RouteSearch.of(model, wanted, hets, textbook(6), limits(1, 1));

        assertThat(routes(direct).getFirst().steps().getFirst().keep().getFirst().perHatchling())
                .isEqualTo(Fraction.of(1, 16));
        var two = goal(0, 0, 2, "s", "L/M", "r", "R/R");
        var visuals =
                Projects.with().female("s", "L/M", "r", "R/R").male("s", "M/M", "r", "R/R").stock();
        var second = RouteSearch.of(model, two, visuals, textbook(6), limits(1, 1));
        // One is there already; L comes from the dam alone.
        assertThat(routes(second).getFirst().steps().getFirst().keep().getFirst().perHatchling())
                .isEqualTo(Fraction.HALF);
        assertThat(best(second, 1)).isEqualTo(63.0 / 64, within(error(63.0 / 64)));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "a sex-linked goal, recombination 1/20",
            locator = "B/B male by a male maker 19/80, 12 eggs to 95 %; by a female maker 1/80")
    void a_sex_linked_goal_depends_on_who_made_the_sire() {
        var model =
                new TestGenes()
                        .sexLinked("b", Fraction.of(1, 20), "B", "B/+", "B", "B/B", "Super B")
                        .model();
        // In one season only the straight way is open.
        var limits = new RouteLimits(20, 0.95, 1, 1000, 1);
        var step =
                List.of("+|B", "B|+").stream()
                        .map(sire -> Projects.with().female("b", "B/+").male("b", sire).stock())
                        .map(
                                stock ->
                                        RouteSearch.of(
                                                model,
                                                goal(1, 0, 0, "b", "B/B"),
                                                stock,
                                                textbook(1),
                                                limits))
                        .map(found -> routes(found).getFirst().steps().getFirst())
                        .toList();

        assertThat(step.getFirst().keep().getFirst().perHatchling()).isEqualTo(Fraction.of(19, 80));
        assertThat(step.getFirst().keep().getFirst().sex()).contains(Sex.MALE);
        assertThat(step.getFirst().clutches()).isEqualTo(12);
        assertThat(step.getLast().keep().getFirst().perHatchling()).isEqualTo(Fraction.of(1, 80));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "at least one male and one female, 1 - 2 (1 - q/2)^n + (1 - q)^n",
            locator = "q = 1: 5, 6 and 8 eggs for 90, 95 and 99 %")
    void eggs_until_a_pair_is_nearly_sure() {
        var stock = Projects.with().female("a", "A/A").male("b", "B/B").stock();
        var eggs =
                List.of(0.9, 0.95, 0.99).stream()
                        .map(
                                sure ->
                                        routes(
                                                        RouteSearch.of(
                                                                TWO,
                                                                goal("a", "A/A", "b", "B/B"),
                                                                stock,
                                                                textbook(1),
                                                                new RouteLimits(
                                                                        1, sure, 40, 100, 1)))
                                                .getFirst()
                                                .steps()
                                                .getFirst()
                                                .clutches())
                        .toList();

        assertThat(eggs).containsExactly(5, 6, 8);
    }

    @Test
    void linked_genes_in_repulsion_come_together_at_half_the_recombination_each() {
        var model =
                new TestGenes()
                        .recessive("a", "A")
                        .recessive("b", "B")
                        .linked(List.of("a", "b"), Fraction.of(1, 10))
                        .model();
        var stock = Projects.with().female("a", "A/A").male("b", "B/B").stock();
        var found =
                RouteSearch.of(
                        model,
                        goal("a", "A/A", "b", "B/B"),
                        stock,
                        Projects.textbook(30),
                        limits(1, 2));

        var last = routes(found).getFirst().steps().getLast();
        // The phase of the double hets is known from their parents: (r/2)^2.
        assertThat(last.keep().getFirst().perHatchling()).isEqualTo(Fraction.of(1, 400));
        var chance = 1 - Math.pow(399.0 / 400, 30);
        assertThat(best(found, 2)).isEqualTo(chance, within(error(chance)));
    }

    @Test
    void what_is_kept_unseen_stays_a_chance() {
        var model = new TestGenes().recessive("a", "A").model();
        var stock =
                Projects.with()
                        .animal(
                                Sex.FEMALE,
                                TestGenes.perhaps(
                                        TestGenes.animal("a", "+/+"), "a", "A/+", Fraction.HALF),
                                1)
                        .male("a", "A/A")
                        .stock();
        var found =
                RouteSearch.of(model, goal(0, 1, 0, "a", "A/A"), stock, textbook(6), limits(1, 1));

        // If she carries it, which is as likely as not, a hatchling is a visual female at 1/4.
        var one = (1 - Math.pow(3.0 / 4, 6)) / 2;
        assertThat(best(found, 1)).isEqualTo(one, within(error(one)));
        assertThat(routes(found).getFirst().steps().getFirst().keep().getFirst().perHatchling())
                .isEqualTo(Fraction.of(1, 8));
    }

    @Test
    void every_season_up_to_the_last_has_its_chance_and_they_only_rise() {
        var stock = Projects.with().female("a", "A/A").male("b", "B/B").stock();
        var found =
                RouteSearch.of(
                        TWO, goal("a", "A/A", "b", "B/B"), stock, Biology.USUAL, limits(3, 12));

        assertThat(((Routes.Found) found).method()).isEqualTo(Routes.Method.EXHAUSTIVE);
        for (var route : routes(found)) {
            assertThat(route.chanceBySeason()).hasSize(12).isSorted();
            assertThat(route.chance()).isEqualTo(route.chanceBySeason().get(route.seasons() - 1));
            // Males breed after two seasons, females after three.
            assertThat(route.steps()).extracting(RouteStep::season).containsExactly(1, 4);
        }
    }
}
