package clutchwright.engine.agreement;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// The inference against every way in which genes can have come down, in thousands of small
/// collections drawn by seed.
class InferenceAgreesWithEnumerationTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void in_collections_drawn_by_seed(long block) {
        for (var i = 0; i < 300; i++) {
            var seed = block * 1_000_000 + i;
            var world = new RandomCollection(new Random(seed));
            try {
                new InferenceAgreement(world.records(), world.assumptions).check();
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("seed " + seed, e);
            }
        }
    }
}
