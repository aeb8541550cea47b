package clutchwright.engine.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.network.Solution.Impossible;
import clutchwright.engine.network.Solution.Solved;
import clutchwright.engine.network.Solution.Stopped;
import clutchwright.engine.network.Solution.Where;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/// What holds of chances on any network.
class LawsTest {

    private static final double[] KEEPS = {0.9, 0.1, 0.2, 0.8};

    @Test
    void a_coin_that_is_weighed_has_the_chances_of_its_weights() {
        var builder = new FactorNetwork.Builder();
        var coin = builder.variable(2);
        var solved = solved(builder.weigh(coin, new double[] {3, 1}));
        assertThat(solved.chance(coin, 0)).isEqualTo(3.0 / 4);
        assertThat(solved.logTotal()).isCloseTo(Math.log(4), within(1e-15));
        assertThat(solved.quality()).isEqualTo(new Quality.Exact());
    }

    @Test
    void the_order_of_a_table_is_last_variable_fastest() {
        var builder = new FactorNetwork.Builder();
        var first = builder.variable(2);
        var last = builder.variable(3);
        var solved = solved(builder.tie(new double[] {1, 2, 3, 4, 5, 6}, first, last));
        assertThat(solved.chance(first, 1)).isCloseTo(15.0 / 21, within(1e-15));
        assertThat(solved.chance(last, 0)).isCloseTo(5.0 / 21, within(1e-15));
        assertThat(solved.joint(last, first)[1]).isCloseTo(4.0 / 21, within(1e-15));
    }

    @Test
    void a_long_chain_of_tiny_weights_has_a_finite_total() {
        var builder = new FactorNetwork.Builder();
        var links = 100_000;
        for (var i = 0; i < links; i++) {
            builder.variable(2);
            builder.weigh(i, new double[] {1e-200, 1e-200});
            if (i > 0) {
                builder.tie(KEEPS, i - 1, i);
            }
        }
        var solved = solved(builder);
        // Every row of the table sums to one, so the first link has two states of weight one.
        assertThat(solved.logTotal())
                .isCloseTo(Math.log(2) + links * Math.log(1e-200), within(1e-3));
        // The chain's own balance: 0.1 of the one go over, 0.2 of the other.
        assertThat(solved.chance(links - 1, 0)).isCloseTo(2.0 / 3, within(1e-12));
    }

    @Test
    void evidence_that_weighs_little_but_disagrees_does_not_vanish() {
        var builder = new FactorNetwork.Builder();
        var middle = builder.variable(2);
        for (var i = 0; i < 400; i++) {
            var witness = builder.variable(2);
            builder.tie(KEEPS, middle, witness);
            builder.weigh(witness, i % 2 == 0 ? new double[] {1, 1e-9} : new double[] {1e-9, 1});
        }
        var solved = solved(builder);
        var odds =
                200 * (Math.log(0.9 + 0.1e-9) + Math.log(0.1 + 0.9e-9))
                        - 200 * (Math.log(0.2 + 0.8e-9) + Math.log(0.8 + 0.2e-9));
        assertThat(solved.chance(middle, 0)).isCloseTo(1 / (1 + Math.exp(-odds)), within(1e-12));
    }

    @Test
    void a_barren_variable_changes_nothing() {
        var seen = new double[] {0.3, 0.7};
        var plain = chain(5).weigh(4, seen);
        var more = chain(5).weigh(4, seen);
        more.variable(2);
        more.tie(KEEPS, 2, 5);
        var before = solved(plain);
        var after = solved(more);
        assertThat(after.logTotal()).isCloseTo(before.logTotal(), within(1e-12));
        assertThat(after.chance(0, 0)).isCloseTo(before.chance(0, 0), within(1e-12));
    }

    @Test
    void what_cannot_be_says_where() {
        var weighed = chain(3).weigh(1, new double[] {0, 1}).weigh(1, new double[] {1, 0});
        assertThat(JunctionTree.solve(weighed.build(), Limits.standard()))
                .isEqualTo(new Impossible(new Where.AtVariable(1)));
        var tied = chain(2).weigh(0, new double[] {0, 1});
        tied.tie(new double[] {1, 1, 0, 0}, 0, 1);
        assertThat(JunctionTree.solve(tied.build(), Limits.standard()))
                .isEqualTo(new Impossible(new Where.AtTie(1)));
    }

    @Test
    void three_that_must_all_differ_in_two_states_cannot_be() {
        var differ = new double[] {0, 1, 1, 0};
        var builder = new FactorNetwork.Builder();
        for (var i = 0; i < 3; i++) {
            builder.variable(2);
        }
        builder.tie(differ, 0, 1).tie(differ, 1, 2).tie(differ, 2, 0);
        assertThat(JunctionTree.solve(builder.build(), Limits.standard()))
                .isEqualTo(new Impossible(new Where.Together()));
    }

    @Test
    void a_variable_may_have_more_states_than_a_word_has_bits() {
        var random = new SplittableRandom(1);
        var weights = random.doubles(100).toArray();
        var table = random.doubles(200).toArray();
        var builder = new FactorNetwork.Builder();
        var many = builder.variable(100);
        var two = builder.variable(2);
        var solved = solved(builder.weigh(many, weights).tie(table, many, two));
        var total = 0.0;
        var first = 0.0;
        for (var i = 0; i < 100; i++) {
            total += weights[i] * (table[2 * i] + table[2 * i + 1]);
            first += weights[i] * table[2 * i];
        }
        assertThat(solved.chance(two, 0)).isCloseTo(first / total, within(1e-12));
        assertThat(solved.chance(many, 70))
                .isCloseTo(weights[70] * (table[140] + table[141]) / total, within(1e-12));
    }

    @Test
    void it_stops_when_asked() {
        var builder = new FactorNetwork.Builder();
        for (var i = 0; i < 4; i++) {
            builder.variable(2);
        }
        builder.tie(KEEPS, 0, 1).tie(KEEPS, 1, 2).tie(KEEPS, 2, 3).tie(KEEPS, 3, 0);
        assertThat(JunctionTree.solve(builder.build(), Limits.standard(), () -> true))
                .isEqualTo(new Stopped());
    }

    @Test
    void nothing_at_all_weighs_one() {
        assertThat(solved(new FactorNetwork.Builder()).logTotal()).isZero();
    }

    @Test
    void what_is_no_network_is_refused() {
        var builder = chain(2);
        assertThatThrownBy(() -> builder.variable(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> builder.weigh(0, new double[] {1}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> builder.weigh(0, new double[] {1, Double.NaN}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> builder.weigh(0, new double[] {1, -1}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> builder.weigh(2, new double[] {1, 1}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> builder.tie(KEEPS, 0, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> builder.tie(new double[3], 0, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> builder.tie(new double[] {1}))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static FactorNetwork.Builder chain(int links) {
        var builder = new FactorNetwork.Builder();
        for (var i = 0; i < links; i++) {
            builder.variable(2);
            if (i > 0) {
                builder.tie(KEEPS, i - 1, i);
            }
        }
        return builder;
    }

    private static Solved solved(FactorNetwork.Builder builder) {
        return (Solved) JunctionTree.solve(builder.build(), Limits.standard());
    }
}
