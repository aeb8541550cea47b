package clutchwright.engine.planning;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.planning.Projects.best;
import static clutchwright.engine.planning.Projects.error;
import static clutchwright.engine.planning.Projects.goal;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.genetics.Phenotype;
import java.util.List;
import org.junit.jupiter.api.Test;

/// Selection by what a test tells, where the eye tells less.
class ToldApartTest {

    private static final LocusId CLOWN = new LocusId("clown");

    @Test
    void a_het_is_told_from_a_normal_and_two_copies_from_one() {
        var model = new TestGenes().recessive("clown", "Clown").dominant("pin", "Pin").model();

        var told = ToldApart.at(List.of(CLOWN, new LocusId("pin")), model);

        var hets =
                Cross.of(
                        told,
                        animal("clown", "Clown/+", "pin", "Pin/+"),
                        animal("clown", "Clown/+", "pin", "Pin/+"));
        // Three genotypes at each of two loci, 1:2:1.
        assertThat(TestGenes.groups(hets).split(", "))
                .containsExactlyInAnyOrder(
                        "1/4 het Clown Pin",
                        "1/8 Clown Pin",
                        "1/8 Pin",
                        "1/8 het Clown",
                        "1/8 het Clown 2 Pin",
                        "1/16 2 Pin",
                        "1/16 Clown",
                        "1/16 Clown 2 Pin",
                        "1/16 Normal");
        assertThat(told.theLocus(CLOWN).looks().values())
                .extracting(Phenotype::name)
                .containsExactlyInAnyOrder("Normal", "het Clown", "Clown");
    }

    @Test
    void what_hides_others_still_does() {
        var model =
                new TestGenes()
                        .incomplete("fire", "Fire")
                        .masking("fire", "Super Fire", new Masking.Everything())
                        .model();
        var fire = new LocusId("fire");

        var map = ToldApart.at(List.of(fire), model).theLocus(fire);

        assertThat(map.maskingOf(TestGenes.form("fire", "Super Fire")).hides(CLOWN)).isTrue();
        assertThat(map.looks()).isEqualTo(model.theLocus(fire).looks());
    }

    /// A het male and a normal female. By eye: a normal son is het at 1/2, and bred to his
    /// half of sure things brings nothing for certain. Tested, a het daughter is known: six eggs
    // hold
    /// one at 1 - (3/4)^6, and then six more a visual at 1 - (3/4)^6.
    @Test
    void a_tested_het_makes_a_closed_form_of_two_steps() {
        var model = new TestGenes().recessive("clown", "Clown").model();
        var stock = Projects.with().female("clown", "+/+").male("clown", "Clown/+").stock();
        var wanted = goal("clown", "Clown/Clown");
        var limits = Projects.limits(1, 2);
        var told = ToldApart.at(List.of(CLOWN), model);

        var tested = RouteSearch.of(told, wanted, stock, Projects.textbook(6), limits);
        var seen = RouteSearch.of(model, wanted, stock, Projects.textbook(6), limits);

        var one = 1 - Math.pow(0.75, 6);
        assertThat(best(tested, 2)).isCloseTo(one * one, within(error(one * one)));
        assertThat(best(tested, 2)).isGreaterThan(best(seen, 2) + error(0.4));
    }
}
