package clutchwright.engine.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.network.Change;
import clutchwright.engine.network.JunctionTree;
import clutchwright.engine.network.Limits;
import clutchwright.engine.network.Solution;
import clutchwright.engine.network.Solution.Impossible;
import clutchwright.engine.network.Solution.Solved;
import clutchwright.engine.network.Solution.TooWide;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/// The junction tree against every combination one by one, on networks by seed.
class NetworkAgreesWithEnumerationTest {

    /// Sums of some thousand products, each rounded some ten times: far below 1e-10.
    private static final double ROUNDING = 1e-10;

    @Test
    void small_networks_have_the_chances_of_their_enumeration() {
        LongStream.range(0, 4_000).forEach(seed -> assertAgrees(seed, RandomNetwork.of(seed)));
    }

    @Test
    void several_variables_together_have_the_chances_of_their_enumeration() {
        LongStream.range(0, 500).forEach(this::assertAgreesOnPairs);
    }

    @Test
    void a_changed_network_has_the_chances_of_one_built_so() {
        LongStream.range(0, 500).forEach(this::assertAgreesAfterChanges);
    }

    private static void assertAgrees(long seed, RandomNetwork network) {
        assertAgrees(seed, network, JunctionTree.solve(network.network(), Limits.standard()));
    }

    private static void assertAgrees(long seed, RandomNetwork network, Solution solution) {
        var expected = new NetworkEnumeration(network);
        switch (solution) {
            case Solved solved -> {
                assertThat(solved.logTotal())
                        .as("log total, seed %d", seed)
                        .isCloseTo(Math.log(expected.total()), within(ROUNDING));
                for (var v = 0; v < network.states().size(); v++) {
                    assertSame(seed, solved.chances(v), expected.joint(v));
                }
            }
            case Impossible _ -> assertThat(expected.total()).as("seed %d", seed).isZero();
            case TooWide _, Solution.Stopped _ ->
                    throw new AssertionError("seed " + seed + ": " + solution);
        }
    }

    private void assertAgreesOnPairs(long seed) {
        var network = RandomNetwork.of(seed);
        if (JunctionTree.solve(network.network(), Limits.standard()) instanceof Solved solved) {
            var expected = new NetworkEnumeration(network);
            var n = network.states().size();
            for (var a = 0; a < n; a++) {
                var b = (a + 1) % n;
                assertSame(seed, solved.joint(b), expected.joint(b));
                if (a != b) {
                    assertSame(seed, solved.joint(a, b), expected.joint(a, b));
                }
            }
        }
    }

    private void assertAgreesAfterChanges(long seed) {
        var random = new SplittableRandom(seed);
        var network = RandomNetwork.of(seed);
        var solution = JunctionTree.solve(network.network(), Limits.standard());
        for (var step = 0; step < 4 && solution instanceof Solved before; step++) {
            var changed = changed(random, network);
            var after = before.with(changed.change());
            assertAgrees(seed, changed.network(), after);
            assertAgrees(seed, network, before);
            network = changed.network();
            solution = after;
        }
    }

    private record Changed(RandomNetwork network, Change change) {}

    private static Changed changed(SplittableRandom random, RandomNetwork network) {
        var states = new ArrayList<>(network.states());
        var factors = new ArrayList<>(network.factors());
        var variable = random.nextInt(states.size());
        switch (random.nextInt(3)) {
            case 0 -> {
                var weights = weights(random, states.get(variable));
                factors.add(new RandomNetwork.Factor(List.of(variable), weights));
                return new Changed(
                        new RandomNetwork(states, factors), Change.weigh(variable, cells(weights)));
            }
            case 1 -> {
                var weights = weights(random, states.get(variable));
                factors.removeIf(factor -> factor.variables().equals(List.of(variable)));
                factors.add(new RandomNetwork.Factor(List.of(variable), weights));
                return new Changed(
                        new RandomNetwork(states, factors),
                        Change.reweigh(variable, cells(weights)));
            }
            default -> {
                var scope =
                        new ArrayList<>(
                                network.factors().isEmpty()
                                        ? List.of(variable)
                                        : network.factors()
                                                .get(random.nextInt(factors.size()))
                                                .variables());
                if (scope.size() > 3) {
                    scope.removeLast();
                }
                var tied = scope.stream().mapToInt(Integer::intValue).toArray();
                var count = 1 + random.nextInt(3);
                states.add(count);
                var cells = scope.stream().mapToInt(states::get).reduce(count, (a, b) -> a * b);
                scope.add(states.size() - 1);
                var table = weights(random, cells);
                var weights = weights(random, count);
                factors.add(new RandomNetwork.Factor(scope, table));
                factors.add(new RandomNetwork.Factor(List.of(states.size() - 1), weights));
                return new Changed(
                        new RandomNetwork(states, factors),
                        Change.leaf(cells(weights), cells(table), tied));
            }
        }
    }

    private static List<Double> weights(SplittableRandom random, int count) {
        return random.doubles(count).mapToObj(x -> x < 0.1 ? 0 : x).toList();
    }

    private static double[] cells(List<Double> weights) {
        return weights.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void assertSame(long seed, double[] actual, double[] expected) {
        assertThat(actual).as("seed %d", seed).hasSameSizeAs(expected);
        for (var i = 0; i < actual.length; i++) {
            // Written so that NaN fails.
            if (!(Math.abs(actual[i] - expected[i]) <= ROUNDING)) {
                throw new AssertionError(
                        "seed %d, state %d: %s, not %s".formatted(seed, i, actual[i], expected[i]));
            }
        }
    }
}
