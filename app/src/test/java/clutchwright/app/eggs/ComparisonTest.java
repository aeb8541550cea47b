package clutchwright.app.eggs;

import static clutchwright.app.eggs.Parents.inDoubt;
import static clutchwright.app.eggs.Parents.look;
import static clutchwright.app.eggs.Parents.pair;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.probability.Fraction;
import java.util.LinkedHashMap;
import java.util.SequencedMap;
import java.util.Set;
import org.junit.jupiter.api.Test;

/// Predicted against found. Chances of clutches are the multinomial law over Mendel's shares.
class ComparisonTest {

    private static final Fraction PLAIN = Fraction.of(3, 4);
    private static final Fraction VISUAL = Fraction.of(1, 4);

    @Test
    void one_of_each_of_two_is_twice_the_product_of_the_shares() {
        var compared =
                Comparison.of(pair("het Clown", "het Clown"), found("Clown", 1, "Normal", 1));
        assertThat(compared.chance()).contains(Fraction.of(2, 1).times(PLAIN).times(VISUAL));
    }

    @Test
    void all_clutches_that_are_no_likelier_are_summed() {
        var hets = pair("het Clown", "het Clown");
        var two = VISUAL.times(VISUAL);
        assertThat(Comparison.of(hets, found("Clown", 2)).asUnlikely()).contains(two);
        assertThat(Comparison.of(hets, found("Clown", 1, "Normal", 1)).asUnlikely())
                .contains(two.plus(Fraction.of(2, 1).times(PLAIN).times(VISUAL)));
        assertThat(Comparison.of(hets, found("Normal", 2)).asUnlikely()).contains(Fraction.WHOLE);
    }

    @Test
    void the_table_says_how_many_were_to_be_expected_and_leaves_nothing_out() {
        var compared =
                Comparison.of(pair("het Clown", "het Clown"), found("Clown", 2, "Normal", 4));
        assertThat(compared.looked()).isEqualTo(6);
        assertThat(compared.rows()).extracting(Comparison.Row::expected).containsExactly(4.5, 1.5);
        assertThat(compared.rows()).extracting(Comparison.Row::found).containsExactly(4, 2);
        assertThat(compared.rest()).isEqualTo(Fraction.NONE);
    }

    @Test
    void what_cannot_be_has_a_row_of_its_own_and_makes_the_clutch_impossible() {
        var compared = Comparison.of(pair("het Clown", "Normal"), found("Clown", 1, "Normal", 2));
        assertThat(compared.rows()).hasSize(2);
        assertThat(compared.rows().getLast().chance()).isEqualTo(Fraction.NONE);
        assertThat(compared.chance()).contains(Fraction.NONE);
    }

    /// If the sire is one of two, half of the all-plain clutches come of either: 1/2 (3/4)^2 + 1/2.
    @Test
    void the_clutch_is_averaged_over_the_sires_not_each_egg() {
        var compared =
                Comparison.of(inDoubt("het Clown", "het Clown", "Normal"), found("Normal", 2));
        assertThat(compared.chance())
                .contains(Fraction.HALF.times(PLAIN).times(PLAIN).plus(Fraction.HALF));
    }

    @Test
    void where_very_many_clutches_can_come_none_is_called_as_unlikely() {
        var all = "Pastel Mojave Pinstripe Enchi Fire Leopard";
        var compared = Comparison.of(pair(all, "Normal"), found("Normal", 1, all, 1));
        assertThat(compared.chance()).isPresent();
        assertThat(compared.asUnlikely()).isEmpty();
        assertThat(compared.rest()).isNotEqualTo(Fraction.NONE);
    }

    @Test
    void of_nothing_seen_nothing_is_said() {
        var compared = Comparison.of(pair("Pastel", "Normal"), new LinkedHashMap<>());
        assertThat(compared.looked()).isZero();
        assertThat(compared.chance()).isEmpty();
    }

    private static SequencedMap<Set<Phenotype>, Integer> found(Object... linesAndCounts) {
        var counts = new LinkedHashMap<Set<Phenotype>, Integer>();
        for (var i = 0; i < linesAndCounts.length; i += 2) {
            counts.put(look((String) linesAndCounts[i]), (Integer) linesAndCounts[i + 1]);
        }
        return counts;
    }
}
