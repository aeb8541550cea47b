package clutchwright.engine.planning;

import static clutchwright.engine.planning.Projects.goal;
import static clutchwright.engine.planning.Projects.limits;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.probability.Fraction;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/// Goals that no route leads to, each with its reason.
class ImpossibleGoalsTest {

    private static final GeneticModel MODEL =
            new TestGenes()
                    .recessive("a", "A")
                    .recessive("b", "B")
                    .incomplete("d", "D")
                    .viability("d", "D/D", Fraction.NONE)
                    .model();

    private static ImpossibleGoal refused(Goal goal, Stock stock, RouteLimits limits) {
        var routes = RouteSearch.of(MODEL, goal, stock, Biology.USUAL, limits);
        assertThat(routes).isInstanceOf(Routes.Refused.class);
        return ((Routes.Refused) routes).reason();
    }

    private static ImpossibleGoal refused(Goal goal, Projects animals) {
        return refused(goal, animals.stock(), limits(3, 15));
    }

    @Test
    void nobody_carries_it() {
        assertThat(
                        refused(
                                goal("a", "A/A", "b", "B/B"),
                                Projects.with().female("a", "A/+").male("a", "A/A")))
                .isEqualTo(new ImpossibleGoal.NobodyCarries(new Allele(new LocusId("b"), "B")));
    }

    @Test
    void there_is_no_female_or_no_male() {
        assertThat(refused(goal("a", "A/A"), Projects.with().male("a", "A/+")))
                .isEqualTo(new ImpossibleGoal.NoFemale());
        assertThat(refused(goal("a", "A/A"), Projects.with().female("a", "A/+")))
                .isEqualTo(new ImpossibleGoal.NoMale());
    }

    @Test
    void no_clutches() {
        var stock = Projects.with().female("a", "A/+").male("a", "A/+").stock();

        assertThat(refused(goal("a", "A/A"), stock, limits(0, 15)))
                .isEqualTo(new ImpossibleGoal.NoClutches());
    }

    @Test
    void all_are_too_young_for_the_seasons_looked_at_and_else_wait() {
        var stock =
                Projects.with()
                        .animal(Sex.FEMALE, TestGenes.animal("a", "A/+"), 4)
                        .male("a", "A/+")
                        .stock();

        assertThat(refused(goal("a", "A/A"), stock, limits(3, 3)))
                .isEqualTo(new ImpossibleGoal.AllTooYoung(4));
        var route =
                Projects.routes(
                                RouteSearch.of(
                                        MODEL,
                                        goal("a", "A/A"),
                                        stock,
                                        Biology.USUAL,
                                        limits(3, 6)))
                        .getFirst();
        assertThat(route.steps().getFirst().season()).isEqualTo(4);
        assertThat(route.chanceBySeason().subList(0, 3)).containsOnly(0.0);
        assertThat(route.chanceBySeason().get(3)).isPositive();
    }

    @Test
    void it_is_there_already() {
        assertThat(refused(goal("a", "A/A"), Projects.with().female("a", "A/A").male("a", "A/A")))
                .isEqualTo(
                        new ImpossibleGoal.AlreadyOwned(List.of(new AnimalId(1), new AnimalId(2))));
        // At least: a visual is more than a het.
        assertThat(refused(goal("a", "A/+"), Projects.with().male("a", "A/A")))
                .isEqualTo(new ImpossibleGoal.AlreadyOwned(List.of(new AnimalId(1))));
        // A possible het may not be one.
        assertThat(
                        RouteSearch.of(
                                MODEL,
                                goal("a", "A/+"),
                                Projects.with()
                                        .animal(
                                                Sex.FEMALE,
                                                TestGenes.perhaps(
                                                        TestGenes.animal("a", "+/+"),
                                                        "a",
                                                        "A/+",
                                                        Fraction.of(2, 3)),
                                                1)
                                        .male()
                                        .stock(),
                                Biology.USUAL,
                                limits(3, 1)))
                .isEqualTo(new Routes.Refused(new ImpossibleGoal.OutOfReach(1)));
    }

    @Test
    void who_has_the_genes_does_not_live() {
        assertThat(refused(goal("d", "D/D"), Projects.with().female("d", "D/+").male("d", "D/+")))
                .isEqualTo(new ImpossibleGoal.DoesNotLive());
    }

    @Test
    void a_line_that_names_nothing_or_voices_doubt_is_no_goal() {
        var locus = new LocusId("a");

        assertThat(Goal.read(Genes.NORMAL, MODEL)).isEqualTo(new Goal.Reading.NamesNothing());
        assertThat(
                        Goal.read(
                                new Genes(
                                        List.of(
                                                new Genes.Statement.Carries(
                                                        new Allele(locus, "A"), Fraction.HALF)),
                                        Optional.empty(),
                                        List.of()),
                                MODEL))
                .isEqualTo(new Goal.Reading.InDoubt("A"));
        var two =
                new Genes.Statement.Shows(
                        locus,
                        "A",
                        List.of(
                                new Genotype.Diploid(
                                        new Allele(locus, "A"), new Allele(locus, "A"))),
                        false,
                        Optional.of(Fraction.WHOLE),
                        Optional.empty());
        assertThat(
                        Goal.read(
                                new Genes(
                                        List.of(
                                                two,
                                                new Genes.Statement.Carries(
                                                        new Allele(locus, "A"), Fraction.WHOLE)),
                                        Optional.empty(),
                                        List.of()),
                                MODEL))
                .isEqualTo(new Goal.Reading.ThreeAlleles(locus));
    }
}
