package clutchwright.bench;

import clutchwright.engine.pedigree.Inbreeding;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.function.Supplier;

/// How long the inbreeding of whole populations takes, beside Quaas's (1976) method in the same
/// run.
///
/// Quaas's method works out the same coefficients column by column, every animal with all that come
/// after it, so it is run on a small population of the same making only, and its time is set
/// against ours for the same.
final class KinshipBench {

    private static final long SEED = 20_261_125;
    private static final int ROUNDS = 9;
    private static final int SMALL = 10_000;

    private KinshipBench() {}

    @SuppressWarnings("SystemOut")
    static void run() {
        System.out.println(
                "seed " + SEED + "; medians of " + ROUNDS + " rounds; times of one thread");
        measure(1_000_000, 22, 0.01, 150);
        measure(100_000, 60, 0.19, 150);
    }

    @SuppressWarnings("SystemOut")
    private static void measure(int size, int seasons, double strangers, int goalMilliseconds) {
        var herd = NumberedHerd.of(size, seasons, strangers, SEED);
        System.out.printf(
                "%n%,d animals, %d seasons: %,d couples, %.1f ancestors of a couple on record%n",
                size, seasons, herd.couples(), herd.ancestorsOfACouple());
        var ours = time(() -> Inbreeding.ofNumbered(herd.dams(), herd.sires()));
        System.out.printf("  ours               %s  (goal %d ms)%n", ours, goalMilliseconds);
        var small = NumberedHerd.of(SMALL, seasons, strangers, SEED);
        var oursSmall = time(() -> Inbreeding.ofNumbered(small.dams(), small.sires()));
        System.out.printf("  ours, %,d       %s%n", SMALL, oursSmall);
        System.out.printf(
                "  Quaas, %,d      %s%n", SMALL, time(() -> quaas(small.dams(), small.sires())));
        System.out.printf("  largest difference of the two %.1e%n", difference(small));
    }

    private static double difference(NumberedHerd herd) {
        var expected = quaas(herd.dams(), herd.sires());
        var found = Inbreeding.ofNumbered(herd.dams(), herd.sires());
        var difference = 0.0;
        for (var i = 0; i < found.length; i++) {
            difference = Math.max(difference, Math.abs(expected[i] - found[i]));
        }
        return difference;
    }

    /// Column by column of the Cholesky factor of the relationship matrix (R.L. Quaas 1976,
    /// Biometrics 32:949-953): the squares of each row add up to one more than the inbreeding.
    private static double[] quaas(int[] dams, int[] sires) {
        var sums = new double[dams.length];
        var column = new double[dams.length];
        for (var i = 0; i < dams.length; i++) {
            var known = (dams[i] < 0 ? 0 : sums[dams[i]]) + (sires[i] < 0 ? 0 : sums[sires[i]]);
            column[i] = Math.sqrt(1 - known / 4);
            sums[i] += column[i] * column[i];
            for (var j = i + 1; j < dams.length; j++) {
                column[j] =
                        ((dams[j] < i ? 0 : column[dams[j]])
                                        + (sires[j] < i ? 0 : column[sires[j]]))
                                / 2;
                sums[j] += column[j] * column[j];
            }
        }
        return Arrays.stream(sums).map(sum -> sum - 1).toArray();
    }

    private static String time(Supplier<double[]> work) {
        var threads = ManagementFactory.getThreadMXBean();
        var cpu = new double[ROUNDS];
        var wall = new double[ROUNDS];
        var bytes = 0L;
        var allocation = (com.sun.management.ThreadMXBean) threads;
        for (var round = -3; round < ROUNDS; round++) {
            var started = System.nanoTime();
            var busy = threads.getCurrentThreadCpuTime();
            var before = allocation.getCurrentThreadAllocatedBytes();
            var result = work.get();
            if (round >= 0 && result.length > 0) {
                bytes = allocation.getCurrentThreadAllocatedBytes() - before;
                cpu[round] = (threads.getCurrentThreadCpuTime() - busy) / 1e6;
                wall[round] = (System.nanoTime() - started) / 1e6;
            }
        }
        Arrays.sort(cpu);
        Arrays.sort(wall);
        return "%8.1f ms CPU (least %.1f)  %8.1f ms wall  %6.1f MB"
                .formatted(cpu[ROUNDS / 2], cpu[0], wall[ROUNDS / 2], bytes / 1e6);
    }
}
