package clutchwright.engine.incubation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.incubation.Development.Reading;
import clutchwright.engine.reference.Reference;
import clutchwright.engine.reference.Reference.Kind;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// When eggs hatch, from the temperatures they felt.
class HatchModelTest {

    private static final DevelopmentRate RATE = DevelopmentRate.standard();
    private static final double SET_RATE = RATE.perDay(DevelopmentRate.REFERENCE);

    @Test
    @Reference(
            kind = Kind.PUBLISHED,
            source = "Shine (1997), Liasis fuscus, in the Reptile Development Database",
            locator =
                    "80.0 days at 27.05 °C and 67.97 days at 30.15 °C: a factor of 1.692 in ten degrees")
    void a_pythons_days_at_two_temperatures_give_the_factor_that_is_taken() {
        var factor = Math.pow(80.0 / 67.97, 10 / (30.15 - 27.05));
        assertThat(factor).isCloseTo(1.69161, within(1e-4));
        assertThat(DevelopmentRate.Q10).isCloseTo(factor, within(0.01));
    }

    @Test
    @Reference(
            kind = Kind.PUBLISHED,
            source = "Ellis and Chappell (1987) J Comp Physiol B 157:393",
            locator = "abstract: 58 to 70 days at 29.2 °C")
    void royal_pythons_hatch_when_they_did() {
        assertThat(RATE.days(new Celsius(29.2))).isBetween(58.0, 70.0);
        // At 89 °F 55 to 60 days: common practice, no source.
        assertThat(RATE.days(Celsius.ofFahrenheit(89))).isBetween(55.0, 60.0);
    }

    @ParameterizedTest
    @CsvSource({
        "27, 73.145",
        "28, 69.365",
        "29.2, 65.086",
        "30, 62.381",
        "31, 59.157",
        "31.7, 57.000",
        "32.2, 55.508",
        "33, 53.201"
    })
    @Reference(
            kind = Kind.DERIVED,
            source = "the model in another language, a script of its own",
            locator = "days of incubation at 27 to 33 °C")
    void days_by_temperature(double celsius, double days) {
        assertThat(RATE.days(new Celsius(celsius))).isCloseTo(days, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({
        "29.2, 64.492",
        "30, 61.867",
        "31, 58.866",
        "31.7, 57.000",
        "32.2, 55.823",
        "33, 54.313",
        "34, 53.432"
    })
    @Reference(
            kind = Kind.DERIVED,
            source = "Schoolfield, Sharpe and Magnuson's rate (1981), a script of its own",
            locator = "days of incubation at 29.2 to 34 °C")
    void days_where_development_flattens(double celsius, double days) {
        assertThat(new DevelopmentRate.Flattening(57).days(new Celsius(celsius)))
                .isCloseTo(days, within(0.001));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Schoolfield, Sharpe and Magnuson's rate (1981), a script of its own",
            locator = "effective factor in ten degrees, 29.2 to 31.7 and 31.7 to 33 °C")
    void where_development_flattens_a_degree_more_is_worth_less() {
        assertThat(factorInTenDegrees(29.2, 31.7)).isCloseTo(1.6388, within(5e-4));
        assertThat(factorInTenDegrees(31.7, 33)).isCloseTo(1.4499, within(5e-4));
    }

    private static double factorInTenDegrees(double cooler, double warmer) {
        var rate = new DevelopmentRate.Flattening(57);
        return Math.pow(
                rate.days(new Celsius(cooler)) / rate.days(new Celsius(warmer)),
                10 / (warmer - cooler));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "tangent of an exponential, a script of its own",
            locator = "degree-days that touch 57 days and a factor of 1.7 at 31.7 °C")
    void degree_days_touch_the_curve_at_the_set_point() {
        var curve = new DevelopmentRate.Exponential(57, 1.7);
        var line = DevelopmentRate.DegreeDays.touching(curve, DevelopmentRate.REFERENCE);
        assertThat(line.base().degrees()).isCloseTo(12.8544, within(1e-3));
        assertThat(line.degreeDays()).isCloseTo(1074.20, within(0.02));

        assertThat(line.days(DevelopmentRate.REFERENCE)).isCloseTo(57, within(1e-9));
        for (var kelvin : new double[] {-2, -1, 1, 2}) {
            var egg = DevelopmentRate.REFERENCE.plus(kelvin);
            // A line that touches a curve which bends upwards lies below it: too many days.
            assertThat(line.days(egg) - RATE.days(egg)).isBetween(0.0, 0.4);
        }
        assertThat(line.perDay(new Celsius(10))).isZero();
        assertThatThrownBy(
                        () ->
                                DevelopmentRate.DegreeDays.touching(
                                        new DevelopmentRate.Exponential(57, 1), new Celsius(31)))
                .hasMessageContaining("Q10 is 1.0");
    }

    /// Temperatures of a real place, hour by hour, made as small as an incubator's: summing up must
    /// bear steps of any size and shape.
    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "hourly climate normals of the US government, Seattle (vega-datasets 3.2.1)",
            locator = "T = 31 + 0.15 (t - mean): day of hatching, by trapezoids and by rectangles")
    void a_real_course_of_temperatures() throws IOException {
        var felt = climate();
        assertThat(felt).hasSize(8759);
        assertThat(hatchDay(felt)).isCloseTo(61.720728, within(1e-5));

        // As a sensor that tells its reading until the next one.
        var held = new ArrayList<Reading>();
        for (var i = 0; i < felt.size(); i++) {
            if (i > 0) {
                held.add(new Reading(felt.get(i).day(), felt.get(i - 1).celsius()));
            }
            held.add(felt.get(i));
        }
        assertThat(hatchDay(held)).isCloseTo(61.721411, within(1e-5));
    }

    private static double hatchDay(List<Reading> felt) {
        return HatchModel.STANDARD.after(Development.of(felt, RATE), SET_RATE).quantile(0.5);
    }

    private static List<Reading> climate() throws IOException {
        var rows = new ArrayList<String[]>();
        try (var in = HatchModelTest.class.getResourceAsStream("hourly-normals.csv")) {
            assertThat(in).isNotNull();
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .forEach(line -> rows.add(line.split(",", -1)));
        }
        var start = LocalDateTime.parse(rows.getFirst()[0]);
        var mean =
                rows.stream()
                        .mapToDouble(row -> Double.parseDouble(row[2]))
                        .average()
                        .orElseThrow();
        return rows.stream()
                .map(
                        row ->
                                new Reading(
                                        Duration.between(start, LocalDateTime.parse(row[0]))
                                                        .toMinutes()
                                                / 1440.0,
                                        new Celsius(
                                                31 + 0.15 * (Double.parseDouble(row[2]) - mean))))
                .toList();
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "the model in another language, a script of its own",
            locator =
                    "20 days at 31.0, 20 at 31.7, 10 at 32.2 °C, then 31.7: development, quantiles, chances")
    void a_course_of_temperatures() {
        var felt = steps(31.0, 20, 31.7, 20, 32.2, 10);
        assertThat(felt.reached()).isCloseTo(0.86911602, within(1e-7));

        var forecast = HatchModel.STANDARD.after(felt, SET_RATE);
        assertThat(forecast.quantile(0.5)).isCloseTo(57.4604, within(1e-4));
        assertThat(forecast.quantile(0.05)).isCloseTo(53.6555, within(1e-3));
        assertThat(forecast.quantile(0.25)).isCloseTo(55.8683, within(1e-3));
        assertThat(forecast.quantile(0.75)).isCloseTo(59.0982, within(1e-3));
        assertThat(forecast.quantile(0.95)).isCloseTo(61.5374, within(1e-3));
        assertThat(forecast.by(50)).isCloseTo(0.000419, within(1e-6));
        assertThat(forecast.by(55)).isCloseTo(0.146728, within(1e-6));
        assertThat(forecast.by(58)).isCloseTo(0.588754, within(1e-6));
        assertThat(forecast.by(60)).isCloseTo(0.850335, within(1e-6));
        // A log-normal's mean is above its median by half its variance.
        assertThat(forecast.mean())
                .isCloseTo(50 + (Math.exp(0.042 * 0.042 / 2) - felt.reached()) * 57, within(1e-3));

        var none = forecast.notBy(58);
        assertThat(none.quantile(0.5)).isCloseTo(59.4619, within(1e-3));
        assertThat(none.by(60)).isCloseTo(0.636069, within(1e-6));
        assertThat(none.by(58)).isZero();
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "conjugate normal model, a script of its own",
            locator = "four past clutches of 54.9 to 58.1 days as if at 31.7 °C")
    void a_house_learns_its_own_days() {
        var house = HatchModel.learn(List.of(55.2, 56.8, 54.9, 58.1));
        assertThat(house.logMean()).isCloseTo(4.03065980, within(1e-7));
        assertThat(house.logSd()).isCloseTo(0.01436739, within(1e-7));
        assertThat(house.days()).isCloseTo(56.298, within(1e-3));
        assertThat(house.predictiveLogSd()).isCloseTo(0.03326292, within(1e-7));
        assertThat(HatchModel.learn(List.of()).days()).isCloseTo(57, within(1e-9));
    }

    @Test
    void a_sensor_that_reads_low_hatches_them_early() {
        assertThat(RATE.days(new Celsius(31.7)) - RATE.days(new Celsius(32)))
                .isCloseTo(0.9002, within(1e-4));
    }

    @Test
    void at_a_constant_temperature_the_steps_do_not_matter() {
        for (var step : new double[] {0.01, 0.1, 0.25}) {
            var readings = new ArrayList<Reading>();
            for (var day = 0.0; day <= 30; day += step) {
                readings.add(new Reading(day, new Celsius(31)));
            }
            var felt = Development.of(readings, RATE);
            assertThat(felt.gaps()).isEmpty();
            assertThat(HatchModel.STANDARD.after(felt, RATE.perDay(new Celsius(31))).quantile(0.5))
                    .isCloseTo(59.157, within(1e-3));
        }
        assertThat(HatchModel.STANDARD.constant(new Celsius(31)).quantile(0.5))
                .isCloseTo(RATE.days(new Celsius(31)), within(1e-9));
    }

    @Test
    void what_was_not_read_or_is_out_of_the_known_widens_the_forecast() {
        var whole = Development.of(hourly(20, 31.7), RATE);
        var gap = new ArrayList<>(hourly(20, 31.7));
        gap.removeIf(reading -> reading.day() > 5 && reading.day() < 9);
        var torn = Development.of(gap, RATE);
        assertThat(torn.gaps()).hasSize(1);
        assertThat(torn.reached()).isCloseTo(whole.reached(), within(1e-9));
        assertThat(width(torn)).isGreaterThan(width(whole));

        var hot = Development.of(hourly(20, 34), RATE);
        assertThat(hot.shareOutside()).isCloseTo(1, within(1e-12));
        assertThat(whole.shareOutside()).isZero();
        assertThat(hot.uncertainty()).isGreaterThan(0.05);
    }

    @Test
    void a_log_that_goes_past_hatching_is_read_back() {
        var felt = Development.of(hourly(70, 31.7), RATE);
        assertThat(HatchModel.STANDARD.after(felt, SET_RATE).quantile(0.5))
                .isCloseTo(57, within(1e-6));
        assertThat(HatchModel.STANDARD.after(felt, SET_RATE).by(57)).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void days_that_run_backwards_are_refused() {
        assertThatThrownBy(
                        () ->
                                Development.of(
                                        List.of(
                                                new Reading(2, new Celsius(31)),
                                                new Reading(1, new Celsius(31))),
                                        RATE))
                .hasMessageContaining("day 1.0 after day 2.0");
        assertThatThrownBy(() -> Development.of(List.of(), RATE))
                .hasMessageContaining("no reading");
    }

    private static double width(Development felt) {
        var forecast = HatchModel.STANDARD.after(felt, SET_RATE);
        return forecast.quantile(0.95) - forecast.quantile(0.05);
    }

    private static List<Reading> hourly(int days, double celsius) {
        var readings = new ArrayList<Reading>();
        for (var hour = 0; hour <= days * 24; hour++) {
            readings.add(new Reading(hour / 24.0, new Celsius(celsius)));
        }
        return readings;
    }

    /// Temperatures that jump at once, read twice there.
    private static Development steps(double... celsiusAndDays) {
        var readings = new ArrayList<Reading>();
        var day = 0.0;
        for (var i = 0; i < celsiusAndDays.length; i += 2) {
            var celsius = new Celsius(celsiusAndDays[i]);
            for (var hour = 0; hour <= celsiusAndDays[i + 1] * 24; hour++) {
                readings.add(new Reading(day + hour / 24.0, celsius));
            }
            day += celsiusAndDays[i + 1];
        }
        return Development.of(readings, RATE);
    }
}
