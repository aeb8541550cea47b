package clutchwright.app.eggs;

import static clutchwright.app.eggs.Parents.look;
import static clutchwright.app.eggs.Parents.pair;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Fraction;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/// What a hatchling's looks say about the parents on record.
class JudgementTest {

    @Test
    void one_in_four_is_usual() {
        assertThat(judge("het Clown", "het Clown", "Clown")).isInstanceOf(Judgement.Usual.class);
    }

    @Test
    void a_recessive_without_a_second_carrier_is_impossible_as_recorded() {
        assertThat(judge("het Clown", "Normal", "Clown")).isInstanceOf(Judgement.Impossible.class);
    }

    @Test
    void a_form_that_neither_parent_has_is_impossible() {
        assertThat(judge("Pastel", "Normal", "Mojave")).isInstanceOf(Judgement.Impossible.class);
    }

    /// Four recessives at once: 1/4 to the fourth power, and nothing is as unlikely.
    @Test
    void four_recessives_at_once_are_rare_and_say_how_rare() {
        var hets = "het Clown het Piebald het Ultramel het Lavender Albino";
        var judged = judge(hets, hets, "Clown Piebald Ultramel Lavender Albino");
        assertThat(judged).isInstanceOf(Judgement.Rare.class);
        assertThat(((Judgement.Rare) judged).asUnlikely()).isEqualTo(Fraction.of(1, 256));
    }

    /// Ten visible genes make every group unlikely: none of them is a surprise for that alone.
    @Test
    void an_unlikely_group_among_many_as_unlikely_is_no_surprise() {
        var all = "Pastel Mojave Pinstripe Enchi Fire Leopard";
        assertThat(judge(all, "Normal", all).isSurprising()).isFalse();
    }

    @Test
    void a_daughter_of_a_male_maker_that_shows_his_gene_is_sexed_again() {
        var pair = pair("Normal", "Banana male maker");
        assertThat(Judgement.of(pair, look("Banana"), Optional.of(Sex.FEMALE)))
                .isInstanceOf(Judgement.SeldomOfSex.class);
        assertThat(Judgement.of(pair, look("Banana"), Optional.of(Sex.MALE)).isSurprising())
                .isFalse();
    }

    private static Judgement judge(String dam, String sire, String shows) {
        return Judgement.of(pair(dam, sire), look(shows), Optional.empty());
    }
}
