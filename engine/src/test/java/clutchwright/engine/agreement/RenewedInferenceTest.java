package clutchwright.engine.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.casebook.TestPedigree;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.probability.Fraction;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// A collection brought up to date after a change says the same as one worked out anew.
class RenewedInferenceTest {

    private static final GeneticModel MODEL =
            new TestGenes()
                    .recessive("clown", "Clown")
                    .incomplete("pastel", "Pastel")
                    .sexLinked("coral", Fraction.of(1, 20), "Coral", "Coral/+", "Coral")
                    .model();

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void after_hatchlings_sightings_and_withdrawn_claims(long seed) {
        var random = new Random(seed);
        var house = house(random, 12);
        var inference = house.infer(Assumptions.STANDARD);
        for (var change = 0; change < 6; change++) {
            change(house, random, change);
            var changed = house.records();
            inference = inference.with(changed);
            requireSame(inference, PedigreeInference.of(changed, Assumptions.STANDARD), seed);
        }
    }

    private static TestPedigree house(Random random, int young) {
        var house = new TestPedigree(MODEL);
        for (var i = 0; i < 3; i++) {
            house.founder("D" + i, Sex.FEMALE).founder("S" + i, Sex.MALE);
        }
        house.het("D0", "clown", "Clown", Fraction.WHOLE)
                .het("S0", "clown", "Clown", Fraction.of(2, 3))
                .said("D1", "pastel", "Pastel/+")
                .said("S1", "coral", "+|Coral");
        for (var i = 0; i < young; i++) {
            hatch(house, random, i);
        }
        return house;
    }

    /// Young of any female and male there are; those hatched before among them.
    private static void hatch(TestPedigree house, Random random, int number) {
        var tag = (number % 2 == 0 ? "DH" : "SH") + number;
        var dam =
                random.nextInt(3) > 0 || number < 2
                        ? "D" + random.nextInt(3)
                        : older("DH", random, number, 0);
        var sire =
                random.nextInt(3) > 0 || number < 3
                        ? "S" + random.nextInt(3)
                        : older("SH", random, number, 1);
        house.young(tag, number % 2 == 0 ? Sex.FEMALE : Sex.MALE, dam, sire);
        see(house, random, tag);
    }

    private static String older(String kind, Random random, int number, int parity) {
        var choices = (number - parity + 1) / 2;
        return kind + (2 * random.nextInt(choices) + parity);
    }

    private static void see(TestPedigree house, Random random, String tag) {
        switch (random.nextInt(5)) {
            case 0 -> house.saw(tag, "pastel", "Pastel");
            case 1 -> house.saw(tag, "coral", "Coral");
            case 2 -> house.saw(tag, "clown", "Clown");
            default -> house.sawNormal(tag);
        }
    }

    private static void change(TestPedigree house, Random random, int change) {
        switch (change % 3) {
            case 0 -> hatch(house, random, 12 + change / 3);
            case 1 -> see(house, random, (change % 2 == 0 ? "DH" : "SH") + change);
            default -> house.het("D2", "clown", "Clown", Fraction.of(1, 1 + change));
        }
    }

    private static void requireSame(PedigreeInference renewed, PedigreeInference anew, long seed) {
        assertThat(renewed.loci()).as("seed %d", seed).isEqualTo(anew.loci());
        for (var locus : anew.loci()) {
            var expected = anew.chancesAt(locus).orElseThrow();
            var found = renewed.chancesAt(locus).orElseThrow();
            // Sums of some hundred terms, each rounded to 1e-16.
            assertThat(found.logLikelihood())
                    .as("seed %d, %s", seed, locus)
                    .isEqualTo(expected.logLikelihood(), within(1e-11));
            for (var member : anew.records().pedigree().members()) {
                expected.of(member.id())
                        .forEach(
                                (genotype, chance) ->
                                        assertThat(found.chanceThat(member.id(), genotype::equals))
                                                .as("seed %d, %s of %s", seed, genotype, member)
                                                .isEqualTo(chance, within(1e-11)));
            }
        }
    }
}
