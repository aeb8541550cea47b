package clutchwright.engine.casebook;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.casebook.TestGenes.groups;
import static clutchwright.engine.casebook.TestGenes.outcome;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.probability.Fraction;
import org.junit.jupiter.api.Test;

/// One dominant gene: the second copy cannot be seen.
class A03_DominantTest {

    private final GeneticModel model = new TestGenes().dominant("pinstripe", "Pinstripe").model();
    private final ParentGenotype single = animal("pinstripe", "Pinstripe/+");

    @Test
    void a_visual_of_two_single_copies_has_two_at_one_in_three() {
        var cross = Cross.of(model, single, single);

        assertThat(groups(cross)).isEqualTo("3/4 Pinstripe, 1/4 Normal");
        var visual = outcome(cross, "Pinstripe");
        assertThat(visual.carries()).isEmpty();
        assertThat(visual.homozygous())
                .containsExactly(
                        new Outcome.Held(
                                new Allele(new LocusId("pinstripe"), "Pinstripe"),
                                Fraction.of(1, 3)));
    }

    @Test
    void a_visual_by_a_normal_cannot_give_two_copies() {
        var visual = outcome(Cross.of(model, single, ParentGenotype.WILD), "Pinstripe");

        assertThat(visual.chance()).isEqualTo(Fraction.HALF);
        assertThat(visual.homozygous()).isEmpty();
    }
}
