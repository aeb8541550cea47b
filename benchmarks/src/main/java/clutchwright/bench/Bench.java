package clutchwright.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/// Runs the measurements whose names are given, or says which there are.
///
/// `./bench cross` runs [CrossBench], all of it; `./bench calibration` writes
/// [CalibrationPage].
public final class Bench {

    private Bench() {}

    @SuppressWarnings("SystemOut")
    public static void main(String... names) throws RunnerException, IOException {
        if (names.length == 0) {
            System.out.println(
                    "Usage: ./bench NAME...   names: cross, collection, calibration, kinship, inference, plan, soak-readings");
            return;
        }
        if (names[0].equals("calibration")) {
            CalibrationPage.write(Path.of("docs"));
            return;
        }
        if (names[0].equals("collection")) {
            CollectionBench.run(10_000, 60, 5);
            return;
        }
        if (names[0].equals("plan")) {
            PlanBench.run();
            return;
        }
        if (names[0].equals("soak-readings")) {
            SensorSoak.fill(Path.of(names[1]));
            return;
        }
        if (names[0].equals("kinship")) {
            KinshipBench.run();
            return;
        }
        if (names[0].equals("inference")) {
            InferenceBench.run(Arrays.copyOfRange(names, 1, names.length));
            return;
        }
        var options = new OptionsBuilder();
        for (var name : names) {
            switch (name) {
                case "cross" -> options.include(CrossBench.class.getSimpleName());
                default -> {
                    System.err.println(
                            "No measurement '"
                                    + name
                                    + "'. There are: cross, collection, calibration, kinship, inference, plan, soak-readings");
                    System.exit(2);
                }
            }
        }
        new Runner(options.build()).run();
    }
}
