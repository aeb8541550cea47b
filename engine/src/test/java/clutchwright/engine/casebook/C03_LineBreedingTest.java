package clutchwright.engine.casebook;

import static clutchwright.engine.genetics.Sex.FEMALE;
import static clutchwright.engine.genetics.Sex.MALE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.probability.Fraction;
import java.util.List;
import org.junit.jupiter.api.Test;

/// Relatives paired with each other: what one of them shows, all of them have to do with.
class C03_LineBreedingTest {

    private static final Assumptions NO_DOUBT = new Assumptions(0, 0);
    private static final double ROUNDING = 1e-12;

    @Test
    void plain_young_of_a_daughter_by_her_sire_speak_against_her() {
        var family = daughterOfAHet();
        for (var i = 0; i < 4; i++) {
            family.young("H" + i, "Daughter", "Sire").sawNormal("H" + i);
        }

        var chances = family.infer("clown", NO_DOUBT);

        // 1/2 (3/4)^4 to 1/2
        assertThat(family.chance(chances, "Daughter", "Clown/+"))
                .isEqualTo(81.0 / 337, within(ROUNDING));
    }

    @Test
    void one_visual_of_them_proves_her() {
        var family = daughterOfAHet().young("H", "Daughter", "Sire").saw("H", "clown", "Clown");

        var chances = family.infer("clown", NO_DOUBT);

        assertThat(family.chance(chances, "Daughter", "Clown/+")).isEqualTo(1, within(ROUNDING));
    }

    @Test
    void a_visual_of_two_siblings_proves_the_grandparent_that_can_have_given_it() {
        var family =
                clowns().founder("Dam", FEMALE)
                        .founder("Sire", MALE)
                        .het("Dam", "clown", "Clown", Fraction.HALF)
                        .said("Sire", "clown", "+/+")
                        .young("Daughter", FEMALE, "Dam", "Sire")
                        .young("Son", MALE, "Dam", "Sire")
                        .young("Other", "Dam", "Sire")
                        .sawNormal("Daughter", "Son", "Other")
                        .young("H", "Daughter", "Son")
                        .saw("H", "clown", "Clown");

        var chances = family.infer("clown", NO_DOUBT);

        for (var proven : List.of("Dam", "Daughter", "Son")) {
            assertThat(family.chance(chances, proven, "Clown/+")).isEqualTo(1, within(ROUNDING));
        }
        assertThat(family.chance(chances, "Other", "Clown/+")).isEqualTo(0.5, within(ROUNDING));
    }

    @Test
    void brother_by_sister_for_four_generations_leaves_fewer_and_fewer_hets() {
        var family = clowns().founder("D0", FEMALE).founder("S0", MALE);
        family.said("D0", "clown", "Clown/+").said("S0", "clown", "Clown/+");
        for (var generation = 1; generation <= 4; generation++) {
            var before = generation - 1;
            family.young("D" + generation, FEMALE, "D" + before, "S" + before);
            family.young("S" + generation, MALE, "D" + before, "S" + before);
        }

        var chances = family.infer("clown", NO_DOUBT);

        // Two genes of one animal differ at H, of two siblings at D: H' = D, D' = H/4 + D/2, from
        // H = 1 and D = 1/2.
        var hets = List.of(1.0 / 2, 1.0 / 2, 3.0 / 8, 5.0 / 16);
        for (var generation = 1; generation <= 4; generation++) {
            assertThat(family.chance(chances, "D" + generation, "Clown/+"))
                    .isEqualTo(hets.get(generation - 1), within(ROUNDING));
        }
    }

    @Test
    void possible_het_siblings_carry_together_or_not() {
        var family =
                clowns().founder("Dam", FEMALE)
                        .founder("Sire", MALE)
                        .het("Dam", "clown", "Clown", Fraction.HALF)
                        .said("Sire", "clown", "+/+")
                        .young("A", "Dam", "Sire")
                        .young("B", "Dam", "Sire")
                        .sawNormal("A", "B");

        var chances = family.infer("clown", NO_DOUBT);
        Genotype het = TestGenes.genotype("clown", "Clown/+");
        var both = chances.together(List.of(family.id("A"), family.id("B")));

        assertThat(family.chance(chances, "A", "Clown/+")).isEqualTo(1.0 / 4, within(ROUNDING));
        // 1/2 1/2 1/2 and not 1/4 1/4
        assertThat(both.getOrDefault(List.of(het, het), 0.0)).isEqualTo(1.0 / 8, within(ROUNDING));
    }

    private static TestPedigree daughterOfAHet() {
        return clowns().founder("Dam", FEMALE)
                .founder("Sire", MALE)
                .said("Dam", "clown", "+/+")
                .said("Sire", "clown", "Clown/+")
                .young("Daughter", FEMALE, "Dam", "Sire")
                .sawNormal("Daughter");
    }

    private static TestPedigree clowns() {
        return new TestPedigree(new TestGenes().recessive("clown", "Clown").model());
    }
}
