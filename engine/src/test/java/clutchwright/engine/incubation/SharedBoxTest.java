package clutchwright.engine.incubation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.incubation.EmbryoHeat.Shape;
import clutchwright.engine.incubation.SharedBox.Lot;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/// Two clutches of different age in one box, and one set point for many such boxes.
class SharedBoxTest {

    private static final Celsius SET = new Celsius(31.7);

    @Test
    void one_clutch_alone_is_an_egg_box() {
        var shared = box(Shape.LOGISTIC, 1.4251, new Lot(10, 0.9, 85)).steady(SET);

        assertThat(shared.lots()).hasSize(1);
        assertThat(shared.warmestEgg().degrees())
                .isEqualTo(
                        EggBox.standard(Shape.LOGISTIC, new Conductance(1.4251))
                                .steady(10, 0.9, SET)
                                .egg()
                                .degrees(),
                        within(1e-9));
    }

    @Test
    void eggs_of_the_first_days_are_warmed_by_late_ones_beside_them_and_give_them_nothing() {
        var late = new Lot(8, 0.98, 85);
        var fresh = new Lot(6, 0, 85);
        var together = box(Shape.LOGISTIC, 1.4, late, fresh).steady(SET);
        var alone = box(Shape.LOGISTIC, 1.4, late).steady(SET);
        var without = box(Shape.LOGISTIC, 1.4, fresh).steady(SET);

        assertThat(together.lots().get(0).egg().degrees())
                .isEqualTo(alone.warmestEgg().degrees(), within(0.02));
        assertThat(together.lots().get(1).egg().degrees())
                .isGreaterThan(without.warmestEgg().degrees() + 0.2)
                // Of the box's air, not of the others' own warmth.
                .isLessThan(together.lots().get(0).egg().degrees());
    }

    /// The first law: what leaves the box is what all eggs give off.
    @Test
    void the_heat_that_leaves_is_the_heat_that_all_eggs_give_off() {
        var random = new Random(27);
        for (int i = 0; i < 200; i++) {
            var lots =
                    IntStream.rangeClosed(1, 1 + random.nextInt(3))
                            .mapToObj(
                                    _ ->
                                            new Lot(
                                                    random.nextInt(8),
                                                    random.nextDouble(),
                                                    70 + random.nextInt(30)))
                            .toList();
            var wattsPerKelvin = 1 + random.nextDouble();
            var box = box(Shape.EXPONENTIAL, wattsPerKelvin, lots.toArray(Lot[]::new));
            var warmth = box.steady(SET);
            var given = 0.0;
            for (int lot = 0; lot < lots.size(); lot++) {
                var of = lots.get(lot);
                given +=
                        of.eggs()
                                * box.heat()
                                        .watts(
                                                of.development(),
                                                warmth.lots().get(lot).egg(),
                                                of.eggGrams());
            }
            assertThat(wattsPerKelvin * warmth.lots().getFirst().boxRiseKelvin())
                    .isEqualTo(given, within(1e-9));
        }
    }

    @Test
    void a_box_that_holds_its_heat_too_well_is_refused() {
        var tight = box(Shape.EXPONENTIAL, 0.05, new Lot(10, 1, 85), new Lot(10, 1, 85));
        assertThatThrownBy(() -> tight.steady(SET)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> new Lot(-1, 0.5, 85)).hasMessageContaining("-1");
        assertThatThrownBy(() -> new Lot(1, 1.5, 85)).hasMessageContaining("1.5");
    }

    /// By brute force: each set point of a grid is tried, hour by hour, the eggs' temperature found
    /// by halving instead of by iterating.
    @Test
    void the_best_set_point_is_the_warmest_of_all_that_keep_every_egg_below_the_limit() {
        var seed = 20_261_127;
        var random = new Random(seed);
        for (int i = 0; i < 3; i++) {
            var boxes =
                    IntStream.rangeClosed(1, 1 + random.nextInt(2))
                            .mapToObj(
                                    _ ->
                                            box(
                                                    Shape.LOGISTIC,
                                                    1 + random.nextDouble(),
                                                    new Lot(
                                                            1 + random.nextInt(8),
                                                            random.nextDouble(),
                                                            85),
                                                    new Lot(
                                                            random.nextInt(4),
                                                            random.nextDouble(),
                                                            85)))
                            .toList();
            var limit = new Celsius(32.8);

            var choice = SetPointChoice.of(boxes, limit);

            var best = Double.NEGATIVE_INFINITY;
            for (var set : grid(choice.setPoint().degrees())) {
                if (boxes.stream().allMatch(box -> tried(box, set) <= limit.degrees())) {
                    best = Math.max(best, set);
                }
            }
            assertThat(choice.setPoint().degrees())
                    .as("seed %d, round %d", seed, i)
                    .isBetween(best - 0.002, best + 0.022);
            assertThat(choice.warmest().degrees()).isBetween(limit.degrees() - 0.005, 32.8);
        }
    }

    /// Over all that could be, and closely about what was found.
    private static List<Double> grid(double about) {
        return Stream.concat(
                        IntStream.rangeClosed(0, 19).mapToObj(step -> 29 + 0.2 * step),
                        IntStream.rangeClosed(-4, 4).mapToObj(step -> about + 0.01 + 0.02 * step))
                .toList();
    }

    /// The warmest that an egg gets until all have hatched.
    private static double tried(SharedBox box, double set) {
        var grown = box.lots().stream().mapToDouble(Lot::development).toArray();
        var warmest = set;
        for (int hour = 0; hour < 24 * 90; hour++) {
            var alive =
                    IntStream.range(0, grown.length)
                            .filter(i -> grown[i] < 1 && box.lots().get(i).eggs() > 0)
                            .toArray();
            if (alive.length == 0) {
                break;
            }
            var air = air(box, grown, alive, set);
            for (int i : alive) {
                var egg = egg(box, i, grown[i], air);
                warmest = Math.max(warmest, egg);
                grown[i] += box.heat().rate().perDay(new Celsius(egg)) / 24;
            }
        }
        return warmest;
    }

    private static double air(SharedBox box, double[] grown, int[] alive, double set) {
        var low = set;
        var high = set + 20;
        while (high - low > 1e-7) {
            var middle = (low + high) / 2;
            var given = 0.0;
            for (int i : alive) {
                given +=
                        box.lots().get(i).eggs()
                                * box.heat()
                                        .watts(
                                                grown[i],
                                                new Celsius(egg(box, i, grown[i], middle)),
                                                85);
            }
            if (given > box.conductance().wattsPerKelvin() * (middle - set)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double egg(SharedBox box, int lot, double grown, double air) {
        var eggs = box.lots().get(lot).eggs();
        var low = air;
        var high = air + 20;
        while (high - low > 1e-7) {
            var middle = (low + high) / 2;
            var given = eggs * box.heat().watts(grown, new Celsius(middle), 85);
            // The heap as the reference gives it: 6 W/m2K, 95 cm2 an egg, exponent 0.8.
            if (given > 6 * 0.0095 * Math.pow(eggs, 0.8) * (middle - air)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static SharedBox box(Shape shape, double wattsPerKelvin, Lot... lots) {
        return new SharedBox(
                EmbryoHeat.standard(shape),
                new Conductance(wattsPerKelvin),
                EggBox.Pile.STANDARD,
                List.of(lots));
    }
}
