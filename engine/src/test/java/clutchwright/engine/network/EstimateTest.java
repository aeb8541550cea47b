package clutchwright.engine.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.agreement.RandomHerd;
import clutchwright.engine.network.Solution.Solved;
import org.junit.jupiter.api.Test;

/// Estimates of networks that can also be solved exactly, with less room than they need.
class EstimateTest {

    private static final Limits AMPLE = Limits.standard();

    @Test
    void an_error_is_nearly_always_below_its_estimate() {
        var below = 0;
        var all = 0;
        for (var seed = 0; seed < 12; seed++) {
            var network = RandomHerd.of(seed, 16, 500, 0.8);
            var exact = (Solved) JunctionTree.solve(network, AMPLE);
            for (var cells : new long[] {1 << 6, 1 << 8, 1 << 10}) {
                var estimate = estimated(network, cells);
                for (var v = 0; v < network.variables(); v++) {
                    if (exact.chances(v)[0] > 0 && exact.chances(v)[0] < 1) {
                        all++;
                        below += errorOf(estimate, exact, v) <= estimate.error(v) ? 1 : 0;
                    }
                }
            }
        }
        assertThat(all).isGreaterThan(5_000);
        assertThat(below).isGreaterThan(95 * all / 100);
    }

    @Test
    void with_room_for_all_of_it_an_estimate_is_exact_and_says_so() {
        var network = RandomHerd.of(1, 10, 300, 0.8);
        var exact = (Solved) JunctionTree.solve(network, AMPLE);
        var estimate = (Solved) EdgeDeletion.solve(network, AMPLE, Stop.never());
        assertThat(estimate.quality()).isEqualTo(new Quality.Exact());
        assertThat(estimate.logTotal()).isCloseTo(exact.logTotal(), within(1e-9));
        for (var v = 0; v < network.variables(); v++) {
            assertThat(estimate.error(v)).isZero();
            assertThat(errorOf(estimate, exact, v)).isLessThan(1e-10);
        }
    }

    @Test
    void chances_of_an_estimate_sum_to_one() {
        var network = RandomHerd.of(2, 30, 1_000, 0.8);
        var estimate = estimated(network, 1 << 8);
        for (var v = 0; v < network.variables(); v++) {
            var chances = estimate.chances(v);
            assertThat(chances[0] + chances[1] + chances[2]).isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void too_wide_a_network_is_estimated_all_the_same() {
        var network = RandomHerd.of(3, 60, 3_000, 0.6);
        var narrow = new Limits(1 << 12, 1 << 24);
        assertThat(JunctionTree.solve(network, narrow)).isInstanceOf(Solution.TooWide.class);
        var estimate = (Solved) EdgeDeletion.solve(network, narrow, Stop.never());
        assertThat(estimate.quality()).isInstanceOf(Quality.Estimated.class);
    }

    private static Solved estimated(FactorNetwork network, long cells) {
        return (Solved) EdgeDeletion.solve(network, new Limits(cells, 16 * cells), Stop.never());
    }

    private static double errorOf(Solved estimate, Solved exact, int variable) {
        var error = 0.0;
        for (var state = 0; state < 3; state++) {
            error =
                    Math.max(
                            error,
                            Math.abs(
                                    estimate.chance(variable, state)
                                            - exact.chance(variable, state)));
        }
        return error;
    }
}
