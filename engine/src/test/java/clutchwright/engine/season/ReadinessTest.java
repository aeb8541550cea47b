package clutchwright.engine.season;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.season.Readiness.Animal;
import clutchwright.engine.season.Readiness.Finding;
import clutchwright.engine.season.Readiness.Minimum;
import clutchwright.engine.season.Readiness.Weight;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/// What speaks against pairing an animal now: common practice, no source.
class ReadinessTest {

    private static final Optional<Minimum> ROYAL = Optional.of(new Minimum(1500, 27));

    @Test
    void a_grown_female_in_good_weight_is_ready() {
        assertThat(of(40, OptionalInt.empty(), new Weight(5, 1700), new Weight(90, 1650)))
                .isEmpty();
    }

    @Test
    void a_light_and_young_one_is_not() {
        assertThat(of(20, OptionalInt.empty(), new Weight(5, 1300)))
                .containsExactly(new Finding.TooYoung(20, 27), new Finding.TooLight(1300, 1500));
    }

    @Test
    void a_weight_is_asked_for() {
        assertThat(of(40, OptionalInt.empty())).containsExactly(new Finding.NeverWeighed());
        assertThat(of(40, OptionalInt.empty(), new Weight(61, 1700)))
                .containsExactly(new Finding.WeighedLongAgo(61));
    }

    @Test
    void who_loses_a_tenth_in_half_a_year_is_not_ready() {
        assertThat(of(40, OptionalInt.empty(), new Weight(5, 1800), new Weight(100, 2000)))
                .containsExactly(new Finding.LosingWeight(1 - 1800.0 / 2000));
        assertThat(of(40, OptionalInt.empty(), new Weight(5, 1810), new Weight(100, 2000)))
                .isEmpty();
        // Longer ago it does not count.
        assertThat(of(40, OptionalInt.empty(), new Weight(5, 1800), new Weight(200, 2000)))
                .isEmpty();
    }

    @Test
    void who_laid_must_have_made_it_up() {
        assertThat(
                        of(
                                60,
                                OptionalInt.of(150),
                                new Weight(5, 1600),
                                new Weight(140, 1400),
                                new Weight(200, 2000)))
                .containsExactly(new Finding.NotRegained(0.8));
        assertThat(
                        of(
                                60,
                                OptionalInt.of(150),
                                new Weight(5, 1850),
                                new Weight(140, 1400),
                                new Weight(200, 2000)))
                .isEmpty();
    }

    @Test
    void a_male_has_five_females_at_most() {
        assertThat(mates(5)).isEmpty();
        assertThat(mates(6)).containsExactly(new Finding.ManyMates(6));
    }

    private static List<Finding> mates(int mates) {
        return Readiness.of(
                        new Animal(
                                Optional.of(new Minimum(700, 16)),
                                OptionalInt.of(30),
                                List.of(new Weight(3, 900)),
                                OptionalInt.empty(),
                                mates))
                .findings();
    }

    private static List<Finding> of(int months, OptionalInt laidDaysAgo, Weight... weights) {
        return Readiness.of(
                        new Animal(
                                ROYAL,
                                OptionalInt.of(months),
                                Arrays.asList(weights),
                                laidDaysAgo,
                                0))
                .findings();
    }
}
