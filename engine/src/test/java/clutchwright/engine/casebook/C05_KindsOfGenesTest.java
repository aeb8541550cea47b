package clutchwright.engine.casebook;

import static clutchwright.engine.genetics.Sex.FEMALE;
import static clutchwright.engine.genetics.Sex.MALE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.probability.Fraction;
import java.util.List;
import org.junit.jupiter.api.Test;

/// A lethal, a complex that turns white, a gene on the sex chromosomes, a parent nobody wrote
/// down.
class C05_KindsOfGenesTest {

    private static final Assumptions NO_DOUBT = new Assumptions(0, 0);
    private static final double ROUNDING = 1e-12;

    @Test
    void what_shows_a_dominant_whose_double_dies_has_one_copy() {
        var family =
                new TestPedigree(
                                new TestGenes()
                                        .dominant("spider", "Spider")
                                        .viability("spider", "Spider/Spider", Fraction.NONE)
                                        .model())
                        .founder("Dam")
                        .founder("Sire")
                        .saw("Dam", "spider", "Spider")
                        .saw("Sire", "spider", "Spider")
                        .young("Unseen", "Dam", "Sire")
                        .young("Seen", "Dam", "Sire")
                        .saw("Seen", "spider", "Spider");

        var chances = family.infer("spider", new Assumptions(0.1, 0));

        assertThat(family.chance(chances, "Dam", "Spider/+")).isEqualTo(1, within(ROUNDING));
        assertThat(family.chance(chances, "Seen", "Spider/+")).isEqualTo(1, within(ROUNDING));
        assertThat(family.chance(chances, "Unseen", "Spider/+"))
                .isEqualTo(2.0 / 3, within(ROUNDING));
    }

    @Test
    void a_white_one_of_two_different_parents_has_one_of_each() {
        var family = whites("M/+", "L/+").young("H", "Dam", "Sire").saw("H", "blue", "White");

        assertThat(family.chance(family.infer("blue", NO_DOUBT), "H", "L/M"))
                .isEqualTo(1, within(ROUNDING));
    }

    @Test
    void one_young_of_the_other_kind_tells_what_a_white_one_is() {
        var family =
                whites("L/M", "M/+")
                        .young("White", MALE, "Dam", "Sire")
                        .saw("White", "blue", "White")
                        .founder("Plain", FEMALE)
                        .said("Plain", "blue", "+/+");
        assertThat(family.chance(family.infer("blue", NO_DOUBT), "White", "L/M"))
                .isEqualTo(1.0 / 2, within(ROUNDING));

        family.young("H", "Plain", "White").saw("H", "blue", "Le");

        assertThat(family.chance(family.infer("blue", NO_DOUBT), "White", "L/M"))
                .isEqualTo(1, within(ROUNDING));
    }

    private static TestPedigree whites(String dam, String sire) {
        return new TestPedigree(
                        new TestGenes()
                                .locus(
                                        "blue",
                                        List.of("M", "L"),
                                        "M/+",
                                        "Mo",
                                        "L/+",
                                        "Le",
                                        "M/M",
                                        "White",
                                        "L/M",
                                        "White",
                                        "L/L",
                                        "White")
                                .model())
                .founder("Dam", FEMALE)
                .founder("Sire", MALE)
                .said("Dam", "blue", dam)
                .said("Sire", "blue", sire);
    }

    @Test
    void a_male_makers_phase_shows_in_his_young() {
        var family =
                bananas()
                        .said("Sire", "banana", "Banana/+")
                        .young("Son", MALE, "Dam", "Sire")
                        .saw("Son", "banana", "Banana");

        var chances = family.infer("banana", NO_DOUBT);

        // A banana son of a male maker at 19/20, of a female maker at 1/20.
        assertThat(family.chance(chances, "Sire", "+|Banana"))
                .isEqualTo(19.0 / 20, within(ROUNDING));
        assertThat(family.chance(chances, "Son", "+|Banana")).isEqualTo(1, within(ROUNDING));
    }

    @Test
    void a_banana_nobody_sexed_is_likely_a_male_if_its_sire_is_a_male_maker() {
        var family =
                bananas()
                        .said("Sire", "banana", "+|Banana")
                        .young("H", "Dam", "Sire")
                        .saw("H", "banana", "Banana");

        var chances = family.infer("banana", NO_DOUBT);

        assertThat(family.chance(chances, "H", "+|Banana")).isEqualTo(19.0 / 20, within(ROUNDING));
        assertThat(family.chance(chances, "H", "Banana/+")).isEqualTo(1.0 / 20, within(ROUNDING));
    }

    @Test
    void what_is_said_of_an_animal_leaves_its_sex_as_open_as_it_was() {
        var family = bananas().founder("Unsexed").said("Unsexed", "banana", "Banana/+");

        var chances = family.infer("banana", NO_DOUBT);

        assertThat(family.chance(chances, "Unsexed", "Banana/+")).isEqualTo(0.5, within(ROUNDING));
        assertThat(family.chance(chances, "Unsexed", "+|Banana")).isEqualTo(0.25, within(ROUNDING));
    }

    private static TestPedigree bananas() {
        return new TestPedigree(
                        new TestGenes()
                                .sexLinked(
                                        "banana",
                                        Fraction.of(1, 20),
                                        "Banana",
                                        "Banana/+",
                                        "Banana",
                                        "Banana/Banana",
                                        "Super Banana")
                                .model())
                .founder("Dam", FEMALE)
                .founder("Sire", MALE)
                .said("Dam", "banana", "+/+");
    }

    @Test
    void a_visual_of_a_dam_and_nobody_proves_the_dam() {
        var family =
                new TestPedigree(new TestGenes().recessive("clown", "Clown").model())
                        .founder("Dam", FEMALE)
                        .het("Dam", "clown", "Clown", Fraction.HALF)
                        .young("H", "Dam", "")
                        .saw("H", "clown", "Clown")
                        .young("Other", "Dam", "")
                        .sawNormal("Other");

        var chances = family.infer("clown", new Assumptions(0.01, 0));

        assertThat(family.chance(chances, "Dam", "Clown/+")).isEqualTo(1, within(ROUNDING));
        // Its sire is another stranger: het from the dam 1/2 99/100, from him 1/2 1/100; not r/r.
        assertThat(family.chance(chances, "Other", "Clown/+"))
                .isEqualTo(0.5 / (1 - 0.005), within(ROUNDING));
    }
}
