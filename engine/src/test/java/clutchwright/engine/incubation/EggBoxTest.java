package clutchwright.engine.incubation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.incubation.EggBox.Pile;
import clutchwright.engine.incubation.EmbryoHeat.Shape;
import clutchwright.engine.reference.Reference;
import clutchwright.engine.reference.Reference.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// What eggs' own heat does to their box. Expected values are those of the model in another
/// language, a script of its own, unless said.
class EggBoxTest {

    private static final Celsius SET = new Celsius(31.7);
    private static final Celsius SET_89_F = Celsius.ofFahrenheit(89);
    private static final EggBox LOGISTIC = EggBox.standard(Shape.LOGISTIC, new Conductance(1.4));
    private static final EggBox EXPONENTIAL =
            EggBox.standard(Shape.EXPONENTIAL, new Conductance(1.4));

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "heat transfer in series, a script of its own",
            locator = "wall of a plastic tub, and three sizes of it")
    void a_tubs_conductance_by_its_size() {
        assertThat(Conductance.perSquareMetre()).isCloseTo(3.4105, within(1e-4));
        assertThat(Conductance.ofTub(0.36, 0.24, 0.14).wattsPerKelvin())
                .isCloseTo(0.9879, within(1e-3));
        assertThat(Conductance.ofTub(0.43, 0.30, 0.16).wattsPerKelvin())
                .isCloseTo(1.4251, within(1e-3));
        assertThat(Conductance.ofTub(0.48, 0.36, 0.18).wattsPerKelvin())
                .isCloseTo(1.8785, within(1e-3));
        assertThat(Conductance.ofSteadyRise(2, 1.41).wattsPerKelvin())
                .isCloseTo(1.41844, within(1e-5));
        assertThat(Conductance.ofCooling(5680, 3998.84).wattsPerKelvin())
                .isCloseTo(1.4204, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({
        "1, 0.0310, 0.7919, 0.8274",
        "6, 0.1859, 1.2747, 1.3709",
        "10, 0.3098, 1.5157, 1.6549",
        "11, 0.3408, 1.5699, 1.7200",
        "15, 0.4647, 1.7725, 1.9676",
        "20, 0.6196, 2.0049, 2.2603"
    })
    @Reference(
            kind = Kind.DERIVED,
            source = "the model in another language, a script of its own",
            locator = "rise of 1 to 20 late eggs at 31.7 °C, without and with feedback")
    void the_rise_of_late_eggs(int eggs, double box, double plain, double fed) {
        var without = LOGISTIC.atEggTemperature(eggs, 1, SET, SET);
        assertThat(without.boxRiseKelvin()).isCloseTo(box, within(1e-4));
        assertThat(without.riseKelvin()).isCloseTo(plain, within(1e-4));
        assertThat(LOGISTIC.steady(eggs, 1, SET).riseKelvin()).isCloseTo(fed, within(1e-4));
    }

    /// Ten eggs, "a few °F above an incubator near 89 °F": common practice, no source.
    @ParameterizedTest
    @CsvSource({
        "20, 6, 89.1, 89.2",
        "30, 10, 89.5, 89.6",
        "40, 10, 90.6, 90.2",
        "50, 15, 92.2, 91.9",
        "57, 1, 90.5, 91.1",
        "57, 6, 91.5, 92.4",
        "57, 10, 92.0, 93.2",
        "57, 11, 92.1, 93.4",
        "57, 20, 93.0, 94.8"
    })
    @Reference(
            kind = Kind.DERIVED,
            source = "the model in another language, a script of its own",
            locator =
                    "egg temperature in °F by day and number in an incubator at 89 °F, both shapes")
    void eggs_by_day(int day, int eggs, double logistic, double exponential) {
        var tub = Conductance.ofTub(0.43, 0.30, 0.16);
        var development = Math.min(1, day * DevelopmentRate.standard().perDay(SET_89_F));
        assertThat(
                        EggBox.standard(Shape.LOGISTIC, tub)
                                .steady(eggs, development, SET_89_F)
                                .egg()
                                .fahrenheit())
                .isCloseTo(logistic, within(0.06));
        assertThat(
                        EggBox.standard(Shape.EXPONENTIAL, tub)
                                .steady(eggs, development, SET_89_F)
                                .egg()
                                .fahrenheit())
                .isCloseTo(exponential, within(0.06));
    }

    @ParameterizedTest
    @CsvSource({
        "1, 90.4, 89.9",
        "6, 89.5, 88.6",
        "10, 89.0, 87.9",
        "15, 88.5, 87.2",
        "20, 88.1, 86.6"
    })
    @Reference(
            kind = Kind.DERIVED,
            source = "the model in another language, a script of its own",
            locator = "highest set point in °F that keeps late eggs at 92 °F, both shapes")
    void the_highest_set_point(int eggs, double logistic, double exponential) {
        var limit = Celsius.ofFahrenheit(92);
        assertThat(LOGISTIC.highestSetPoint(eggs, 1, limit).fahrenheit())
                .isCloseTo(logistic, within(0.06));
        assertThat(EXPONENTIAL.highestSetPoint(eggs, 1, limit).fahrenheit())
                .isCloseTo(exponential, within(0.06));
        assertThat(
                        LOGISTIC.steady(eggs, 1, LOGISTIC.highestSetPoint(eggs, 1, limit))
                                .egg()
                                .degrees())
                .isCloseTo(limit.degrees(), within(1e-6));
    }

    @Test
    void more_eggs_later_in_a_tighter_box_are_warmer_and_nothing_jumps_at_ten() {
        for (var eggs = 1; eggs < 30; eggs++) {
            var now = LOGISTIC.steady(eggs, 1, SET).riseKelvin();
            assertThat(LOGISTIC.steady(eggs + 1, 1, SET).riseKelvin())
                    .isGreaterThan(now)
                    .isLessThan(now + 0.4);
        }
        assertThat(
                        LOGISTIC.steady(11, 1, SET).riseKelvin()
                                - LOGISTIC.steady(10, 1, SET).riseKelvin())
                .isBetween(0.05, 0.07);
        for (var percent = 0; percent < 100; percent++) {
            assertThat(LOGISTIC.steady(8, (percent + 1) / 100.0, SET).riseKelvin())
                    .isGreaterThan(LOGISTIC.steady(8, percent / 100.0, SET).riseKelvin());
        }
        var tight = EggBox.standard(Shape.LOGISTIC, new Conductance(0.6));
        assertThat(tight.steady(10, 1, SET).riseKelvin()).isCloseTo(2.16, within(0.01));
        var wet =
                new EggBox(
                        EmbryoHeat.standard(Shape.LOGISTIC),
                        new Conductance(1.4),
                        new Pile(12, 0.0095, 0.8),
                        85);
        assertThat(wet.steady(10, 1, SET).riseKelvin()).isCloseTo(0.96, within(0.01));
        var apart =
                new EggBox(
                        EmbryoHeat.standard(Shape.LOGISTIC),
                        new Conductance(1.4),
                        new Pile(6, 0.0095, 1),
                        85);
        assertThat(apart.steady(10, 1, SET).riseKelvin()).isCloseTo(1.14, within(0.01));
    }

    /// What one clutch taught holds for another in the same box: 0.20 K of box air with six eggs is
    /// 0.20 x 10/6 with ten, and the eggs' part grows by (10/6) to the power 0.2.
    @Test
    void what_was_measured_with_six_eggs_says_what_ten_will_do() {
        var six = LOGISTIC.atEggTemperature(6, 1, SET, SET);
        var ten = LOGISTIC.atEggTemperature(10, 1, SET, SET);
        assertThat(0.2 * ten.boxRiseKelvin() / six.boxRiseKelvin()).isCloseTo(0.3333, within(1e-4));
        assertThat(ten.eggRiseKelvin() / six.eggRiseKelvin()).isCloseTo(1.1076, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({
        "84, 28.8889",
        "86, 30",
        "88, 31.1111",
        "89, 31.6667",
        "90, 32.2222",
        "92, 33.3333",
        "95, 35"
    })
    void degrees_of_the_two_scales(double fahrenheit, double celsius) {
        assertThat(Celsius.ofFahrenheit(fahrenheit).degrees()).isCloseTo(celsius, within(1e-4));
        assertThat(new Celsius(celsius).fahrenheit()).isCloseTo(fahrenheit, within(1e-3));
    }

    /// A husbandry text says "65 days at 30 °C (90 °F)": it cannot be both.
    @Test
    void a_temperature_in_both_scales_must_be_one() {
        assertThatThrownBy(() -> Celsius.ofBoth(30, 90))
                .hasMessage("30.00 °C is 86.00 °F, and 90.00 °F is 32.22 °C");
        assertThatThrownBy(() -> Celsius.ofBoth(Double.NaN, 86)).hasMessageContaining("NaN");
        // Both rounded to whole degrees.
        assertThat(Celsius.ofBoth(30, 86)).isEqualTo(new Celsius(30));
        assertThat(Celsius.ofBoth(31, 88).degrees()).isEqualTo(31);
        assertThat(Celsius.ofBoth(32, 89).degrees()).isEqualTo(32);
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "vapour balance with IAPWS R7-97 in another language, a script of its own",
            locator = "half a change of air an hour, 20 litres, 32 °C saturated in 31.7 °C at 50 %")
    void renewed_air_carries_off_water_and_with_it_heat() {
        var exchange = new AirExchange(0.5, 20);
        var box = new AirExchange.Air(new Celsius(32), 1);
        var incubator = new AirExchange.Air(SET, 0.5);
        assertThat(exchange.gramsPerDay(box, incubator)).isCloseTo(4.12, within(0.005));
        assertThat(exchange.wattsOfVapour(box, incubator)).isCloseTo(0.1159, within(1e-4));
        // Without the water it would be nothing beside a tub's 1.4 W/K.
        assertThat(exchange.wattsPerKelvin()).isCloseTo(0.003, within(5e-4));

        assertThat(new AirExchange(0, 20).wattsOfVapour(box, incubator)).isZero();
        assertThat(exchange.wattsOfVapour(incubator, box)).isNegative();
        assertThatThrownBy(() -> new AirExchange(-1, 20)).hasMessageContaining("-1.0 changes");
        assertThatThrownBy(() -> new AirExchange(1, Double.NaN)).hasMessageContaining("NaN");
    }

    @Test
    @Reference(
            kind = Kind.FROM_MEMORY,
            source = "a text on poultry incubation, hen's egg 3.18 J/gK; water 4.18 J/gK",
            locator = "3.4 for a python's egg is taken between the two; we know of no measurement")
    void an_egg_holds_more_heat_than_a_hens_and_less_than_water() {
        var perGram = ThermalMass.of(LOGISTIC, 1, 2500).eggJoulesPerKelvin() / LOGISTIC.eggGrams();
        assertThat(perGram).isCloseTo(3.4, within(1e-9)).isBetween(3.18, 4.18);
    }

    @Test
    void a_box_without_live_eggs_is_as_warm_as_the_incubator() {
        var none = LOGISTIC.steady(0, 1, SET);
        assertThat(none.riseKelvin()).isZero();
        assertThat(none.egg()).isEqualTo(SET);
        assertThat(none.condensesAbove()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"0.3, 0.99176", "1.0, 0.97291", "2.0, 0.94685"})
    @Reference(
            kind = Kind.DERIVED,
            source = "heat transfer in series and saturation pressures, a script of its own",
            locator = "humidity above which the lid is wet, box air 0.3, 1 and 2 K above 31.7 °C")
    void the_lid_gets_wet(double boxRise, double humidity) {
        assertThat(new EggBox.Warmth(SET, 0, boxRise, 0).condensesAbove())
                .isCloseTo(humidity, within(1e-4));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Runge and Kutta's method in another language, a script of its own",
            locator = "ten eggs warming by themselves, time constants, and a power cut at 22 °C")
    void a_box_warms_up_and_cools_down() {
        var mass = new ThermalMass(2890, 2500, 0.359648, new Conductance(1.4));
        assertThat(mass.timeConstantsSeconds()[0] / 3600).isCloseTo(2.9228, within(1e-3));
        assertThat(mass.timeConstantsSeconds()[1] / 3600).isCloseTo(0.3788, within(1e-3));

        var cold = new ThermalMass.Excess(0, 0);
        var eggs = new double[] {0.4414, 0.9677, 1.3111, 1.4782};
        var boxes = new double[] {0.0598, 0.1807, 0.2618, 0.3013};
        var hours = new int[] {1, 3, 6, 12};
        for (var i = 0; i < hours.length; i++) {
            var now = mass.after(hours[i] * 3600.0, cold, 0.43);
            assertThat(now.eggKelvin()).isCloseTo(eggs[i], within(1e-4));
            assertThat(now.boxKelvin()).isCloseTo(boxes[i], within(1e-4));
        }
        assertThat(mass.limit(0.43).eggKelvin()).isCloseTo(1.50276, within(1e-5));

        var warm = new ThermalMass.Excess(10.9, 9.9);
        var cut = new double[] {30.654, 28.212, 25.137, 22.798};
        var after = new int[] {1, 2, 4, 8};
        for (var i = 0; i < after.length; i++) {
            assertThat(22 + mass.after(after[i] * 3600.0, warm, 0).eggKelvin())
                    .isCloseTo(cut[i], within(1e-3));
        }
        assertThat(ThermalMass.of(LOGISTIC, 10, 2500).eggJoulesPerKelvin())
                .isCloseTo(2890, within(1e-9));
        assertThat(ThermalMass.of(LOGISTIC, 10, 2500).eggToBoxWattsPerKelvin())
                .isCloseTo(0.359648, within(1e-5));
    }

    /// Two halves of a time are the whole: the law of an exponential of a matrix.
    @Test
    void an_hour_and_an_hour_are_two() {
        var mass = new ThermalMass(2890, 2500, 0.359648, new Conductance(1.4));
        var start = new ThermalMass.Excess(3, -2);
        var twice = mass.after(3600, mass.after(3600, start, 0.2), 0.2);
        var once = mass.after(7200, start, 0.2);
        assertThat(twice.eggKelvin()).isCloseTo(once.eggKelvin(), within(1e-12));
        assertThat(twice.boxKelvin()).isCloseTo(once.boxKelvin(), within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"1, 56.29", "6, 55.77", "10, 55.51", "20, 54.97"})
    @Reference(
            kind = Kind.DERIVED,
            source = "the model in another language, a script of its own",
            locator = "hatch day of 1 to 20 eggs that warm themselves, set at 89 °F")
    void eggs_that_warm_themselves_hatch_sooner(int eggs, double day) {
        var course = BoxCourse.of(LOGISTIC, eggs, SET_89_F);
        assertThat(course.hatchDay()).isCloseTo(day, within(0.02));
        assertThat(course.days().getFirst().development()).isZero();
        assertThat(course.days()).hasSize((int) Math.ceil(course.hatchDay()));
    }

    @Test
    void what_cannot_be_is_refused() {
        assertThatThrownBy(() -> new Conductance(0)).hasMessageContaining("0.0 W/K");
        assertThatThrownBy(() -> LOGISTIC.steady(-1, 0.5, SET)).hasMessageContaining("-1 eggs");
        var sealed = EggBox.standard(Shape.EXPONENTIAL, new Conductance(0.001));
        assertThatThrownBy(() -> sealed.steady(20, 1, SET)).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void eleven_eggs_make_two_boxes_as_even_as_can_be() {
        assertThat(ClutchSplit.atMost(11, 10).boxes()).containsExactly(6, 5);
        assertThat(ClutchSplit.atMost(10, 10).boxes()).containsExactly(10);
        assertThat(ClutchSplit.atMost(0, 10).boxes()).isEmpty();
        for (var eggs = 0; eggs <= 60; eggs++) {
            for (var most = 1; most <= 12; most++) {
                var split = ClutchSplit.atMost(eggs, most);
                assertThat(split.boxes().stream().mapToInt(Integer::intValue).sum())
                        .isEqualTo(eggs);
                assertThat(split.fullest()).isLessThanOrEqualTo(most);
                assertThat((split.boxes().size() - 1) * most).isLessThan(Math.max(eggs, 1));
                if (eggs > 0) {
                    assertThat(split.fullest() - split.boxes().getLast()).isBetween(0, 1);
                }
            }
        }
    }

    @Test
    void temperatures_are_judged() {
        assertThat(EggLimits.of(new Celsius(26.9))).isEqualTo(EggLimits.TOO_COLD);
        assertThat(EggLimits.of(new Celsius(29.5))).isEqualTo(EggLimits.COOL);
        assertThat(EggLimits.of(new Celsius(31.7))).isEqualTo(EggLimits.GOOD);
        assertThat(EggLimits.of(new Celsius(32.8))).isEqualTo(EggLimits.WARM);
        assertThat(EggLimits.of(new Celsius(33.4))).isEqualTo(EggLimits.TOO_WARM);
        assertThat(EggLimits.of(new Celsius(35))).isEqualTo(EggLimits.CRITICAL);
    }
}
