package clutchwright.engine.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.network.Solution.Solved;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// States that are next to impossible are left out where a series of alleles would make tables
/// too large; what is left is as the whole network says.
class NextToImpossibleTest {

    private static final int ALLELES = 4;
    private static final int GENOTYPES = 10;
    private static final int ANIMALS = 20;
    private static final EstimateWay WAY = new EstimateWay(Limits.standard());

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void herds_of_a_series_have_the_chances_that_the_whole_network_gives(long seed) {
        var herd = herd(seed);
        var whole = (Solved) JunctionTree.solve(herd, Limits.standard());
        var narrowed = Narrowed.of(herd).orElseThrow();
        var less = solved(herd, narrowed);

        assertThat(Arrays.stream(narrowed.states).mapToInt(states -> states.length).sum())
                .as("states that are left")
                .isLessThan(ANIMALS * GENOTYPES);
        var margin = within(narrowed.lost + 1e-12);
        for (var v = 0; v < ANIMALS; v++) {
            for (var s = 0; s < GENOTYPES; s++) {
                assertThat(less.chance(v, s))
                        .as("seed %d, animal %d, state %d".formatted(seed, v, s))
                        .isCloseTo(whole.chance(v, s), margin);
            }
            assertThat(Arrays.stream(less.chances(v)).sum()).isCloseTo(1, within(1e-12));
            assertThat(less.error(v)).isLessThan(1e-5);
        }
        assertThat(less.logTotal()).isCloseTo(whole.logTotal(), within(narrowed.lost + 1e-9));
        var together = less.joint(ANIMALS - 1, 2);
        var expected = whole.joint(ANIMALS - 1, 2);
        assertThat(together).hasSameSizeAs(expected);
        for (var cell = 0; cell < expected.length; cell++) {
            assertThat(together[cell]).isCloseTo(expected[cell], margin);
        }
    }

    @Test
    void what_was_left_out_comes_back_when_something_new_makes_it_certain() {
        var herd = herd(7);
        var narrowed = Narrowed.of(herd).orElseThrow();
        var less = solved(herd, narrowed);
        var gone = 0;
        while (narrowed.placeOf(0, gone).isPresent()) {
            gone++;
        }
        var only = new double[GENOTYPES];
        only[gone] = 1;

        assertThat(less.chance(0, gone)).isZero();
        assertThat(((Solved) less.with(Change.weigh(0, only))).chance(0, gone)).isEqualTo(1);
    }

    @Test
    void a_series_of_a_dozen_alleles_in_a_large_herd_is_narrowed_unasked() {
        // Seventy-eight genotypes: tables of half a million cells for each of the young.
        var forty = SeriesHerd.of(12, 40, 11);

        var answer = (Solved) EdgeDeletion.solve(forty, Limits.standard(), Stop.never());

        assertThat(answer).isInstanceOf(NarrowedAnswer.class);
        assertThat(Arrays.stream(answer.chances(39)).sum()).isCloseTo(1, within(1e-12));
    }

    private static Solved solved(FactorNetwork herd, Narrowed narrowed) {
        return (Solved)
                narrowed.answer(herd, WAY, WAY.solve(narrowed.network, Way.NONE, Stop.never()));
    }

    private static FactorNetwork herd(long seed) {
        return SeriesHerd.of(ALLELES, ANIMALS, seed);
    }
}
