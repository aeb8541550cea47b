package clutchwright.bench;

import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.LocusAnswer;
import clutchwright.engine.inference.PedigreeInference;
import java.lang.management.ManagementFactory;

/// A collection like a real one: 10,000 animals and 60 loci, all posteriors.
final class CollectionBench {

    private CollectionBench() {}

    @SuppressWarnings("SystemOut")
    static void run(int size, int loci, int rounds) {
        var house = HouseCollection.of(size, loci, 60L);
        var seen = PedigreeInference.touched(house.records).size();
        System.out.printf("%d animals, %d loci of which something is recorded%n", size, seen);
        for (var round = 0; round < rounds; round++) {
            var before = cpuNanos();
            var start = System.nanoTime();
            var inference = PedigreeInference.of(house.records, Assumptions.STANDARD);
            var wall = System.nanoTime() - start;
            var settled =
                    inference.answers().stream()
                            .filter(LocusAnswer.Settled.class::isInstance)
                            .count();
            System.out.printf(
                    "round %d: %.2f s processor time, %.2f s by the clock, %d loci settled%n",
                    round, (cpuNanos() - before) / 1e9, wall / 1e9, settled);
        }
    }

    private static long cpuNanos() {
        return ((com.sun.management.OperatingSystemMXBean)
                        ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }
}
