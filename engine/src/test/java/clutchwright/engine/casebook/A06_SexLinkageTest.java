package clutchwright.engine.casebook;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.casebook.TestGenes.outcome;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference;
import clutchwright.engine.reference.Reference.Kind;
import org.junit.jupiter.api.Test;

/// A gene on both sex chromosomes of an XY species, that recombines in the male at 1/20.
///
/// The pattern: B.M. Mallery and M.M. Carrillo (2016); T. Gamble et al. (2017), Current Biology 27.
class A06_SexLinkageTest {

    private static final Fraction R = Fraction.of(1, 20);

    private final GeneticModel model =
            new TestGenes().sexLinked("banana", R, "B", "B/+", "Banana", "B/B", "Super").model();
    private final ParentGenotype maleMaker = animal("banana", "+|B");
    private final ParentGenotype femaleMaker = animal("banana", "B|+");
    private final ParentGenotype female = animal("banana", "B/+");

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "recombination r with the sex-determining region in males only",
            locator = "male maker by normal: 19/40, 1/40, 1/40, 19/40 at r = 1/20")
    void a_male_maker_gives_bananas_that_are_mostly_male() {
        var cross = Cross.of(model, ParentGenotype.WILD, maleMaker);

        assertBySex(cross, "Banana", Fraction.of(1, 40), Fraction.of(19, 40));
        assertBySex(cross, "Normal", Fraction.of(19, 40), Fraction.of(1, 40));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "recombination r with the sex-determining region in males only",
            locator = "female maker by normal; a female transmits to either sex alike")
    void a_female_maker_gives_bananas_that_are_mostly_female_and_a_female_gives_both() {
        var mostlyFemale = Cross.of(model, ParentGenotype.WILD, femaleMaker);
        var both = Cross.of(model, female, ParentGenotype.WILD);

        assertBySex(mostlyFemale, "Banana", Fraction.of(19, 40), Fraction.of(1, 40));
        assertBySex(both, "Banana", Fraction.of(1, 4), Fraction.of(1, 4));
        assertBySex(both, "Normal", Fraction.of(1, 4), Fraction.of(1, 4));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "recombination r with the sex-determining region in males only",
            locator = "male maker by B/+ female: males 19/80, 1/4, 1/80; females 1/80, 1/4, 19/80")
    void a_male_maker_by_a_banana_female() {
        var cross = Cross.of(model, female, maleMaker);

        assertBySex(cross, "Super", Fraction.of(1, 80), Fraction.of(19, 80));
        assertBySex(cross, "Banana", Fraction.of(1, 4), Fraction.of(1, 4));
        assertBySex(cross, "Normal", Fraction.of(19, 80), Fraction.of(1, 80));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "recombination r with the sex-determining region in males only",
            locator = "goal of a B/B male: 19/80 from a male maker, 1/80 from a female maker")
    void a_super_male_is_far_likelier_from_a_male_maker() {
        var fromMaleMaker = outcome(Cross.of(model, female, maleMaker), "Super");
        var fromFemaleMaker = outcome(Cross.of(model, female, femaleMaker), "Super");

        assertThat(bySex(fromMaleMaker, Sex.MALE)).isEqualTo(Fraction.of(19, 80));
        assertThat(bySex(fromFemaleMaker, Sex.MALE)).isEqualTo(Fraction.of(1, 80));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "recombination r with the sex-determining region in males only",
            locator = "a banana son of a male maker is one; a banana son of a banana dam is not")
    void a_son_has_the_phase_of_the_parent_he_has_it_from() {
        var fromSire = outcome(Cross.of(model, ParentGenotype.WILD, maleMaker), "Banana");
        var fromDam = outcome(Cross.of(model, female, ParentGenotype.WILD), "Banana");

        assertThat(fromSire.loci().getFirst().genotypes().outcomes())
                .containsExactlyInAnyOrder(
                        TestGenes.genotype("banana", "B/+"), TestGenes.genotype("banana", "+|B"));
        assertThat(fromDam.loci().getFirst().genotypes().outcomes())
                .containsExactlyInAnyOrder(
                        TestGenes.genotype("banana", "B/+"), TestGenes.genotype("banana", "B|+"));
    }

    @Test
    void a_genotype_in_the_shape_of_the_other_sex_is_refused() {
        assertThatThrownBy(() -> Cross.of(model, maleMaker, female))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("+|B at banana of a FEMALE");
        assertThatThrownBy(() -> Cross.of(model, female, female))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("+/B at banana of a MALE");
    }

    private static void assertBySex(Cross cross, String name, Fraction female, Fraction male) {
        assertThat(bySex(outcome(cross, name), Sex.FEMALE)).isEqualTo(female);
        assertThat(bySex(outcome(cross, name), Sex.MALE)).isEqualTo(male);
    }

    private static Fraction bySex(Outcome outcome, Sex sex) {
        return outcome.chance().times(outcome.sexes().getOrDefault(sex, Fraction.NONE));
    }
}
