package clutchwright.engine.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.casebook.TestPedigree;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.probability.Fraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// Many hatchlings of one dam, each by either of two males, against the sum over what the three
/// parents can be: given that, hatchlings are independent.
class ManySiresInDoubtTest {

    private static final String[] LOCI = {"clown", "pied"};
    private static final double[][] HET = {{2.0 / 3, 0.5}, {0.5, 2.0 / 3}, {2.0 / 3, 1.0 / 3}};
    private static final Fraction[][] STATED = {
        {Fraction.of(2, 3), Fraction.HALF},
        {Fraction.HALF, Fraction.of(2, 3)},
        {Fraction.of(2, 3), Fraction.of(1, 3)}
    };

    /// Twelve questions are weighed together, thirteen in groups.
    @ParameterizedTest
    @ValueSource(ints = {3, 12, 13, 16})
    void lie_within_the_error_that_goes_with_the_figures(int young) {
        var family = family(young);

        var inference = family.infer(new Assumptions(0, 0));

        for (var locus = 0; locus < 2; locus++) {
            var chances = inference.chancesAt(new LocusId(LOCI[locus])).orElseThrow();
            for (var parent = 0; parent < 3; parent++) {
                var tag = "P" + parent;
                var error = chances.errorOf(family.id(tag));
                assertThat(family.chance(chances, tag, LOCI[locus] + "/+"))
                        .as("%s of %s, error %s", LOCI[locus], tag, error)
                        // Rounding alone: sums of at most 2^18 terms.
                        .isEqualTo(exact(young, locus, parent), within(error + 1e-10));
                if (young <= 12) {
                    assertThat(error).isZero();
                }
            }
        }
    }

    /// Every third is visual at the first locus, every fourth at the second.
    private static boolean isVisual(int hatchling, int locus) {
        return hatchling % (3 + locus) == 0;
    }

    private static TestPedigree family(int young) {
        var genes = new TestGenes();
        for (var locus : LOCI) {
            genes.recessive(locus, locus);
        }
        var family = new TestPedigree(genes.model()).founder("P0").founder("P1").founder("P2");
        for (var parent = 0; parent < 3; parent++) {
            for (var locus = 0; locus < 2; locus++) {
                family.het("P" + parent, LOCI[locus], LOCI[locus], STATED[parent][locus]);
            }
        }
        for (var i = 0; i < young; i++) {
            family.youngOfEither("H" + i, "sire of " + i, "P0", "P1", "P2");
            if (isVisual(i, 0) && isVisual(i, 1)) {
                family.saw("H" + i, LOCI[0], LOCI[0], LOCI[1], LOCI[1]);
            } else if (isVisual(i, 0)) {
                family.saw("H" + i, LOCI[0], LOCI[0]);
            } else if (isVisual(i, 1)) {
                family.saw("H" + i, LOCI[1], LOCI[1]);
            } else {
                family.sawNormal("H" + i);
            }
        }
        return family;
    }

    /// The chance that the parent is het, over all 64 ways for three parents and two loci.
    private static double exact(int young, int locus, int parent) {
        var all = 0.0;
        var so = 0.0;
        for (var hets = 0; hets < 64; hets++) {
            var weight = 1.0;
            for (var bit = 0; bit < 6; bit++) {
                var chance = HET[bit / 2][bit % 2];
                weight *= (hets >> bit & 1) == 1 ? chance : 1 - chance;
            }
            for (var i = 0; i < young; i++) {
                weight *= (looks(i, hets, 1) + looks(i, hets, 2)) / 2;
            }
            all += weight;
            so += (hets >> (2 * parent + locus) & 1) == 1 ? weight : 0;
        }
        return so / all;
    }

    /// Of two hets one in four is visual, of others none.
    private static double looks(int hatchling, int hets, int sire) {
        var product = 1.0;
        for (var locus = 0; locus < 2; locus++) {
            var both = (hets >> locus & hets >> (2 * sire + locus) & 1) == 1;
            var visual = both ? 0.25 : 0;
            product *= isVisual(hatchling, locus) ? visual : 1 - visual;
        }
        return product;
    }
}
