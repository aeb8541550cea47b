package clutchwright.engine.casebook;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.casebook.TestGenes.carries;
import static clutchwright.engine.casebook.TestGenes.chanceOf;
import static clutchwright.engine.casebook.TestGenes.form;
import static clutchwright.engine.casebook.TestGenes.groups;
import static clutchwright.engine.casebook.TestGenes.outcome;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Wanted;
import clutchwright.engine.probability.Fraction;
import java.math.BigInteger;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/// Forms on which others cannot be read: a white animal, say.
class A09_MaskingTest {

    private final GeneticModel model =
            new TestGenes()
                    .incomplete("pastel", "Pastel")
                    .locus("white", List.of("W"), "W/+", "Half", "W/W", "White")
                    .masking("white", "White", new Masking.Everything())
                    .recessive("clown", "Clown")
                    .model();
    private final ParentGenotype parent =
            animal("pastel", "Pastel/+", "white", "W/+", "clown", "Clown/+");

    @Test
    void all_white_ones_are_one_group_that_may_carry_anything() {
        var cross = Cross.of(model, parent, parent);

        assertThat(chanceOf(cross, "White")).isEqualTo(Fraction.of(1, 4));
        assertThat(carries(cross, "White")).isEqualTo("3/4 Pastel, 3/4 Clown");
        // Three looks of pastel, two of white, two of clown; and the white one.
        assertThat(cross.outcomeCount()).isEqualTo(BigInteger.valueOf(3 * 2 * 2 + 1));
        assertThat(outcome(cross, "White").loci())
                .extracting(Outcome.AtLocus::masked)
                .containsExactly(true, false, true);
    }

    @Test
    void a_wanted_form_is_not_seen_on_a_white_one() {
        var cross = Cross.of(model, parent, parent);
        var pastel = new Wanted(Set.of(form("pastel", "Pastel")), Set.of());
        var noClown = new Wanted(Set.of(), Set.of(new LocusId("clown")));

        assertThat(cross.chanceOf(pastel)).isEqualTo(Fraction.of(3, 8));
        // White, or not white and not clown: 1/4 + 3/4 * 3/4
        assertThat(cross.chanceOf(noClown)).isEqualTo(Fraction.of(4 + 9, 16));
    }

    @Test
    void what_an_earlier_form_hides_hides_nothing_itself() {
        var twice =
                new TestGenes()
                        .dominant("first", "First")
                        .dominant("second", "Second")
                        .dominant("third", "Third")
                        .masking("first", "First", new Masking.These(Set.of(new LocusId("second"))))
                        .masking(
                                "second", "Second", new Masking.These(Set.of(new LocusId("third"))))
                        .model();
        var all = animal("first", "First/First", "second", "Second/Second", "third", "Third/Third");

        assertThat(groups(Cross.of(twice, all, all))).isEqualTo("1/1 First Third");
    }
}
