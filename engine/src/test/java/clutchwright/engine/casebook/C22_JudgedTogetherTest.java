package clutchwright.engine.casebook;

import static clutchwright.engine.casebook.TestGenes.form;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.ParentPair;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.genetics.Wanted;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.Posteriors;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/// Animals that are not independent of each other: mates with young, siblings.
class C22_JudgedTogetherTest {

    private static final LocusId CLOWN = new LocusId("clown");
    private static final Allele ALLELE = new Allele(CLOWN, "Clown");
    private static final Wanted CLOWNS = new Wanted(Set.of(form("clown", "Clown")), Set.of());
    private static final Assumptions EXACT = new Assumptions(0, 0);

    private final GeneticModel model = new TestGenes().recessive("clown", "Clown").model();

    @Test
    void of_mates_whose_young_are_all_plain_hardly_both_are_het() {
        var family =
                new TestPedigree(model)
                        .founder("Ada", Sex.FEMALE)
                        .founder("Bo", Sex.MALE)
                        .het("Ada", "clown", "Clown", Fraction.of(2, 3))
                        .het("Bo", "clown", "Clown", Fraction.HALF)
                        .sawNormal("Ada", "Bo");
        for (var young : List.of("C1", "C2", "C3", "C4")) {
            family.young(young, "Ada", "Bo").sawNormal(young);
        }
        var told = new Posteriors(family.infer(EXACT));

        // Both het: 2/3 x 1/2 x (3/4)^4 = 81/768, of 81/768 + 1/3 + 1/6 + 1/6 = 593/768.
        var cross = cross(family, told, "Ada", "Bo");
        assertThat(cross.chanceOf(CLOWNS)).isEqualTo(Fraction.of(81, 593 * 4));
        // Each by itself they are het at 337/593 and 209/593, which together is far more.
        assertThat(told.of(family.id("Ada")).chanceOfCarrying(ALLELE))
                .isEqualTo(Fraction.of(337, 593));
        assertThat(told.of(family.id("Bo")).chanceOfCarrying(ALLELE))
                .isEqualTo(Fraction.of(209, 593));
        // Six more eggs: a clutch with one takes two hets, and then (3/4)^6 has none.
        assertThat(cross.atLeastOne(CLOWNS, 6))
                .isEqualTo(Fraction.of(81, 593).times(Fraction.of(729, 4096).complement()));
    }

    @Test
    void sister_and_brother_of_a_possible_het_are_het_together_or_not() {
        var family = siblings();
        var told = new Posteriors(family.infer(EXACT));

        // Each is het at 1/4. Both are at 1/2 x 1/4, not at 1/16.
        assertThat(told.of(family.id("Di")).chanceOfCarrying(ALLELE)).isEqualTo(Fraction.of(1, 4));
        assertThat(cross(family, told, "Di", "Ed").chanceOf(CLOWNS)).isEqualTo(Fraction.of(1, 32));
    }

    @Test
    void of_two_held_back_at_least_one_is_het_less_often_than_if_they_were_strangers() {
        var family = siblings();
        var told = new Posteriors(family.infer(EXACT));
        var both = List.of(family.id("Di"), family.id("Ed"));

        // Their dam is het at 1/2, and then three of four pairs have one: not 1 - (3/4)^2 = 7/16.
        assertThat(told.atLeastOneCarries(ALLELE, both).orElseThrow())
                .isCloseTo(3.0 / 8, within(1e-12));
    }

    @Test
    void plain_siblings_of_two_hets_are_independent_of_each_other() {
        var family =
                new TestPedigree(model)
                        .founder("Ada", Sex.FEMALE)
                        .founder("Bo", Sex.MALE)
                        .het("Ada", "clown", "Clown", Fraction.WHOLE)
                        .het("Bo", "clown", "Clown", Fraction.WHOLE)
                        .young("Di", Sex.FEMALE, "Ada", "Bo")
                        .young("Ed", Sex.MALE, "Ada", "Bo")
                        .sawNormal("Di", "Ed");
        var told = new Posteriors(family.infer(EXACT));

        assertThat(told.together(family.id("Di"), family.id("Ed"))).isEmpty();
        assertThat(
                        told.atLeastOneCarries(ALLELE, List.of(family.id("Di"), family.id("Ed")))
                                .orElseThrow())
                .isCloseTo(1 - 1.0 / 9, within(1e-12));
        // 2/3 x 2/3 x 1/4.
        assertThat(cross(family, told, "Di", "Ed").chanceOf(CLOWNS)).isEqualTo(Fraction.of(1, 9));
    }

    @Test
    void a_couple_of_whom_just_one_is_het_gives_no_visual() {
        var het = TestGenes.genotype("clown", "Clown/+");
        var wild = TestGenes.genotype("clown", "+/+");
        var either = new LinkedHashMap<ParentPair, Fraction>();
        either.put(new ParentPair(het, wild), Fraction.HALF);
        either.put(new ParentPair(wild, het), Fraction.HALF);

        var cross =
                Cross.of(
                        model,
                        ParentGenotype.WILD,
                        ParentGenotype.WILD,
                        Map.of(CLOWN, new Distribution<>(either)));

        assertThat(cross.chanceOf(CLOWNS)).isEqualTo(Fraction.NONE);
        assertThat(cross.likeliest(5)).hasSize(1);
        assertThat(cross.likeliest(5).getFirst().carries().getFirst().chance())
                .isEqualTo(Fraction.HALF);
    }

    private TestPedigree siblings() {
        return new TestPedigree(model)
                .founder("Ada", Sex.FEMALE)
                .founder("Bo", Sex.MALE)
                .het("Ada", "clown", "Clown", Fraction.HALF)
                .said("Bo", "clown", "+/+")
                .sawNormal("Ada", "Bo")
                .young("Di", Sex.FEMALE, "Ada", "Bo")
                .young("Ed", Sex.MALE, "Ada", "Bo")
                .sawNormal("Di", "Ed");
    }

    private Cross cross(TestPedigree family, Posteriors told, String dam, String sire) {
        return Cross.of(
                model,
                told.of(family.id(dam)).asParent(),
                told.of(family.id(sire)).asParent(),
                told.together(family.id(dam), family.id(sire)));
    }
}
