package clutchwright.engine.casebook;

import static clutchwright.engine.casebook.TestGenes.animal;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.probability.Fraction;
import org.junit.jupiter.api.Test;

/// One recessive gene. Mendel's ratios; the trade's words for them are common practice.
class A01_OneRecessiveTest {

    private final GeneticModel model = new TestGenes().recessive("clown", "Clown").model();

    @Test
    void het_by_het_gives_one_visual_in_four() {
        var cross = Cross.of(model, animal("clown", "Clown/+"), animal("clown", "Clown/+"));

        var outcomes = cross.likeliest(10);

        assertThat(outcomes).extracting("name").containsExactly("Normal", "Clown");
        assertThat(outcomes.getFirst().chance()).isEqualTo(Fraction.of(3, 4));
    }
}
