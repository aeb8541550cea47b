package clutchwright.bench;

import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.LocusAnswer;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.network.Limits;
import clutchwright.engine.network.Stop;
import java.lang.management.ManagementFactory;
import java.util.TreeMap;

/// A collection like a real one: 10,000 animals and 60 loci, all posteriors.
final class CollectionBench {

    private CollectionBench() {}

    @SuppressWarnings("SystemOut")
    static void run(int size, int loci, int rounds) {
        var house = HouseCollection.of(size, loci, 60L);
        var seen = PedigreeInference.touched(house.records);
        System.out.printf(
                "%d animals, %d loci of which something is recorded%n", size, seen.size());
        for (var round = 0; round < rounds; round++) {
            var before = cpuNanos();
            var start = System.nanoTime();
            var inference =
                    PedigreeInference.of(
                            house.records,
                            Assumptions.STANDARD,
                            seen,
                            Limits.brisk(),
                            Stop.never());
            var wall = System.nanoTime() - start;
            System.out.printf(
                    "round %d: %.2f s processor time, %.2f s by the clock; %s; %d MB in use%n",
                    round,
                    (cpuNanos() - before) / 1e9,
                    wall / 1e9,
                    methods(inference),
                    memoryMegabytes());
        }
    }

    /// How many loci were worked out how, and the furthest off that any chance may be.
    private static String methods(PedigreeInference inference) {
        var counts = new TreeMap<String, Integer>();
        var furthest = 0.0;
        for (var answer : inference.answers()) {
            var how = answer.getClass().getSimpleName();
            if (answer instanceof LocusAnswer.Settled(var chances)) {
                how = chances.method().getClass().getSimpleName();
                furthest = Math.max(furthest, chances.method().allowance());
            }
            counts.merge(how, 1, Integer::sum);
        }
        return "%s, none further off than %.3f as estimated".formatted(counts, furthest);
    }

    private static long memoryMegabytes() {
        var runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) >> 20;
    }

    private static long cpuNanos() {
        return ((com.sun.management.OperatingSystemMXBean)
                        ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }
}
