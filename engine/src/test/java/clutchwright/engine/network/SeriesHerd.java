package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/// A herd with a series of alleles, each of which shows: founders who are hardly ever anything but
/// wild, young of any two before them, and what was seen of most, hardly ever wrongly.
final class SeriesHerd {

    private static final int FOUNDERS = 8;
    private static final double FREQUENCY = 0.005;
    private static final double MISREAD = 0.005;

    private final List<int[]> pairs = new ArrayList<>();
    private final int alleles;

    private SeriesHerd(int alleles) {
        this.alleles = alleles;
        for (var i = 0; i < alleles; i++) {
            for (var j = i; j < alleles; j++) {
                pairs.add(new int[] {i, j});
            }
        }
    }

    static FactorNetwork of(int alleles, int animals, long seed) {
        return new SeriesHerd(alleles).network(animals, new SplittableRandom(seed));
    }

    private FactorNetwork network(int animals, SplittableRandom random) {
        var builder = new FactorNetwork.Builder();
        var mendel = mendel();
        var prior = prior();
        var truth = new ArrayList<int[]>();
        for (var a = 0; a < animals; a++) {
            builder.variable(pairs.size());
            if (a < FOUNDERS) {
                builder.weigh(a, prior);
                truth.add(new int[] {0, random.nextInt(3) == 0 ? random.nextInt(alleles) : 0});
            } else {
                var dam = random.nextInt(a);
                var sire = (dam + 1 + random.nextInt(a - 1)) % a;
                builder.tie(mendel, a, dam, sire);
                truth.add(
                        new int[] {
                            truth.get(dam)[random.nextInt(2)], truth.get(sire)[random.nextInt(2)]
                        });
            }
            if (random.nextInt(5) > 0) {
                builder.weigh(a, seen(truth.get(a)));
            }
        }
        return builder.build();
    }

    private double[] prior() {
        return pairs.stream()
                .mapToDouble(
                        pair ->
                                (pair[0] == pair[1] ? 1 : 2)
                                        * frequency(pair[0])
                                        * frequency(pair[1]))
                .toArray();
    }

    private double frequency(int allele) {
        return allele == 0 ? 1 - FREQUENCY * (alleles - 1) : FREQUENCY;
    }

    private double[] seen(int... truth) {
        return pairs.stream()
                .mapToDouble(
                        pair ->
                                pair[0] == Math.min(truth[0], truth[1])
                                                && pair[1] == Math.max(truth[0], truth[1])
                                        ? 1 - MISREAD
                                        : MISREAD / (pairs.size() - 1))
                .toArray();
    }

    /// Young by dam by sire.
    private double[] mendel() {
        var states = pairs.size();
        var table = new double[states * states * states];
        for (var d = 0; d < states; d++) {
            for (var s = 0; s < states; s++) {
                for (var one : pairs.get(d)) {
                    for (var other : pairs.get(s)) {
                        table[(numberOf(one, other) * states + d) * states + s] += 0.25;
                    }
                }
            }
        }
        return table;
    }

    private int numberOf(int one, int other) {
        var first = Math.min(one, other);
        var number = 0;
        while (pairs.get(number)[0] != first || pairs.get(number)[1] != Math.max(one, other)) {
            number++;
        }
        return number;
    }
}
