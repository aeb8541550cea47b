package clutchwright.engine.agreement;

import clutchwright.engine.network.FactorNetwork;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/// Pedigrees by a seed, one recessive allele, as networks: three genotypes, Mendel's law, some
/// animals looked at, many loops.
public final class RandomHerd {

    private static final double[] FOUNDER = {0.8, 0.19, 0.01};
    private static final double[] PLAIN = {1, 1, 0};
    private static final double[] VISUAL = {0, 0, 1};
    private static final double[] MENDEL = mendel();

    private RandomHerd() {}

    /// Clutches of six; one hatchling in eight is kept to breed, a dam for some clutches, a
    /// sire for more.
    ///
    /// @param seen chance that an animal was looked at
    public static FactorNetwork of(long seed, int founders, int animals, double seen) {
        var random = new SplittableRandom(seed);
        var builder = new FactorNetwork.Builder();
        var copies = new int[animals];
        List<Integer> breeders = new ArrayList<>();
        var dam = 0;
        var sire = 0;
        for (var i = 0; i < animals; i++) {
            builder.variable(3);
            if (i < founders) {
                copies[i] = drawn(random);
                builder.weigh(i, FOUNDER);
                breeders.add(i);
            } else {
                if ((i - founders) % 6 == 0) {
                    var first = Math.max(0, breeders.size() - 2 * founders);
                    dam = breeders.get(random.nextInt(first, breeders.size() - 1) | 1);
                    sire = breeders.get(random.nextInt(first / 4, breeders.size() / 4) * 4);
                }
                copies[i] = gamete(random, copies[dam]) + gamete(random, copies[sire]);
                builder.tie(MENDEL, dam, sire, i);
                if (random.nextInt(8) == 0) {
                    breeders.add(i);
                }
            }
            if (random.nextDouble() < seen) {
                builder.weigh(i, copies[i] == 2 ? VISUAL : PLAIN);
            }
        }
        return builder.build();
    }

    private static int drawn(SplittableRandom random) {
        var u = random.nextDouble();
        return u < FOUNDER[0] ? 0 : u < FOUNDER[0] + FOUNDER[1] ? 1 : 2;
    }

    private static int gamete(SplittableRandom random, int copies) {
        return random.nextDouble() < copies / 2.0 ? 1 : 0;
    }

    private static double[] mendel() {
        var table = new double[27];
        for (var dam = 0; dam < 3; dam++) {
            for (var sire = 0; sire < 3; sire++) {
                var d = dam / 2.0;
                var s = sire / 2.0;
                table[9 * dam + 3 * sire] = (1 - d) * (1 - s);
                table[9 * dam + 3 * sire + 1] = d * (1 - s) + s * (1 - d);
                table[9 * dam + 3 * sire + 2] = d * s;
            }
        }
        return table;
    }
}
