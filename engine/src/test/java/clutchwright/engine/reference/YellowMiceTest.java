package clutchwright.engine.reference;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.casebook.TestGenes.chanceOf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;

/// The first lethal: yellow mice never breed true.
class YellowMiceTest {

    private static final String CUENOT =
            "L. Cuénot (1905) Arch. Zool. Exp. Gén. (Notes et revue) ser. 4, 3:cxxiii";

    private static final String CASTLE = "W.E. Castle and C.C. Little (1910) Science 32:868-870";

    private final Cross lethal = yellowByYellow(Fraction.NONE);
    private final Cross harmless = yellowByYellow(Fraction.WHOLE);

    private static Cross yellowByYellow(Fraction viability) {
        var model =
                new TestGenes()
                        .dominant("coat", "Yellow")
                        .viability("coat", "Yellow/Yellow", viability)
                        .model();
        return Cross.of(model, animal("coat", "Yellow/+"), animal("coat", "Yellow/+"));
    }

    @Test
    @Reference(
            kind = Kind.FROM_MEMORY,
            source = CUENOT,
            locator = "263 yellow, 100 not: chi-square 5.466942 of 2:1, 1.257117 of 3:1")
    void the_first_count_alone_lies_nearer_to_three_to_one() {
        assertFits(263, 100, 5.466942, 1.257117);
    }

    @Test
    @Reference(
            kind = Kind.FROM_MEMORY,
            source = CASTLE,
            locator = "800 yellow, 435 not: chi-square 1.983806 of 2:1, 68.832659 of 3:1")
    void the_larger_count_fits_two_to_one_and_no_other() {
        assertFits(800, 435, 1.983806, 68.832659);
    }

    @Test
    @Reference(
            kind = Kind.FROM_MEMORY,
            source = CUENOT + "; " + CASTLE,
            locator = "1063 yellow, 535 not: chi-square 0.015332 of 2:1, 61.277430 of 3:1")
    void both_together_fit_two_to_one() {
        assertFits(1063, 535, 0.015332, 61.277430);
        assertThat(lethal.dying()).isEqualTo(Fraction.of(1, 4));
    }

    private void assertFits(int yellow, int other, double ofTwoToOne, double ofThreeToOne) {
        // The listed values have six decimals.
        assertThat(chiSquare(lethal, yellow, other)).isCloseTo(ofTwoToOne, within(0.0000005));
        assertThat(chiSquare(harmless, yellow, other)).isCloseTo(ofThreeToOne, within(0.0000005));
    }

    private static double chiSquare(Cross cross, int yellow, int other) {
        return ChiSquare.of(
                        List.of(yellow, other),
                        List.of(chanceOf(cross, "Yellow"), chanceOf(cross, "Normal")))
                .value();
    }
}
