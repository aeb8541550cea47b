package clutchwright.engine.casebook;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.casebook.TestGenes.groups;
import static clutchwright.engine.casebook.TestGenes.outcome;
import static clutchwright.engine.casebook.TestGenes.part;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Standing;
import clutchwright.engine.genetics.Viability;
import clutchwright.engine.genetics.Wanted;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference;
import clutchwright.engine.reference.Reference.Kind;
import java.math.BigInteger;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/// Genotypes that die in the egg: chances are among those that hatch, and the loss is told.
class A07_LethalsTest {

    private final GeneticModel spider =
            new TestGenes()
                    .dominant("spider", "Spider")
                    .viability("spider", "Spider/Spider", Fraction.NONE)
                    .model();

    /// Two alleles of a series, each lethal when doubled.
    private static GeneticModel series(Fraction compound) {
        return new TestGenes()
                .locus(
                        "series",
                        List.of("L1", "L2"),
                        "L1/+",
                        "One",
                        "L2/+",
                        "Two",
                        "L1/L2",
                        "Both",
                        "L1/L1",
                        "Dead One",
                        "L2/L2",
                        "Dead Two")
                .viability("series", "L1/L1", Fraction.NONE)
                .viability("series", "L2/L2", Fraction.NONE)
                .viability("series", "L1/L2", compound)
                .model();
    }

    private final ParentGenotype one = animal("series", "L1/+");
    private final ParentGenotype two = animal("series", "L2/+");
    private final ParentGenotype both = animal("series", "L1/L2");

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Mendel's first law, given survival",
            locator = "Y/+ by Y/+ where Y/Y dies: 2/3, 1/3")
    void survivors_of_a_lethal_cross_are_two_to_one() {
        var single = animal("spider", "Spider/+");
        var cross = Cross.of(spider, single, single);

        assertThat(groups(cross)).isEqualTo("2/3 Spider, 1/3 Normal");
        assertThat(cross.dying()).isEqualTo(Fraction.of(1, 4));
        assertThat(outcome(cross, "Spider").homozygous()).isEmpty();
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Mendel's first law, given survival",
            locator = "two lethal alleles of one series, compound viable: no loss")
    void two_different_lethals_lose_nothing_if_the_compound_lives() {
        var cross = Cross.of(series(Fraction.WHOLE), one, two);

        assertThat(groups(cross)).isEqualTo("1/4 Both, 1/4 Normal, 1/4 One, 1/4 Two");
        assertThat(cross.dying()).isEqualTo(Fraction.NONE);
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Mendel's first law, given survival",
            locator = "two lethal alleles of one series, compound dies: 1/3 each")
    void two_different_lethals_whose_compound_dies() {
        var cross = Cross.of(series(Fraction.NONE), one, two);

        assertThat(groups(cross)).isEqualTo("1/3 Normal, 1/3 One, 1/3 Two");
        assertThat(cross.dying()).isEqualTo(Fraction.of(1, 4));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Mendel's first law, given survival",
            locator = "balanced lethal L1/L2 by L1/L2; and L1/L2 by L1/+: 1/3 each")
    void a_balanced_lethal_breeds_true_at_half_the_hatch() {
        var balanced = Cross.of(series(Fraction.WHOLE), both, both);
        var back = Cross.of(series(Fraction.WHOLE), both, one);

        assertThat(groups(balanced)).isEqualTo("1/1 Both");
        assertThat(balanced.dying()).isEqualTo(Fraction.HALF);
        assertThat(groups(back)).isEqualTo("1/3 Both, 1/3 One, 1/3 Two");
    }

    @Test
    void where_no_embryo_lives_there_is_nothing_to_list() {
        var model =
                new TestGenes().recessive("l", "L").viability("l", "L/L", Fraction.NONE).model();
        var cross = Cross.of(model, animal("l", "L/L"), animal("l", "L/L"));

        assertThat(cross.likeliest(9)).isEmpty();
        assertThat(cross.dying()).isEqualTo(Fraction.WHOLE);
        assertThat(cross.outcomeCount()).isEqualTo(BigInteger.ZERO);
        assertThat(cross.chanceOf(Wanted.ANYTHING)).isEqualTo(Fraction.NONE);
        assertThat(cross.atLeastOne(Wanted.ANYTHING, 6)).isEqualTo(Fraction.NONE);
        assertThat(cross.clutchChance(List.of(new Cross.Found(Set.of(), 1))))
                .isEqualTo(Fraction.NONE);
    }

    @Test
    void a_disputed_lethal_is_not_counted() {
        var model =
                new TestGenes()
                        .dominant("spider", "Spider")
                        .viability(
                                "spider",
                                "Spider/Spider",
                                new Viability(Fraction.NONE, Standing.DISPUTED))
                        .model();
        var single = animal("spider", "Spider/+");

        assertThat(Cross.of(model, single, single).dying()).isEqualTo(Fraction.NONE);
    }

    @Test
    void a_combination_that_dies_ties_two_genes_together() {
        var model =
                new TestGenes()
                        .dominant("a", "A")
                        .dominant("b", "B")
                        .combination(Fraction.NONE, part("a", "A", 1), part("b", "B", 1))
                        .model();
        var cross = Cross.of(model, animal("a", "A/+"), animal("b", "B/+"));

        assertThat(groups(cross)).isEqualTo("1/3 A, 1/3 B, 1/3 Normal");
        assertThat(cross.dying()).isEqualTo(Fraction.of(1, 4));
    }

    @Test
    void cautions_speak_of_parents_and_of_embryos_that_die_gravest_first() {
        var wobble = caution(Caution.Concern.NERVES, 1);
        var death = caution(Caution.Concern.EARLY_DEATH, 2);
        var model =
                new TestGenes()
                        .dominant("spider", "Spider")
                        .viability("spider", "Spider/Spider", Fraction.NONE)
                        .caution(wobble)
                        .caution(death)
                        .model();
        var single = animal("spider", "Spider/+");

        assertThat(Cross.of(model, single, single).cautions()).containsExactly(death, wobble);
        assertThat(Cross.of(model, single, ParentGenotype.WILD).cautions()).containsExactly(wobble);
        assertThat(Cross.of(model, ParentGenotype.WILD, ParentGenotype.WILD).cautions()).isEmpty();
    }

    private static Caution caution(Caution.Concern concern, int copies) {
        return new Caution(
                concern,
                List.of(part("spider", "Spider", copies)),
                Standing.SETTLED,
                "words",
                "common practice, no source");
    }
}
