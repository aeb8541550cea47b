package clutchwright.engine.reference;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.casebook.TestGenes.chanceOf;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;

/// Incomplete dominance: the hybrid has a look of its own.
class SnapdragonTest {

    @Test
    @Reference(
            kind = Kind.FROM_MEMORY,
            source = "E. Baur's snapdragons, as textbooks quote them",
            locator = "22 red, 52 pink, 23 ivory against 1:2:1; chi-square 51/97 derived")
    void pink_by_pink_fits_one_to_two_to_one() {
        var model =
                new TestGenes()
                        .locus("flower", List.of("Red"), "Red/+", "Pink", "Red/Red", "Red")
                        .model();
        var pink = animal("flower", "Red/+");
        var cross = Cross.of(model, pink, pink);

        var value =
                ChiSquare.of(
                        List.of(22, 52, 23),
                        List.of(
                                chanceOf(cross, "Red"),
                                chanceOf(cross, "Pink"),
                                chanceOf(cross, "Normal")));

        assertThat(value).isEqualTo(Fraction.of(51, 97));
    }
}
