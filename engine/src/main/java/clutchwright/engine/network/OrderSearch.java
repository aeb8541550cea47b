package clutchwright.engine.network;

import java.util.Arrays;
import java.util.SplittableRandom;

/// Looks for an order of elimination whose cliques are small.
///
/// Greedy elimination by several measures, then again with noise on the measure and the best
/// kept; a run is given up when it costs more than the best. Work is counted in steps, not by
/// a clock, so that the same network always gets the same order.
final class OrderSearch {

    /// What a greedy elimination keeps small.
    enum Measure {
        /// The number of pairs that become tied.
        FILL,
        /// That and the clique's size alike.
        BOTH,
        /// The cells of the clique.
        CELLS
    }

    private static final Measure[] MEASURES = Measure.values();
    private static final double[] NOISE = {0.1, 0.3, 0.6, 1.0};

    private final int nodes;
    private final int words;
    private final long[] rows;
    private final double[] logSizes;

    /// One run's state.
    private final long[] near;
    private final double[] fill;
    private final double[] weight;
    private final double[] score;
    private final int[] active;
    private final int[] order;
    private final boolean[] stale;

    private int[] best = new int[0];
    private double bestCost = Double.POSITIVE_INFINITY;
    private double bestWidth;
    private Measure bestRun = Measure.FILL;
    private final SplittableRandom random;
    private long steps;

    /// @param rows     a row of bits a node: its neighbours
    /// @param logSizes binary logarithm of each node's states
    OrderSearch(int nodes, long[] rows, double[] logSizes) {
        this.nodes = nodes;
        this.rows = rows;
        this.logSizes = logSizes;
        words = (nodes + 63) >> 6;
        random = new SplittableRandom(nodes);
        near = new long[rows.length];
        fill = new double[nodes];
        weight = new double[nodes];
        score = new double[nodes];
        active = new int[nodes];
        order = new int[nodes];
        stale = new boolean[nodes];
    }

    int[] order() {
        return best.clone();
    }

    /// Cells of all cliques together.
    double cost() {
        return bestCost;
    }

    /// Binary logarithm of the cells of the largest clique.
    double width() {
        return bestWidth;
    }

    long steps() {
        return steps;
    }

    /// One run, whatever it costs.
    void first() {
        run(Measure.FILL, 0);
    }

    /// One run, given up when it costs more than so many cells.
    void look(double mostCells) {
        bestCost = mostCells;
        run(Measure.FILL, 0);
        if (best.length < nodes) {
            bestCost = Double.POSITIVE_INFINITY;
        }
    }

    /// Goes on until looking has taken its share of what eliminating will take.
    ///
    /// @param mostSteps not to be passed by much
    /// @param share     steps of search a cell of the best order
    void search(long mostSteps, double share) {
        for (var measure : MEASURES) {
            if (best.length == 0 || steps < Math.min((double) mostSteps, share * bestCost)) {
                run(measure, 0);
            }
        }
        var bestMeasure = bestRun;
        for (var i = 0; steps < Math.min((double) mostSteps, share * bestCost); i++) {
            var measure = i % 4 == 3 ? MEASURES[i / 4 % MEASURES.length] : bestMeasure;
            run(measure, NOISE[i % NOISE.length]);
        }
    }

    private void run(Measure measure, double noise) {
        System.arraycopy(rows, 0, near, 0, rows.length);
        for (var v = 0; v < nodes; v++) {
            active[v] = v;
            refresh(v);
            score[v] = score(v, measure, noise);
        }
        var left = nodes;
        var cost = 0.0;
        var width = 0.0;
        for (var i = 0; i < nodes; i++) {
            var at = 0;
            for (var j = 1; j < left; j++) {
                at = score[active[j]] < score[active[at]] ? j : at;
            }
            steps += left;
            var v = active[at];
            active[at] = active[--left];
            order[i] = v;
            cost += Math.pow(2, weight[v]);
            width = Math.max(width, weight[v]);
            if (cost >= bestCost) {
                return;
            }
            eliminate(v);
            for (var j = 0; j < left; j++) {
                var u = active[j];
                if (stale[u]) {
                    stale[u] = false;
                    score[u] = score(u, measure, noise);
                }
            }
        }
        best = order.clone();
        bestCost = cost;
        bestWidth = width;
        bestRun = measure;
    }

    private double score(int v, Measure measure, double noise) {
        var plain =
                switch (measure) {
                    case FILL -> fill[v] + 1e-3 * weight[v];
                    case BOTH -> fill[v] + weight[v];
                    case CELLS -> weight[v] + 1e-3 * fill[v];
                };
        return noise == 0 ? plain : (plain + 0.5) * (1 + noise * random.nextDouble());
    }

    /// Ties all neighbours of a node to one another and takes it out.
    private void eliminate(int v) {
        var base = v * words;
        for (var w = 0; w < words; w++) {
            for (var bits = near[base + w]; bits != 0; bits &= bits - 1) {
                var a = (w << 6) + Long.numberOfTrailingZeros(bits);
                near[a * words + (v >> 6)] &= ~(1L << v);
            }
        }
        if (fill[v] > 0) {
            for (var w = 0; w < words; w++) {
                for (var bits = near[base + w]; bits != 0; bits &= bits - 1) {
                    tieToOthers(v, (w << 6) + Long.numberOfTrailingZeros(bits));
                }
            }
        }
        for (var w = 0; w < words; w++) {
            for (var bits = near[base + w]; bits != 0; bits &= bits - 1) {
                refresh((w << 6) + Long.numberOfTrailingZeros(bits));
            }
        }
    }

    private void tieToOthers(int v, int a) {
        var row = a * words;
        var base = v * words;
        for (var w = a >> 6; w < words; w++) {
            var missing = near[base + w] & ~near[row + w];
            if (w == a >> 6) {
                // Each pair once: only nodes after a.
                missing &= -2L << a;
            }
            for (; missing != 0; missing &= missing - 1) {
                var b = (w << 6) + Long.numberOfTrailingZeros(missing);
                lessFill(v, a, b);
                near[row + w] |= 1L << b;
                near[b * words + (a >> 6)] |= 1L << a;
            }
        }
    }

    /// Nodes near both of a pair that becomes tied have one pair less to tie.
    private void lessFill(int v, int a, int b) {
        for (var w = 0; w < words; w++) {
            var common = near[a * words + w] & near[b * words + w] & ~near[v * words + w];
            for (; common != 0; common &= common - 1) {
                var u = (w << 6) + Long.numberOfTrailingZeros(common);
                fill[u] -= 1;
                stale[u] = true;
            }
        }
        steps += words;
    }

    /// Works out a node's degree, clique and fill anew.
    private void refresh(int v) {
        var base = v * words;
        var tied = 0L;
        var count = 0;
        var clique = logSizes[v];
        for (var w = 0; w < words; w++) {
            for (var bits = near[base + w]; bits != 0; bits &= bits - 1) {
                var a = (w << 6) + Long.numberOfTrailingZeros(bits);
                count++;
                clique += logSizes[a];
                var row = a * words;
                for (var x = 0; x < words; x++) {
                    tied += Long.bitCount(near[base + x] & near[row + x]);
                }
            }
        }
        steps += (long) (count + 1) * words;
        weight[v] = clique;
        fill[v] = ((double) count * (count - 1) - tied) / 2;
        stale[v] = true;
    }

    @Override
    public String toString() {
        return bestWidth + " " + bestCost + " " + Arrays.toString(best);
    }
}
