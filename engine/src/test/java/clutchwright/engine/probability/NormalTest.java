package clutchwright.engine.probability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/// Values of the printed tables of the normal distribution.
class NormalTest {

    @Test
    void quantiles_of_the_tables() {
        assertThat(Normal.quantile(0.975)).isCloseTo(1.959963984540054, within(1e-12));
        assertThat(Normal.quantile(0.95)).isCloseTo(1.6448536269514722, within(1e-12));
        assertThat(Normal.quantile(0.75)).isCloseTo(0.6744897501960817, within(1e-12));
        assertThat(Normal.quantile(0.5)).isCloseTo(0, within(1e-12));
        assertThat(Normal.quantile(1e-10)).isCloseTo(-6.361340902404056, within(1e-9));
    }

    @Test
    void tails_of_the_tables() {
        assertThat(Normal.above(1)).isCloseTo(0.15865525393145707, within(1e-15));
        assertThat(Normal.above(3)).isCloseTo(0.0013498980316300933, within(1e-15));
        assertThat(Normal.above(6) / 9.865876450376946e-10).isCloseTo(1, within(1e-11));
        assertThat(Normal.below(-2)).isCloseTo(0.02275013194817921, within(1e-15));
        assertThat(Normal.above(Double.NEGATIVE_INFINITY)).isEqualTo(1);
        assertThat(Normal.above(Double.POSITIVE_INFINITY)).isZero();
    }

    @Test
    void series_and_fraction_meet() {
        assertThat(Normal.above(Math.nextUp(4.0)) / Normal.above(4.0)).isCloseTo(1, within(1e-9));
    }

    @Test
    void a_chance_of_one_has_no_quantile() {
        assertThatThrownBy(() -> Normal.quantile(1)).hasMessageContaining("1.0");
        assertThatThrownBy(() -> Normal.quantile(Double.NaN)).hasMessageContaining("NaN");
    }
}
