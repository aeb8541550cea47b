package clutchwright.app.eggs;

import static clutchwright.app.eggs.Parents.inDoubt;
import static clutchwright.app.eggs.Parents.look;
import static clutchwright.app.eggs.Parents.pair;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Fraction;
import java.util.List;
import org.junit.jupiter.api.Test;

/// What a clutch can give where its sire is in doubt. Expected values are Mendel's, written as the
/// algebra; the mixture is the law of total probability.
class ExpectedTest {

    private static final Fraction THIRD = Fraction.of(1, 3);

    @Test
    void each_male_counts_by_his_chance() {
        var expected = inDoubt("Normal", "Pastel", "Mojave", "Normal");
        assertThat(expected.chanceOf(look("Pastel"))).isEqualTo(THIRD.times(Fraction.HALF));
        assertThat(expected.chanceOf(look("Mojave"))).isEqualTo(THIRD.times(Fraction.HALF));
        assertThat(expected.chanceOf(look("Normal"))).isEqualTo(Fraction.of(2, 3));
        assertThat(expected.chanceOf(look("Pastel Mojave"))).isEqualTo(Fraction.NONE);
    }

    @Test
    void the_likeliest_come_first_and_are_all_there_is() {
        var guesses = inDoubt("Normal", "Pastel", "Mojave").likeliest(10);
        assertThat(guesses)
                .extracting(Expected.Guess::name)
                .containsExactly("Normal", "Mojave", "Pastel");
        assertThat(
                        guesses.stream()
                                .map(Expected.Guess::chance)
                                .reduce(Fraction.NONE, Fraction::plus))
                .isEqualTo(Fraction.WHOLE);
    }

    /// Normal young are of the het with 3/4 and of the plain male with 1; of the first 2/3
    /// carry, of the second 1/2.
    @Test
    void what_is_carried_is_weighed_by_who_can_have_given_it() {
        var guess = inDoubt("het Clown", "het Clown", "Normal").find(look("Normal")).orElseThrow();
        var ofHet = Fraction.HALF.times(Fraction.of(3, 4));
        var ofPlain = Fraction.HALF;
        assertThat(guess.chance()).isEqualTo(ofHet.plus(ofPlain));
        var carried =
                ofHet.times(Fraction.of(2, 3))
                        .plus(ofPlain.times(Fraction.HALF))
                        .dividedBy(ofHet.plus(ofPlain));
        assertThat(guess.genes().carries()).hasSize(1);
        assertThat(guess.genes().carries().getFirst().chance()).isEqualTo(carried);
    }

    @Test
    void one_male_sired_the_whole_clutch() {
        var expected = inDoubt("Normal", "Pastel", "Mojave");
        var both = List.of(new Cross.Found(look("Pastel"), 1), new Cross.Found(look("Mojave"), 1));
        assertThat(expected.chanceOf(both)).isEqualTo(Fraction.NONE);
        var pastels = List.of(new Cross.Found(look("Pastel"), 2));
        assertThat(expected.chanceOf(pastels)).isEqualTo(Fraction.of(1, 8));
    }

    @Test
    void males_of_the_same_genes_leave_no_doubt_about_the_young() {
        var expected = inDoubt("Normal", "Pastel", "Pastel");
        assertThat(expected.parts()).hasSize(1);
        assertThat(expected.chanceOf(look("Pastel"))).isEqualTo(Fraction.HALF);
    }

    /// A male maker hands his sex-linked gene to his sons, but for crossing over: Mallery and
    /// Carrillo (2016) on Banana. The rate of 1/20 is that of the species file.
    @Test
    void the_sex_counts_where_the_gene_is_linked_to_it() {
        var expected = pair("Normal", "Banana male maker");
        assertThat(expected.chanceOf(Sex.MALE, look("Banana"))).isEqualTo(Fraction.of(19, 20));
        assertThat(expected.chanceOf(Sex.FEMALE, look("Banana"))).isEqualTo(Fraction.of(1, 20));
    }

    @Test
    void forms_to_tap_are_those_that_the_parents_can_show() {
        var genes = GenesInPlay.of(pair("Pastel het Clown", "Pastel")).genes();
        assertThat(genes).hasSize(1);
        assertThat(genes.getFirst().forms())
                .extracting(form -> form.name())
                .containsExactlyInAnyOrder("Pastel", "Super Pastel");
        assertThat(genes.getFirst().forms())
                .allSatisfy(
                        form ->
                                assertThat(
                                                GenesInPlay.find(
                                                        Parents.LINES.catalogue().model(),
                                                        GenesInPlay.key(form)))
                                        .contains(form));
    }

    @Test
    void nothing_typed_into_a_form_is_taken_for_a_form_that_is_not_there() {
        var model = Parents.LINES.catalogue().model();
        assertThat(GenesInPlay.find(model, "")).isEmpty();
        assertThat(GenesInPlay.find(model, "pastel=Normal")).isEmpty();
        assertThat(GenesInPlay.find(model, "no-such=Pastel")).isEmpty();
        assertThat(GenesInPlay.find(model, "<b>=x")).isEmpty();
    }
}
