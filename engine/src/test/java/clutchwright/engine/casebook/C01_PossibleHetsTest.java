package clutchwright.engine.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.probability.Fraction;
import org.junit.jupiter.api.Test;

/// What hatchlings say of their parents, and parents of their hatchlings.
class C01_PossibleHetsTest {

    private static final Assumptions NO_DOUBT = new Assumptions(0, 0);

    @Test
    void a_plain_hatchling_of_two_hets_carries_at_two_in_three() {
        var family =
                clowns().founder("Ada")
                        .founder("Bo")
                        .young("Cy", "Ada", "Bo")
                        .het("Ada", "clown", "Clown", Fraction.WHOLE)
                        .het("Bo", "clown", "Clown", Fraction.WHOLE)
                        .sawNormal("Cy");

        var chances = family.infer("clown", NO_DOUBT);

        assertThat(family.chance(chances, "Cy", "Clown/+")).isEqualTo(2.0 / 3, within(1e-15));
        assertThat(family.chance(chances, "Cy", "+/+")).isEqualTo(1.0 / 3, within(1e-15));
    }

    @Test
    void plain_hatchlings_of_a_visual_mate_speak_against_a_possible_het() {
        var family =
                clowns().founder("Ada")
                        .founder("Bo")
                        .het("Ada", "clown", "Clown", Fraction.of(2, 3))
                        .said("Bo", "clown", "Clown/Clown");
        for (var n = 1; n <= 6; n++) {
            family.young("H" + n, "Ada", "Bo").sawNormal("H" + n);
        }

        var chances = family.infer("clown", NO_DOUBT);

        // 2/3 (1/2)^6 to 1/3
        assertThat(family.chance(chances, "Ada", "Clown/+")).isEqualTo(1.0 / 33, within(1e-15));
    }

    @Test
    void one_visual_hatchling_proves_both_parents() {
        var family =
                clowns().founder("Ada")
                        .founder("Bo")
                        .young("Cy", "Ada", "Bo")
                        .sawNormal("Ada", "Bo")
                        .saw("Cy", "clown", "Clown");

        var chances = family.infer("clown", new Assumptions(0.01, 0));

        assertThat(family.chance(chances, "Ada", "Clown/+")).isEqualTo(1.0, within(1e-12));
        assertThat(family.chance(chances, "Bo", "Clown/+")).isEqualTo(1.0, within(1e-12));
    }

    @Test
    void a_clutch_settles_which_male_was_the_sire() {
        var family =
                clowns().founder("Ada")
                        .founder("Bo")
                        .founder("Carl")
                        .het("Ada", "clown", "Clown", Fraction.WHOLE)
                        .said("Bo", "clown", "Clown/Clown")
                        .het("Carl", "clown", "Clown", Fraction.HALF);
        for (var n = 1; n <= 6; n++) {
            family.youngOfEither("H" + n, "clutch", "Ada", "Bo", "Carl");
            if (n <= 2) {
                family.saw("H" + n, "clown", "Clown");
            } else {
                family.sawNormal("H" + n);
            }
        }

        var inference = family.infer(NO_DOUBT);

        assertThat(inference.sireChances().get("clutch"))
                .hasEntrySatisfying(
                        family.id("Bo"),
                        chance -> assertThat(chance).isEqualTo(128.0 / 209, within(1e-12)));
        assertThat(
                        family.chance(
                                inference
                                        .chancesAt(
                                                new clutchwright.engine.genetics.LocusId("clown"))
                                        .orElseThrow(),
                                "Carl",
                                "Clown/+"))
                .isEqualTo(145.0 / 209, within(1e-12));
    }

    private static TestPedigree clowns() {
        return new TestPedigree(new TestGenes().recessive("clown", "Clown").model());
    }
}
