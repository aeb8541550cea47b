package clutchwright.engine.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.casebook.TestPedigree;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.proof.CarrierTest;
import clutchwright.engine.proof.TestMating;
import clutchwright.engine.reference.Reference.Kind;
import org.junit.jupiter.api.Test;

/// The tables of test matings: how many young bring a carrier out, and what is left if none
/// does.
class TestMatingTablesTest {

    private static final String YOUNG =
            "I.D. Young, Introduction to Risk Calculation in Genetic Counselling";
    private static final String LIVESTOCK =
            "classic livestock tables of test matings, as in I. Johansson and J. Rendel (1968)"
                    + " Genetics and Animal Breeding";

    private static final String VISUAL = "Clown/Clown";
    private static final String HET = "Clown/+";

    @Test
    @Reference(
            kind = Kind.FROM_MEMORY,
            source =
                    "J.R. Sedcole (1977) Number of plants necessary to recover a trait, Crop"
                            + " Science 17:667-668",
            locator = "one success: smallest n with 1-(1-q)^n >= p; q 1/2 and 1/4 derived exactly")
    void so_many_young_recover_the_trait_once() {
        var visual = mating(Fraction.HALF, VISUAL);
        var het = mating(Fraction.HALF, HET);

        assertThat(visual.neededToDetect(0.9)).hasValue(4);
        assertThat(visual.neededToDetect(0.95)).hasValue(5);
        assertThat(visual.neededToDetect(0.99)).hasValue(7);
        assertThat(het.neededToDetect(0.9)).hasValue(9);
        assertThat(het.neededToDetect(0.95)).hasValue(11);
        // Often printed 16, but (3/4)^16 is still above one in a hundred.
        assertThat(het.neededToDetect(0.99)).hasValue(17);
        assertThat(het.detection(16).orElseThrow()).isLessThan(0.99);
    }

    @Test
    @Reference(
            kind = Kind.PUBLISHED,
            source = LIVESTOCK,
            locator =
                    "a litter of twelve plain young by a known carrier clears to 96.8 %:"
                            + " 1-(3/4)^12 = 16245775/16777216")
    void a_plain_litter_of_twelve_by_a_known_carrier_clears_to_96_8_percent() {
        assertThat(mating(Fraction.HALF, HET).detection(12))
                .hasValueCloseTo(16245775.0 / 16777216, within(1e-14));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = LIVESTOCK,
            locator = "mates visual, and known het: young for 95, 99 and 99.9 % detection")
    void visuals_and_hets_as_mates_bring_a_carrier_out() {
        var visual = mating(Fraction.HALF, VISUAL);
        var het = mating(Fraction.HALF, HET);

        assertThat(visual.neededToDetect(0.95)).hasValue(5);
        assertThat(visual.neededToDetect(0.99)).hasValue(7);
        assertThat(visual.neededToDetect(0.999)).hasValue(10);
        assertThat(het.neededToDetect(0.95)).hasValue(11);
        assertThat(het.neededToDetect(0.99)).hasValue(17);
        assertThat(het.neededToDetect(0.999)).hasValue(25);
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = LIVESTOCK,
            locator =
                    "one 50 % possible het as mate with k young: missed at 1/2 + 1/2 (3/4)^k;"
                            + " k = 1, 4, 6, 8")
    void a_possible_het_as_mate_is_drawn_once_for_the_whole_clutch() {
        var mating = mating(Fraction.HALF, Fraction.HALF);

        assertThat(missed(mating, 1)).isEqualTo(7.0 / 8, within(1e-15));
        assertThat(missed(mating, 4)).isEqualTo(337.0 / 512, within(1e-15));
        assertThat(missed(mating, 6)).isEqualTo(4825.0 / 8192, within(1e-15));
        assertThat(missed(mating, 8)).isEqualTo(72097.0 / 131072, within(1e-15));
        // However many hatch, half of all carriers stay hidden.
        assertThat(mating.neededToDetect(0.95)).isEmpty();
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = YOUNG,
            locator =
                    "plain young until the posterior is at most 5 % and 1 %; priors 2/3, 1/2, 1/3"
                            + " by a visual and by a known het")
    void so_many_plain_young_bring_the_posterior_down() {
        assertNeeded(mating(Fraction.of(2, 3), VISUAL), 6, 8);
        assertNeeded(mating(Fraction.HALF, VISUAL), 5, 7);
        assertNeeded(mating(Fraction.of(1, 3), VISUAL), 4, 6);
        assertNeeded(mating(Fraction.of(2, 3), HET), 13, 19);
        assertNeeded(mating(Fraction.HALF, HET), 11, 16);
        assertNeeded(mating(Fraction.of(1, 3), HET), 8, 14);
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = YOUNG,
            locator = "posterior p c^n / (p c^n + 1 - p), printed as fractions for n = 1 ... 16")
    void the_posterior_after_plain_young_is_not_the_chance_of_having_missed_them() {
        var visual = mating(Fraction.of(2, 3), VISUAL);
        var het = mating(Fraction.HALF, HET);

        assertThat(visual.chanceAfter(0, 4)).hasValueCloseTo(1.0 / 9, within(1e-15));
        assertThat(visual.chanceAfter(0, 6)).hasValueCloseTo(1.0 / 33, within(1e-15));
        assertThat(visual.chanceAfter(0, 12)).hasValueCloseTo(1.0 / 2049, within(1e-15));
        assertThat(het.chanceAfter(0, 3)).hasValueCloseTo(27.0 / 91, within(1e-15));
        assertThat(het.chanceAfter(0, 10)).hasValueCloseTo(59049.0 / 1107625, within(1e-15));
        assertThat(het.chanceAfter(0, 16)).hasValueCloseTo(43046721.0 / 4338014017L, within(1e-15));
        // At ten: missed at 5.6 %, het at 5.3 % from a half; from two thirds at 10.1 %.
        assertThat(missed(het, 10)).isEqualTo(59049.0 / 1048576, within(1e-15));
        assertThat(mating(Fraction.of(2, 3), HET).chanceAfter(0, 10))
                .hasValueCloseTo(59049.0 / 583337, within(1e-15));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = YOUNG,
            locator =
                    "two 66 % possible hets after n plain young: 5/8, 17/29, 209/401, 39329/88481")
    void two_possible_hets_are_not_independent_after_plain_young() {
        var mating = mating(Fraction.of(2, 3), Fraction.of(2, 3));

        assertThat(mating.chanceAfter(0, 1)).hasValueCloseTo(5.0 / 8, within(1e-15));
        assertThat(mating.chanceAfter(0, 2)).hasValueCloseTo(17.0 / 29, within(1e-15));
        assertThat(mating.chanceAfter(0, 4)).hasValueCloseTo(209.0 / 401, within(1e-15));
        assertThat(mating.chanceAfter(0, 8)).hasValueCloseTo(39329.0 / 88481, within(1e-15));
        // Only she is 2/9, only he is 2/9, neither is 1/9: no plain clutch tells these apart.
        assertThat(mating.limit()).isEqualTo(2.0 / 5, within(1e-15));
    }

    private static void assertNeeded(TestMating mating, int fivePercent, int onePercent) {
        assertThat(mating.needed(0.05)).hasValue(fivePercent);
        assertThat(mating.needed(0.01)).hasValue(onePercent);
    }

    private static double missed(TestMating mating, int young) {
        return 1 - mating.detection(young).orElseThrow();
    }

    private static TestMating mating(Fraction prior, String mate) {
        return mating(suspect(prior).said("Bo", "clown", mate));
    }

    private static TestMating mating(Fraction prior, Fraction matesPrior) {
        return mating(suspect(prior).het("Bo", "clown", "Clown", matesPrior));
    }

    private static TestMating mating(TestPedigree family) {
        var inference = family.infer(new Assumptions(0, 0));
        var allele = new Allele(new LocusId("clown"), "Clown");
        return CarrierTest.of(inference, family.id("Ada"), allele)
                .flatMap(test -> test.with(family.id("Bo")))
                .orElseThrow();
    }

    private static TestPedigree suspect(Fraction prior) {
        return new TestPedigree(new TestGenes().recessive("clown", "Clown").model())
                .founder("Ada", Sex.FEMALE)
                .founder("Bo", Sex.MALE)
                .het("Ada", "clown", "Clown", prior);
    }
}
