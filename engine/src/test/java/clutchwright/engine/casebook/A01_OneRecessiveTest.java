package clutchwright.engine.casebook;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.casebook.TestGenes.carries;
import static clutchwright.engine.casebook.TestGenes.form;
import static clutchwright.engine.casebook.TestGenes.groups;
import static clutchwright.engine.casebook.TestGenes.outcome;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.genetics.Wanted;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference;
import clutchwright.engine.reference.Reference.Kind;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/// One recessive gene: Mendel's ratios, in the trade's words.
class A01_OneRecessiveTest {

    private final GeneticModel model = new TestGenes().recessive("clown", "Clown").model();
    private final ParentGenotype normal = ParentGenotype.WILD;
    private final ParentGenotype het = animal("clown", "Clown/+");
    private final ParentGenotype visual = animal("clown", "Clown/Clown");

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Mendel's first law",
            locator =
                    "het by het: 3 to 1, normal-looking offspring het at 2/3, strand by strand 1/3")
    void het_by_het_gives_one_visual_in_four_and_the_rest_are_two_thirds_het() {
        var cross = Cross.of(model, het, het);

        assertThat(groups(cross)).isEqualTo("3/4 Normal, 1/4 Clown");
        assertThat(carries(cross, "Normal")).isEqualTo("2/3 Clown");
        assertThat(carries(cross, "Clown")).isEmpty();
        var clown = new Allele(new LocusId("clown"), "Clown");
        var at = outcome(cross, "Normal").loci().getFirst();
        assertThat(at.fromDam().chanceOf(clown)).isEqualTo(Fraction.of(1, 3));
        assertThat(at.fromSire().chanceOf(clown)).isEqualTo(Fraction.of(1, 3));
        assertThat(at.genotypes().chanceOf(TestGenes.genotype("clown", "Clown/+")))
                .isEqualTo(Fraction.of(2, 3));
    }

    @Test
    void visual_by_normal_gives_only_hets() {
        var cross = Cross.of(model, visual, normal);

        assertThat(groups(cross)).isEqualTo("1/1 Normal");
        assertThat(carries(cross, "Normal")).isEqualTo("1/1 Clown");
    }

    @Test
    void visual_by_het_gives_half_visuals_and_all_others_are_het() {
        var cross = Cross.of(model, visual, het);

        assertThat(groups(cross)).isEqualTo("1/2 Clown, 1/2 Normal");
        assertThat(carries(cross, "Normal")).isEqualTo("1/1 Clown");
    }

    @Test
    void het_by_normal_gives_half_hets_all_of_whom_look_normal() {
        var cross = Cross.of(model, het, normal);

        assertThat(groups(cross)).isEqualTo("1/1 Normal");
        assertThat(carries(cross, "Normal")).isEqualTo("1/2 Clown");
    }

    @Test
    void both_sexes_come_alike_where_no_gene_is_sex_linked() {
        var sexes = outcome(Cross.of(model, het, het), "Clown").sexes();

        assertThat(sexes).isEqualTo(Map.of(Sex.FEMALE, Fraction.HALF, Sex.MALE, Fraction.HALF));
    }

    @Test
    void two_normal_animals_give_normal_ones_and_nothing_to_carry() {
        var cross = Cross.of(model, normal, normal);

        assertThat(groups(cross)).isEqualTo("1/1 Normal");
        assertThat(cross.outcomeCount()).isEqualTo(BigInteger.ONE);
        assertThat(cross.findShowing(Set.of()).orElseThrow().carries()).isEmpty();
        assertThat(cross.atLeastOne(Wanted.ANYTHING, 1)).isEqualTo(Fraction.WHOLE);
    }

    @Test
    void at_least_one_visual_of_six_eggs_of_hets() {
        var cross = Cross.of(model, het, het);
        var visuals = new Wanted(Set.of(form("clown", "Clown")), Set.of());

        // 1 - (3/4)^6
        assertThat(cross.atLeastOne(visuals, 6)).isEqualTo(Fraction.of(4096 - 729, 4096));
        assertThat(cross.atLeastOne(visuals, 0)).isEqualTo(Fraction.NONE);
    }

    @Test
    void a_clutch_of_hets_with_two_visuals_of_six() {
        var cross = Cross.of(model, het, het);
        var found =
                List.of(
                        new Cross.Found(Set.of(form("clown", "Clown")), 2),
                        new Cross.Found(Set.of(), 4));

        // 15 orders, (1/4)^2 (3/4)^4
        assertThat(cross.clutchChance(found)).isEqualTo(Fraction.of(15 * 81, 4096));
        assertThat(cross.clutchChance(List.of())).isEqualTo(Fraction.WHOLE);
    }

    @Test
    void a_clutch_that_cannot_be_has_no_chance() {
        var cross = Cross.of(model, het, normal);

        assertThat(cross.clutchChance(List.of(new Cross.Found(Set.of(form("clown", "Clown")), 1))))
                .isEqualTo(Fraction.NONE);
        assertThat(cross.findShowing(Set.of(form("clown", "Clown")))).isEmpty();
    }

    @Test
    void an_unknown_gene_a_foreign_allele_and_a_list_of_none_are_refused() {
        assertThatThrownBy(() -> Cross.of(model, animal("pied", "Pied/+"), het))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("unknown locus pied");
        assertThatThrownBy(() -> Cross.of(model, animal("clown", "Pied/+"), het))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("allele Pied is not of the series at clown");
        assertThatThrownBy(() -> Cross.of(model, het, het).likeliest(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("limit is 0");
    }
}
