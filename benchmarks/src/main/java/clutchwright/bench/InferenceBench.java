package clutchwright.bench;

import clutchwright.engine.network.EdgeDeletion;
import clutchwright.engine.network.FactorNetwork;
import clutchwright.engine.network.JunctionTree;
import clutchwright.engine.network.Limits;
import clutchwright.engine.network.Solution;
import clutchwright.engine.network.Stop;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;

/// All chances of one locus, pedigree by pedigree; beside it weka to 300 animals, and toulbar2
/// for the total alone to 3,000 where it is installed. Processor time of the one thread,
/// medians.
final class InferenceBench {

    private static final List<String> SETS =
            List.of(
                    "p100",
                    "p300",
                    "p1k",
                    "p1kb",
                    "p3kb",
                    "p100k",
                    "pool1k-1",
                    "pool1k-2",
                    "pool1k-3",
                    "pool1k-4",
                    "pool1k-5",
                    "pool1k-6",
                    "pool1k-7",
                    "pool1k-8",
                    "lines10k-1",
                    "lines10k-2",
                    "lines10k-3",
                    "lines10k-4",
                    "lines10k-5",
                    "lines10k-6",
                    "lines10k-7",
                    "lines10k-8",
                    "pool3k-1",
                    "pool3k-2",
                    "pool3k-3",
                    "pool3k-4",
                    "pool3k-5",
                    "pool3k-6",
                    "pool3k-7",
                    "pool3k-8",
                    "pool10k-1",
                    "pool10k-2",
                    "pool10k-3",
                    "pool10k-4",
                    "pool10k-5",
                    "pool10k-6",
                    "pool10k-7",
                    "pool10k-8");

    /// How long one measurement goes on: some runs to get warm, then the median of the others.
    private static final double SECONDS = 2;

    private InferenceBench() {}

    @SuppressWarnings("SystemOut")
    static void run(String... names) throws IOException {
        for (var name : names.length == 0 ? SETS : List.of(names)) {
            var pedigree = BreederPedigrees.named(name);
            // Of the largest the second locus: there little is left to infer.
            var loci = name.equals("p100k") ? new int[] {1} : new int[] {0, 2};
            for (var locus : loci) {
                measure(name, locus, pedigree);
            }
        }
    }

    @SuppressWarnings("SystemOut")
    private static void measure(String name, int locus, BreederPedigrees pedigree)
            throws IOException {
        var ours = new BreederNetwork(pedigree, locus);
        var last = solve(ours.network);
        var milliseconds = median(() -> solve(ours.network));
        System.out.printf(
                "%-11s locus %d: %9.3f ms  %s, %d MB in use%n",
                name, locus, milliseconds, told(last), memoryMegabytes());
        if (locus == 0 && pedigree.animals <= 300) {
            var weka = new WekaNetwork(pedigree, ours);
            var theirs = median(weka::chances);
            System.out.printf(
                    "%-11s          %9.3f ms  weka-stable 3.8.7, all chances: %.0f times%n",
                    "", theirs, theirs / milliseconds);
        }
        if (locus == 0 && pedigree.animals <= 3000) {
            System.out.printf(
                    "%-11s          %s%n", "", Toulbar.logTotal(pedigree, ours, milliseconds));
        }
    }

    private static Solution solve(FactorNetwork network) {
        var exact = JunctionTree.solve(network, Limits.standard());
        return exact instanceof Solution.TooWide
                ? EdgeDeletion.solve(network, Limits.brisk(), Stop.never())
                : exact;
    }

    private static String told(Solution solution) {
        return solution instanceof Solution.Solved solved
                ? solved.quality() + ", log total " + solved.logTotal()
                : solution.toString();
    }

    private static double median(Runnable work) {
        var times = new double[10_000];
        var count = 0;
        var until = cpuNanos() + SECONDS * 1e9;
        while (count < times.length && (count < 3 || cpuNanos() < until)) {
            var before = cpuNanos();
            work.run();
            times[count++] = (cpuNanos() - before) / 1e6;
        }
        var warm = Arrays.copyOfRange(times, count / 2, count);
        Arrays.sort(warm);
        return warm[warm.length / 2];
    }

    static long cpuNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static long memoryMegabytes() {
        var runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) >> 20;
    }
}
