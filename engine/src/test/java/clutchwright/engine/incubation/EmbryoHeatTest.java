package clutchwright.engine.incubation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.incubation.EmbryoHeat.Shape;
import clutchwright.engine.reference.Reference;
import clutchwright.engine.reference.Reference.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/// The heat of an egg by its development.
class EmbryoHeatTest {

    private static final Celsius SET = new Celsius(31.7);
    private static final EmbryoHeat LOGISTIC = EmbryoHeat.standard(Shape.LOGISTIC);
    private static final EmbryoHeat EXPONENTIAL = EmbryoHeat.standard(Shape.EXPONENTIAL);

    @Test
    @Reference(
            kind = Kind.PUBLISHED,
            source =
                    "Ellis and Chappell (1987) J Comp Physiol B 157:393, 3.6 litres of oxygen an egg",
            locator = "abstract; 20 J/mL from memory")
    void an_egg_gives_off_the_energy_of_its_oxygen() {
        assertThat(EmbryoHeat.JOULES_PER_GRAM * 85).isCloseTo(3600 * 20.0, within(1e-9));
    }

    @Test
    void the_shapes_means_are_their_integrals() {
        assertThat(Shape.LOGISTIC.mean()).isCloseTo(0.323884, within(1e-6));
        assertThat(Shape.EXPONENTIAL.mean()).isCloseTo(0.245421, within(1e-6));
    }

    /// Summed over an incubation at any temperature, by Simpson's rule.
    @ParameterizedTest
    @EnumSource
    void all_energy_is_given_off_whatever_the_temperature(Shape shape) {
        var heat = EmbryoHeat.standard(shape);
        for (var celsius : new double[] {28, 31.7, 33}) {
            var at = new Celsius(celsius);
            var seconds = heat.rate().days(at) * 86_400;
            var steps = 2000;
            var sum = 0.0;
            for (var step = 0; step <= steps; step++) {
                var weight = step == 0 || step == steps ? 1 : step % 2 == 0 ? 2 : 4;
                sum += weight * heat.watts((double) step / steps, at, 85);
            }
            assertThat(sum * seconds / steps / 3).isCloseTo(72_000, within(0.01));
        }
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "the model in another language, a script of its own",
            locator = "mean heat of an egg at 31.7 and 29.2 °C")
    void mean_heat() {
        assertThat(72_000 * DevelopmentRate.standard().perDay(SET) / 86.4)
                .isCloseTo(14.620, within(0.001));
        assertThat(72_000 * DevelopmentRate.standard().perDay(new Celsius(29.2)) / 86.4)
                .isCloseTo(12.804, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({
        "10, 0.289, 2.201",
        "20, 1.619, 4.440",
        "30, 7.989, 8.957",
        "40, 25.015, 18.069",
        "50, 39.624, 36.450",
        "57, 43.371, 59.571"
    })
    @Reference(
            kind = Kind.DERIVED,
            source = "the model in another language, a script of its own",
            locator = "milliwatts of an 85 g egg at 31.7 °C by day, both shapes")
    void heat_by_day(int day, double logistic, double exponential) {
        assertThat(1000 * LOGISTIC.watts(day / 57.0, SET, 85)).isCloseTo(logistic, within(0.002));
        assertThat(1000 * EXPONENTIAL.watts(day / 57.0, SET, 85))
                .isCloseTo(exponential, within(0.002));
    }

    /// 110 to 130 mL of oxygen a kilogram and hour over the last days, at 33 °C and more.
    @Test
    @Reference(
            kind = Kind.PUBLISHED,
            source = "Van Mierop and Barnard (1978) Copeia 1978:615, Burmese python",
            locator = "abstract: 110 to 130 mL/kg/h, between the two shapes")
    void the_two_shapes_hold_what_was_measured_between_them() {
        var warm = new Celsius(33);
        var least = 110 * 0.085 * 20 / 3600;
        var most = 130 * 0.085 * 20 / 3600;
        assertThat(LOGISTIC.watts(1, warm, 85)).isLessThan(least).isCloseTo(0.04647, within(1e-5));
        assertThat(EXPONENTIAL.watts(1, warm, 85))
                .isGreaterThan(most)
                .isCloseTo(0.06383, within(1e-5));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "gas balance, a script of its own",
            locator = "ten late eggs: oxygen an hour, a sealed box of 20 litres, changes of air")
    void ten_late_eggs_breathe() {
        var watts = 10 * LOGISTIC.watts(1, SET, 85);
        assertThat(Breath.millilitresPerHour(watts)).isCloseTo(78.07, within(0.01));
        assertThat(Breath.sealedHours(watts, 20, 0.19)).isCloseTo(4.996, within(0.005));
        assertThat(Breath.changesPerHour(watts, 20, 0.19)).isCloseTo(0.2002, within(2e-4));
        assertThat(Breath.changesPerHour(watts, 20, 0.20)).isCloseTo(0.4109, within(4e-4));
    }

    @Test
    void what_cannot_be_is_refused() {
        assertThatThrownBy(() -> LOGISTIC.watts(1.1, SET, 85)).hasMessageContaining("1.1");
        assertThatThrownBy(() -> LOGISTIC.watts(Double.NaN, SET, 85)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> LOGISTIC.watts(0.5, SET, 0)).hasMessageContaining("0.0 g");
    }
}
