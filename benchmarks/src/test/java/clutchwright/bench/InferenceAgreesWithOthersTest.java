package clutchwright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.network.JunctionTree;
import clutchwright.engine.network.Limits;
import clutchwright.engine.network.Solution.Solved;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/// Chances on invented pedigrees against general programs for such networks.
class InferenceAgreesWithOthersTest {

    @Test
    void weka_gives_every_animal_of_a_hundred_the_same_chances() {
        var pedigree = BreederPedigrees.named("p100");
        var network = new BreederNetwork(pedigree, 0);
        var solved = solved(network);
        var theirs = new WekaNetwork(pedigree, network).chances();
        for (var animal = 0; animal < pedigree.animals; animal++) {
            for (var genotype = 0; genotype < 3; genotype++) {
                assertThat(solved.chance(animal, genotype))
                        .as("animal %d, genotype %d", animal, genotype)
                        .isCloseTo(theirs[animal][genotype], within(1e-12));
            }
        }
    }

    @Test
    void toulbar2_gave_the_same_totals() throws IOException {
        var lines = lines("toulbar2-totals.csv");
        assertThat(lines).hasSize(5);
        for (var line : lines) {
            var cells = line.split(",", -1);
            var solved = solved(new BreederNetwork(BreederPedigrees.named(cells[0]), 0));
            // Half of the last decimal it prints.
            assertThat(solved.logTotal())
                    .as(cells[0])
                    .isCloseTo(Double.parseDouble(cells[1]), within(0.0005));
        }
    }

    private static List<String> lines(String name) throws IOException {
        try (var stream = InferenceAgreesWithOthersTest.class.getResourceAsStream(name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("set,"))
                    .toList();
        }
    }

    private static Solved solved(BreederNetwork network) {
        return (Solved) JunctionTree.solve(network.network, Limits.standard());
    }
}
