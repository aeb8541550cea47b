package clutchwright.engine.casebook;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.casebook.TestGenes.chanceOf;
import static clutchwright.engine.casebook.TestGenes.form;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Haplotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Wanted;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference;
import clutchwright.engine.reference.Reference.Kind;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/// Genes on one chromosome.
class A08_LinkageTest {

    private static final Fraction R = Fraction.of(1, 10);

    private final GeneticModel model =
            new TestGenes()
                    .recessive("a", "A")
                    .recessive("b", "B")
                    .linked(List.of("a", "b"), R)
                    .model();
    private final ParentGenotype unknown = animal("a", "A/+", "b", "B/+");
    private final ParentGenotype coupling = unknown.withTogether(together("A", "B"));
    private final ParentGenotype repulsion = unknown.withTogether(together("A", "+"));

    @Test
    @Reference(
            kind = Kind.PUBLISHED,
            source =
                    "C.R. Rao (1973) Linear Statistical Inference, after Fisher and Balmukand 1928",
            locator = "p. 368: classes 1/2 + psi/4, (1-psi)/4 twice, psi/4; psi (1-r)^2 or r^2")
    void the_four_classes_of_an_intercross_in_coupling_and_in_repulsion() {
        assertClasses(Cross.of(model, coupling, coupling), Fraction.of(81, 100));
        assertClasses(Cross.of(model, repulsion, repulsion), Fraction.of(1, 100));
    }

    private static void assertClasses(Cross cross, Fraction psi) {
        var quarter = Fraction.of(1, 4);
        assertThat(chanceOf(cross, "Normal")).isEqualTo(Fraction.HALF.plus(psi.times(quarter)));
        assertThat(chanceOf(cross, "A")).isEqualTo(psi.complement().times(quarter));
        assertThat(chanceOf(cross, "B")).isEqualTo(psi.complement().times(quarter));
        assertThat(chanceOf(cross, "A B")).isEqualTo(psi.times(quarter));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "gametes of a double het: (1-r)/2 parental, r/2 recombinant",
            locator = "double recessive: r = 1/10 repulsion 1/400, coupling 81/400; r = 1/2 1/16")
    void a_double_visual_from_linked_hets() {
        assertThat(chanceOf(Cross.of(model, repulsion, repulsion), "A B"))
                .isEqualTo(Fraction.of(1, 400));
        assertThat(chanceOf(Cross.of(model, coupling, coupling), "A B"))
                .isEqualTo(Fraction.of(81, 400));
    }

    @Test
    void an_unknown_phase_is_either_with_equal_chance() {
        // Each parent's gamete brings both at ((1-r)/2 + r/2) / 2 = 1/4.
        assertThat(chanceOf(Cross.of(model, unknown, unknown), "A B"))
                .isEqualTo(Fraction.of(1, 16));
    }

    @Test
    void the_unknown_phase_is_one_for_the_whole_clutch() {
        var visual = animal("a", "A/A", "b", "B/B");
        var cross = Cross.of(model, unknown, visual);
        var both = new Wanted(Set.of(form("a", "A"), form("b", "B")), Set.of());

        // Half of 1 - (1 - 9/20)^2 and half of 1 - (1 - 1/20)^2
        assertThat(cross.atLeastOne(both, 2))
                .isEqualTo(Fraction.of(400 - 121, 800).plus(Fraction.of(400 - 361, 800)));
    }

    @Test
    @Reference(
            kind = Kind.PUBLISHED,
            source = "H. De Beukelaer, G. De Meyer and V. Fack (2015) BMC Genetics 16:2, example A",
            locator = "inputs 101|010 at 31 and 42 cM; gametes by Haldane's function derived")
    void gametes_of_three_linked_loci() {
        // Haldane: r = (1 - exp(-2d)) / 2, nine decimals.
        var first = Fraction.of(231_027_781, 1_000_000_000);
        var second = Fraction.of(284_144_738, 1_000_000_000);
        var three =
                new TestGenes()
                        .dominant("a", "A")
                        .dominant("b", "B")
                        .dominant("c", "C")
                        .linked(List.of("a", "b", "c"), first, second)
                        .model();
        var plant =
                animal("a", "A/+", "b", "B/+", "c", "C/+")
                        .withTogether(
                                Haplotype.of(
                                        List.of(
                                                allele("a", "A"),
                                                allele("b", "+"),
                                                allele("c", "C"))));

        var cross = Cross.of(three, plant, ParentGenotype.WILD);

        // The recombination fractions have nine decimals, so do products of numbers below one.
        assertThat(chanceOf(cross, "A C").value()).isCloseTo(0.275236404, within(2e-9));
        assertThat(chanceOf(cross, "B").value()).isCloseTo(0.275236404, within(2e-9));
        assertThat(chanceOf(cross, "A").value()).isCloseTo(0.109249705, within(2e-9));
        assertThat(chanceOf(cross, "B C").value()).isCloseTo(0.109249705, within(2e-9));
        assertThat(chanceOf(cross, "A B").value()).isCloseTo(0.082691226, within(2e-9));
        assertThat(chanceOf(cross, "C").value()).isCloseTo(0.082691226, within(2e-9));
        assertThat(chanceOf(cross, "A B C").value()).isCloseTo(0.032822664, within(2e-9));
        assertThat(chanceOf(cross, "Normal").value()).isCloseTo(0.032822664, within(2e-9));
    }

    @Test
    void statements_of_phase_that_contradict_each_other_are_refused() {
        var both = coupling.withTogether(together("A", "+"));

        assertThatThrownBy(() -> Cross.of(model, both, unknown))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no phase");
    }

    private static Haplotype together(String first, String second) {
        return Haplotype.of(List.of(allele("a", first), allele("b", second)));
    }

    private static Allele allele(String locus, String name) {
        return new Allele(new LocusId(locus), name);
    }
}
