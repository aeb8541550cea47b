package clutchwright.engine.incubation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.reference.Reference;
import clutchwright.engine.reference.Reference.Kind;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Water in air, against the standard's own values and the tables of others.
class MoistureTest {

    private static double pascals(double celsius) {
        return Moisture.saturationPascals(new Celsius(celsius));
    }

    @Test
    @Reference(
            kind = Kind.PUBLISHED,
            source = "IAPWS R7-97(2012), Industrial Formulation 1997",
            locator = "Table 35: saturation pressure at 300, 500 and 600 K")
    void saturation_is_the_standards() {
        assertThat(pascals(26.85) / 1e6).isCloseTo(3.53658941e-3, Percentage.withPercentage(1e-6));
        assertThat(pascals(226.85) / 1e6).isCloseTo(2.63889776, Percentage.withPercentage(1e-6));
        assertThat(pascals(326.85) / 1e6).isCloseTo(12.3443146, Percentage.withPercentage(1e-6));
    }

    @Test
    @Reference(
            kind = Kind.FROM_MEMORY,
            source = "IAPWS R7-97(2012), Industrial Formulation 1997",
            locator = "Table 36: saturation temperature at 0.1, 1 and 10 MPa")
    void its_inverse_is_the_standards() {
        assertThat(Moisture.dewPointOf(0.1e6).kelvin()).isCloseTo(372.755919, within(1e-6));
        assertThat(Moisture.dewPointOf(1e6).kelvin()).isCloseTo(453.035632, within(1e-6));
        assertThat(Moisture.dewPointOf(10e6).kelvin()).isCloseTo(584.149488, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"5, 872.6", "25, 3169.7", "50, 12351.3"})
    @Reference(
            kind = Kind.PUBLISHED,
            source = "ASHRAE Handbook, Fundamentals 2017, chapter 1",
            locator = "Table 3: saturation pressure at 5, 25 and 50 °C")
    void saturation_is_the_handbooks(double celsius, double pascals) {
        assertThat(pascals(celsius)).isCloseTo(pascals, Percentage.withPercentage(0.03));
    }

    /// The other formula of the handbook, by another program: they differ by 2 in 10,000.
    @ParameterizedTest
    @CsvSource({"20, 2338.804", "30, 4246.030", "31.7, 4678.393", "35, 5627.819", "40, 7383.460"})
    @Reference(
            kind = Kind.PROGRAM,
            source = "psychrolib 1.1.1 (npm), Hyland and Wexler's formula",
            locator = "saturation pressure over water at 20 to 40 °C")
    void saturation_is_another_formulas_within_two_in_ten_thousand(double celsius, double pascals) {
        assertThat(pascals(celsius)).isCloseTo(pascals, Percentage.withPercentage(0.02));
    }

    @ParameterizedTest
    @CsvSource({"20, 2339.215", "30, 4246.688", "31.7, 4679.098", "35, 5628.620", "40, 7384.427"})
    @Reference(
            kind = Kind.DERIVED,
            source = "IAPWS R7-97 in another language, a script of its own",
            locator = "saturation pressure at 20 to 40 °C")
    void saturation_in_an_egg_room(double celsius, double pascals) {
        assertThat(pascals(celsius)).isCloseTo(pascals, Percentage.withPercentage(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"0, 611.200", "20, 2332.596", "31.7, 4665.079", "40, 7367.458"})
    @Reference(
            kind = Kind.FROM_MEMORY,
            source = "Magnus' formula with the coefficients of the WMO's guide",
            locator = "saturation pressure at 0 to 40 °C, within 0.31 %")
    void saturation_is_near_the_weather_offices(double celsius, double pascals) {
        assertThat(pascals(celsius)).isCloseTo(pascals, Percentage.withPercentage(0.31));
    }

    @ParameterizedTest
    @CsvSource({
        "20, 0.50, 9.2724",
        "25, 0.60, 16.7011",
        "30, 0.50, 18.4466",
        "31.7, 0.50, 20.0027",
        "31.7, 0.80, 27.8200",
        "31.7, 0.85, 28.8630",
        "31.7, 0.90, 29.8539",
        "31.7, 0.95, 30.7981",
        "31.7, 0.98, 31.3440",
        "31.7, 1.00, 31.7000",
        "40, 0.50, 27.5852"
    })
    @Reference(
            kind = Kind.PROGRAM,
            source = "psychrolib 1.1.1 (npm)",
            locator = "dew points from 20 to 40 °C")
    void dew_points(double celsius, double humidity, double dewPoint) {
        assertThat(Moisture.dewPoint(new Celsius(celsius), humidity).degrees())
                .isCloseTo(dewPoint, within(0.001));
    }

    @Test
    void air_at_its_dew_point_is_saturated() {
        for (var celsius = 0.5; celsius < 60; celsius += 0.5) {
            assertThat(Moisture.dewPointOf(pascals(celsius)).degrees())
                    .isCloseTo(celsius, within(1e-6));
        }
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "ideal gas on IAPWS R7-97, a script of its own",
            locator = "water in a cubic metre of saturated air; ratio of water to dry air")
    void how_much_water_air_holds() {
        assertThat(Moisture.gramsPerCubicMetre(new Celsius(31.7), 1))
                .isCloseTo(33.257, within(0.005));
        assertThat(Moisture.gramsPerCubicMetre(new Celsius(32), 1))
                .isCloseTo(33.793, within(0.005));
        assertThat(Moisture.humidityRatio(new Celsius(31.7), 0.95, 101_325))
                .isCloseTo(0.028532, within(2e-5));
    }

    @ParameterizedTest
    @CsvSource({"0.5, 0.9720", "1, 0.9447", "2, 0.8921", "5, 0.7492", "5.7, 0.7189"})
    @Reference(
            kind = Kind.DERIVED,
            source = "ratio of saturation pressures, a script of its own",
            locator = "humidity above which a surface below 31.7 °C gets wet; eggs of 26 °C")
    void when_a_colder_surface_gets_wet(double kelvinBelow, double humidity) {
        var air = new Celsius(31.7);
        assertThat(Moisture.wetsAbove(air.plus(-kelvinBelow), air))
                .isCloseTo(humidity, within(2e-4));
    }

    @Test
    void evaporation_takes_heat() {
        // 1 g a day at 2.43 MJ/kg.
        assertThat(Moisture.wattsOfEvaporation(1)).isCloseTo(0.02812, within(5e-5));
    }

    @Test
    void what_is_no_humidity_is_refused() {
        var air = new Celsius(31.7);
        for (var wrong : new double[] {0, -0.1, 1.01, Double.NaN}) {
            assertThatThrownBy(() -> Moisture.dewPoint(air, wrong))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining(String.valueOf(wrong));
        }
        assertThatThrownBy(() -> new Celsius(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Moisture.saturationPascals(new Celsius(-5)))
                .hasMessageContaining("-5");
    }
}
