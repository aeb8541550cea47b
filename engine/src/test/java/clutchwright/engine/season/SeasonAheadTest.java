package clutchwright.engine.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.probability.Forecast;
import clutchwright.engine.reference.Reference;
import clutchwright.engine.reference.Reference.Kind;
import clutchwright.engine.season.EggBoxesInUse.Expected;
import clutchwright.engine.season.YearToYear.Tails;
import java.util.List;
import org.junit.jupiter.api.Test;

/// What lay days mean for the incubator, and what the priors say of two seasons.
class SeasonAheadTest {

    /// "Often within a week of last year, sometimes a month": common practice, no source.
    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "normal distribution, worked by a script of its own",
            locator = "lay dates, case D13: a female's two seasons as the priors have them")
    void two_seasons_are_often_within_a_week_and_seldom_a_month_apart() {
        var apart = YearToYear.of(LayPriors.STANDARD, Tails.NORMAL);
        assertThat(apart.scaleDays()).isCloseTo(12.165525, within(1e-5));
        assertThat(apart.medianDays()).isCloseTo(8.205522, within(1e-5));
        assertThat(apart.within(7)).isCloseTo(0.434977, within(1e-5));
        assertThat(apart.beyond(30)).isCloseTo(0.01366371, within(1e-7));
        assertThat(LayPriors.STANDARD.repeatability()).isCloseTo(0.894134, within(1e-6));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Student's distribution with four degrees of freedom, a script of its own",
            locator = "lay dates, case D14: heavier tails with the same median")
    void heavier_tails_put_a_month_at_one_in_nineteen() {
        var apart = YearToYear.of(LayPriors.STANDARD, Tails.STUDENT_4);
        assertThat(apart.scaleDays()).isCloseTo(11.0781, within(1e-4));
        assertThat(apart.within(7)).isCloseTo(0.43822, within(1e-5));
        assertThat(apart.beyond(30)).isCloseTo(0.053646, within(1e-6));
        assertThat(apart.within(apart.medianDays())).isCloseTo(0.5, within(1e-12));
        assertThatThrownBy(() -> new YearToYear(Tails.NORMAL, Double.NaN))
                .hasMessageContaining("NaN");
    }

    /// Percentage points of Student's distribution, as tabled.
    @Test
    @Reference(
            kind = Kind.FROM_MEMORY,
            source = "tables of Student's distribution, four degrees of freedom",
            locator = "upper 25, 5, 2.5 and 0.5 %: 0.741, 2.132, 2.776, 4.604")
    void the_tails_are_the_tables() {
        assertThat(Tails.STUDENT_4.upperQuartile()).isCloseTo(0.741, within(5e-4));
        assertThat(Tails.STUDENT_4.above(2.132)).isCloseTo(0.05, within(5e-5));
        assertThat(Tails.STUDENT_4.above(2.776)).isCloseTo(0.025, within(2e-5));
        assertThat(Tails.STUDENT_4.above(4.604)).isCloseTo(0.005, within(5e-6));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "sum of independent days, worked by a script of its own",
            locator = "lay dates, case D15: hatching after ovulation and shed, 57 days at 4.2 %")
    void a_clutch_that_is_not_laid_yet_hatches() {
        var hatched = new Expected(Forecast.of(110.875, 3.354102), 57, 57 * 0.042).hatched();
        assertThat(hatched.mean()).isCloseTo(167.875, within(2e-3));
        assertThat(hatched.sdDays()).isCloseTo(4.1208, within(2e-3));
        assertThat(hatched.quantile(0.05)).isCloseTo(161.097, within(2e-3));
        assertThat(hatched.quantile(0.95)).isCloseTo(174.653, within(2e-3));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "convolution of independent chances, worked by a script of its own",
            locator = "lay dates, case D16: clutches in the incubator on day 120, four females")
    void clutches_in_the_incubator_on_a_day() {
        var on =
                EggBoxesInUse.on(
                        120,
                        List.of(
                                expected(111, 3.5),
                                expected(118, 8),
                                expected(125, 8),
                                expected(60, 3)));
        assertThat(on.mean()).isCloseTo(2.077068, within(1e-5));
        assertThat(on.variance()).isCloseTo(0.610692, within(1e-5));
        var chances = List.of(0.001167, 0.231829, 0.490224, 0.242328, 0.034451);
        for (var clutches = 0; clutches < chances.size(); clutches++) {
            assertThat(on.chances().get(clutches)).isCloseTo(chances.get(clutches), within(1e-5));
        }
        assertThat(on.chances()).hasSize(5);
        // 0.001, then 0.233, 0.723, 0.966, 1 have no more than so many.
        assertThat(List.of(on.quantile(0.05), on.quantile(0.5), on.quantile(0.95)))
                .containsExactly(1, 2, 3);
        assertThat(EggBoxesInUse.on(120, List.of()).chances()).containsExactly(1.0);
    }

    private static Expected expected(double day, double sdDays) {
        return new Expected(Forecast.of(day, sdDays), 57, 2.4);
    }
}
