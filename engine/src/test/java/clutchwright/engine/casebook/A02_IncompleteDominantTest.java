package clutchwright.engine.casebook;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.casebook.TestGenes.groups;
import static clutchwright.engine.casebook.TestGenes.outcome;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.ParentGenotype;
import org.junit.jupiter.api.Test;

/// One incomplete dominant gene, whose super form shows.
class A02_IncompleteDominantTest {

    private final GeneticModel model = new TestGenes().incomplete("pastel", "Pastel").model();
    private final ParentGenotype pastel = animal("pastel", "Pastel/+");

    @Test
    void one_of_each_pure_form_to_two_between() {
        var cross = Cross.of(model, pastel, pastel);

        assertThat(groups(cross)).isEqualTo("1/2 Pastel, 1/4 Normal, 1/4 Super Pastel");
        assertThat(outcome(cross, "Super Pastel").homozygous()).isEmpty();
        assertThat(outcome(cross, "Pastel").carries()).isEmpty();
    }

    @Test
    void a_super_by_normal_gives_only_the_single_form() {
        assertThat(groups(Cross.of(model, animal("pastel", "Pastel/Pastel"), ParentGenotype.WILD)))
                .isEqualTo("1/1 Pastel");
    }
}
