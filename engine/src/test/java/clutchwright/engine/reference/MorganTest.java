package clutchwright.engine.reference;

import static clutchwright.engine.casebook.TestGenes.animal;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;

/// White eyes of the fruit fly: on X alone, so that Y is given an allele `0` that shows nothing.
class MorganTest {

    private static final String MORGAN =
            "T.H. Morgan (1910) Sex limited inheritance in Drosophila, Science 32:120-122";

    private final GeneticModel flies =
            new TestGenes()
                    .locus(
                            "eye",
                            new Inheritance.SexLinked(Fraction.NONE),
                            List.of("White", "0"),
                            "White/White",
                            "White",
                            "White/0",
                            "White")
                    .model();

    private final ParentGenotype redFemale = animal("eye", "+/+");
    private final ParentGenotype hybridFemale = animal("eye", "White/+");
    private final ParentGenotype redMale = animal("eye", "+|0");
    private final ParentGenotype whiteMale = animal("eye", "White|0");

    @Test
    @Reference(
            kind = Kind.PUBLISHED,
            source = "T.H. Morgan (1916) A Critique of the Theory of Evolution",
            locator = "white male by red female: all red; reciprocal: criss-cross")
    void the_first_generation_is_red_and_the_reciprocal_cross_is_criss_cross() {
        var first = Cross.of(flies, redFemale, whiteMale).likeliest(9);
        var reciprocal = Cross.of(flies, animal("eye", "White/White"), redMale).likeliest(9);

        assertThat(first).extracting(Outcome::name).containsExactly("Normal");
        assertThat(reciprocal).extracting(Outcome::name).containsExactly("Normal", "White");
        assertThat(reciprocal.getFirst().sexes().get(Sex.FEMALE)).isEqualTo(Fraction.WHOLE);
        assertThat(reciprocal.getLast().sexes().get(Sex.MALE)).isEqualTo(Fraction.WHOLE);
    }

    @Test
    @Reference(
            kind = Kind.FROM_MEMORY,
            source = MORGAN,
            locator = "F2: 2459 red females, 1011 red males, 782 white males, no white female")
    void the_second_generation_has_no_white_female() {
        var cross = Cross.of(flies, hybridFemale, redMale);

        assertThat(chance(cross, "White", Sex.FEMALE)).isEqualTo(Fraction.NONE);
        var value =
                ChiSquare.of(
                        List.of(2459, 1011, 782),
                        List.of(
                                chance(cross, "Normal", Sex.FEMALE),
                                chance(cross, "Normal", Sex.MALE),
                                chance(cross, "White", Sex.MALE)));
        // White flies live less well; printed with four decimals.
        assertThat(value.value()).isCloseTo(128.9835, within(0.00005));
    }

    @Test
    @Reference(
            kind = Kind.FROM_MEMORY,
            source = MORGAN,
            locator = "white male by F1 daughters: 129 red F, 132 red M, 88 white F, 86 white M")
    void a_white_male_and_his_daughters_give_all_four_alike() {
        var cross = Cross.of(flies, hybridFemale, whiteMale);

        var value =
                ChiSquare.of(
                        List.of(129, 132, 88, 86),
                        List.of(
                                chance(cross, "Normal", Sex.FEMALE),
                                chance(cross, "Normal", Sex.MALE),
                                chance(cross, "White", Sex.FEMALE),
                                chance(cross, "White", Sex.MALE)));
        // Printed with four decimals.
        assertThat(value.value()).isCloseTo(17.4598, within(0.00005));
    }

    private static Fraction chance(Cross cross, String name, Sex sex) {
        return cross.likeliest(9).stream()
                .filter(outcome -> outcome.name().equals(name))
                .map(
                        outcome ->
                                outcome.chance()
                                        .times(outcome.sexes().getOrDefault(sex, Fraction.NONE)))
                .reduce(Fraction.NONE, Fraction::plus);
    }
}
