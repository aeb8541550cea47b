package clutchwright.engine.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.LocusAnswer;
import clutchwright.engine.probability.Fraction;
import org.junit.jupiter.api.Test;

/// What a look says, and what it does not.
class C04_SightingsTest {

    private static final Assumptions NO_DOUBT = new Assumptions(0, 0);
    private static final double ROUNDING = 1e-12;

    @Test
    void not_looked_at_is_not_absent() {
        var family = twoHets().young("Unseen", "Ada", "Bo").young("Seen", "Ada", "Bo");
        family.sawNormal("Seen");

        var chances = family.infer("clown", NO_DOUBT);

        assertThat(family.chance(chances, "Unseen", "Clown/Clown"))
                .isEqualTo(1.0 / 4, within(ROUNDING));
        assertThat(family.chance(chances, "Seen", "Clown/Clown")).isZero();
    }

    @Test
    void a_white_animal_says_nothing_of_what_white_hides() {
        var family = twoHets().young("White", "Ada", "Bo").saw("White", "white", "White");

        var chances = family.infer("clown", NO_DOUBT);

        assertThat(family.chance(chances, "White", "Clown/Clown"))
                .isEqualTo(1.0 / 4, within(ROUNDING));
        assertThat(family.chance(chances, "White", "Clown/+")).isEqualTo(1.0 / 2, within(ROUNDING));
    }

    @Test
    void a_visual_is_believed_as_far_as_misreading_is_rarer_than_visuals() {
        var family = twoHets().young("H", "Ada", "Bo").saw("H", "clown", "Clown");

        var chances = family.infer("clown", new Assumptions(0, 0.02));

        // 1/4 98/100 to 3/4 2/100
        assertThat(family.chance(chances, "H", "Clown/Clown"))
                .isEqualTo(49.0 / 52, within(ROUNDING));
    }

    @Test
    void what_cannot_be_is_a_misreading_and_says_nothing_more() {
        var family =
                genes().founder("Ada")
                        .founder("Bo")
                        .said("Ada", "clown", "+/+")
                        .het("Bo", "clown", "Clown", Fraction.HALF)
                        .young("H", "Ada", "Bo")
                        .saw("H", "clown", "Clown");

        var misread = family.infer("clown", new Assumptions(0, 0.01));

        assertThat(family.chance(misread, "H", "Clown/+")).isEqualTo(1.0 / 4, within(ROUNDING));
        assertThat(family.chance(misread, "Bo", "Clown/+")).isEqualTo(1.0 / 2, within(ROUNDING));
        // Where nobody misreads, the records cannot all be true.
        assertThat(family.infer(NO_DOUBT).at(new LocusId("clown")))
                .isInstanceOf(LocusAnswer.Contradicted.class);
    }

    @Test
    void a_visual_founder_is_a_misreading_unless_it_was_acquired_for_its_look() {
        var family = genes().founder("Ada").saw("Ada", "clown", "Clown");
        var rare = new Assumptions(0.01, 0.01);

        // (1/100)^2 99/100 to (1 - (1/100)^2) 1/100
        assertThat(family.chance(family.infer("clown", rare), "Ada", "Clown/Clown"))
                .isEqualTo(0.0099 / (0.0099 + 0.9999), within(ROUNDING));
        assertThat(
                        family.chance(
                                family.infer("clown", rare.withAcquiredForLook(1)),
                                "Ada",
                                "Clown/Clown"))
                .isEqualTo(1, within(ROUNDING));
    }

    private static TestPedigree twoHets() {
        return genes().founder("Ada")
                .founder("Bo")
                .said("Ada", "clown", "Clown/+")
                .said("Bo", "clown", "Clown/+")
                .said("Ada", "white", "White/+")
                .said("Bo", "white", "White/+");
    }

    private static TestPedigree genes() {
        return new TestPedigree(
                new TestGenes()
                        .recessive("white", "White")
                        .masking("white", "White", new Masking.Everything())
                        .recessive("clown", "Clown")
                        .model());
    }
}
