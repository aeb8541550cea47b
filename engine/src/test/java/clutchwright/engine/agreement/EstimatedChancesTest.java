package clutchwright.engine.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.network.EdgeDeletion;
import clutchwright.engine.network.FactorNetwork;
import clutchwright.engine.network.JunctionTree;
import clutchwright.engine.network.Limits;
import clutchwright.engine.network.Quality;
import clutchwright.engine.network.Solution;
import clutchwright.engine.network.Stop;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// Where a network is cut because it is too wide, the chances are near the exact ones, and the
/// estimates of their errors hold.
///
/// One recessive gene in a pool in which every male is put to many females and every female to
/// several males, so that there are loops everywhere; small enough to be solved exactly too.
class EstimatedChancesTest {

    private static final Limits TIGHT = new Limits(81, 40_000);

    private static final double[] MENDEL = mendel();
    private static final double[] PLAIN = {0.995, 0.995, 0.005};
    private static final double[] VISUAL = {0.005, 0.005, 0.995};

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void of_a_rare_gene(long seed) {
        requireNear(pool(new Random(seed), 0.005, 0.15), seed, 0.01);
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 31, 32})
    void of_a_gene_that_a_third_of_the_founders_may_carry(long seed) {
        requireNear(pool(new Random(seed), 0.005, 0.35), seed, 0.05);
    }

    private static void requireNear(FactorNetwork network, long seed, double most) {
        var exact = (Solution.Solved) JunctionTree.solve(network, Limits.standard());
        var estimate = (Solution.Solved) EdgeDeletion.solve(network, TIGHT, Stop.never());
        assertThat(estimate.quality())
                .as("seed %d: nothing was cut", seed)
                .isInstanceOf(Quality.Estimated.class);
        var held = 0;
        var furthest = 0.0;
        for (var v = 0; v < network.variables(); v++) {
            var off = 0.0;
            for (var s = 0; s < network.states(v); s++) {
                off = Math.max(off, Math.abs(exact.chance(v, s) - estimate.chance(v, s)));
            }
            held += off <= estimate.error(v) ? 1 : 0;
            furthest = Math.max(furthest, off);
        }
        assertThat(furthest).as("seed %d: the furthest off", seed).isLessThan(most);
        assertThat((double) held / network.variables())
                .as("seed %d: share of the errors that are under their estimates", seed)
                .isGreaterThanOrEqualTo(0.95);
    }

    private static FactorNetwork pool(Random random, double background, double stated) {
        var builder = new FactorNetwork.Builder();
        var females = new ArrayList<Integer>();
        var males = new ArrayList<Integer>();
        var genes = new ArrayList<Integer>();
        for (var i = 0; i < 36; i++) {
            var animal = builder.variable(3);
            var carries = random.nextDouble() < stated;
            var chance = 0.5 + random.nextInt(2) * 0.25;
            genes.add(carries && random.nextDouble() < chance ? 1 : 0);
            builder.weigh(
                    animal,
                    carries
                            ? new double[] {1 - chance, chance, 0}
                            : new double[] {
                                (1 - background) * (1 - background),
                                2 * background * (1 - background),
                                background * background
                            });
            (i % 4 == 0 ? males : females).add(animal);
        }
        for (var season = 0; season < 3; season++) {
            var kept = new ArrayList<Integer>();
            for (var clutch = 0; clutch < 24; clutch++) {
                var dam = females.get(random.nextInt(females.size()));
                var sire = males.get(random.nextInt(males.size()));
                for (var egg = 0; egg < 6; egg++) {
                    var young = builder.variable(3);
                    genes.add(drawn(random, genes.get(dam)) + drawn(random, genes.get(sire)));
                    builder.tie(MENDEL, young, dam, sire);
                    builder.weigh(young, genes.get(young) == 2 ? VISUAL : PLAIN);
                    if (egg == 0 && clutch % 3 == 0) {
                        kept.add(young);
                    }
                }
            }
            shareOut(kept, females, males);
        }
        return builder.build();
    }

    private static void shareOut(List<Integer> kept, List<Integer> females, List<Integer> males) {
        for (var i = 0; i < kept.size(); i++) {
            (i % 4 == 0 ? males : females).add(kept.get(i));
        }
    }

    private static int drawn(Random random, int copies) {
        return random.nextInt(2) < copies ? 1 : 0;
    }

    /// Young by dam by sire, the states being the copies of the gene.
    private static double[] mendel() {
        var table = new double[27];
        for (var dam = 0; dam < 3; dam++) {
            for (var sire = 0; sire < 3; sire++) {
                var d = dam / 2.0;
                var s = sire / 2.0;
                table[dam * 3 + sire] = (1 - d) * (1 - s);
                table[9 + dam * 3 + sire] = d * (1 - s) + s * (1 - d);
                table[18 + dam * 3 + sire] = d * s;
            }
        }
        return table;
    }
}
