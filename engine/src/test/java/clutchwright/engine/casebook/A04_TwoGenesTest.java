package clutchwright.engine.casebook;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.casebook.TestGenes.carries;
import static clutchwright.engine.casebook.TestGenes.form;
import static clutchwright.engine.casebook.TestGenes.groups;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.Wanted;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference;
import clutchwright.engine.reference.Reference.Kind;
import java.math.BigInteger;
import java.util.Set;
import org.junit.jupiter.api.Test;

/// Two independent genes.
class A04_TwoGenesTest {

    private final GeneticModel model =
            new TestGenes().recessive("clown", "Clown").recessive("pied", "Piebald").model();

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Mendel's second law",
            locator = "double het by double het: 9 to 3 to 3 to 1")
    void double_het_by_double_het() {
        var both = animal("clown", "Clown/+", "pied", "Piebald/+");
        var cross = Cross.of(model, both, both);

        assertThat(groups(cross))
                .isEqualTo("9/16 Normal, 3/16 Clown, 3/16 Piebald, 1/16 Clown Piebald");
        assertThat(carries(cross, "Normal")).isEqualTo("2/3 Clown, 2/3 Piebald");
        assertThat(carries(cross, "Clown")).isEqualTo("2/3 Piebald");
        assertThat(cross.outcomeCount()).isEqualTo(BigInteger.valueOf(4));
        assertThat(cross.chanceOf(new Wanted(Set.of(), Set.of(new LocusId("clown")))))
                .isEqualTo(Fraction.of(3, 4));
    }

    @Test
    void the_list_can_be_cut_and_asked_for_less() {
        var both = animal("clown", "Clown/+", "pied", "Piebald/+");
        var cross = Cross.of(model, both, both);

        assertThat(cross.groups(2))
                .extracting(group -> group.name())
                .containsExactly("Normal", "Clown");
        var pieds = new Wanted(Set.of(form("pied", "Piebald")), Set.of());
        assertThat(cross.likeliest(9, pieds))
                .extracting(Outcome::name)
                .containsExactly("Piebald", "Clown Piebald");
        assertThat(cross.chanceOf(pieds)).isEqualTo(Fraction.of(1, 4));
    }

    @Test
    void forms_stand_in_the_order_of_the_catalogue_whatever_the_order_in_the_parents() {
        var dam = animal("pied", "Piebald/Piebald", "clown", "Clown/Clown");

        assertThat(groups(Cross.of(model, dam, dam))).isEqualTo("1/1 Clown Piebald");
    }
}
