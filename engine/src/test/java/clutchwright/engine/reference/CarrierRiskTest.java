package clutchwright.engine.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.casebook.TestPedigree;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.OwnRecords.AlleleTest;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference.Kind;
import java.util.LinkedHashMap;
import java.util.List;
import org.junit.jupiter.api.Test;

/// The risks of carrying that genetic counselling has printed for half a century: a recessive
/// `r`, its carriers and those who show it.
class CarrierRiskTest {

    private static final LocusId LOCUS = new LocusId("gene");
    private static final Allele R = new Allele(LOCUS, "r");
    private static final Genotype HET = TestGenes.genotype("gene", "r/+");
    private static final Genotype PLAIN = TestGenes.genotype("gene", "+/+");
    private static final Assumptions NO_DOUBT = new Assumptions(0, 0);

    /// Exact values as doubles: a few roundings of 2^-53, and chances below 10^-12 left out.
    private static final double ROUNDING = 1e-11;

    @Test
    @Reference(
            kind = Kind.PUBLISHED,
            source =
                    "S. Ogino and R.B. Wilson (2004) Bayesian analysis and risk assessment in genetic"
                            + " counseling and testing, J Mol Diagn 6:1-9",
            locator = "Fig. 1: daughter of a carrier, X-linked, three unaffected sons: 1/2 to 1/9")
    void unaffected_sons_speak_for_the_daughter_of_an_x_linked_carrier() {
        for (var sons = 0; sons <= 6; sons++) {
            var family =
                    new TestPedigree(new TestGenes().sexLinked("gene", Fraction.NONE, "r").model())
                            .founder("Mother", Sex.FEMALE)
                            .founder("Father", Sex.MALE)
                            .founder("Mate", Sex.MALE)
                            .said("Mother", "gene", "r/+")
                            .said("Father", "gene", "+|+")
                            .said("Mate", "gene", "+|+")
                            .young("Daughter", Sex.FEMALE, "Mother", "Father");
            for (var i = 0; i < sons; i++) {
                family.young("Son" + i, Sex.MALE, "Daughter", "Mate")
                        .tested("Son" + i, new AlleleTest(R, false, 1, 1));
            }

            var chances = family.infer(NO_DOUBT).chancesAt(LOCUS).orElseThrow();

            assertThat(chances.chanceOfCarrying(family.id("Daughter"), R))
                    .isEqualTo(1 / (1 + Math.pow(2, sons)), within(ROUNDING));
            if (sons == 3) {
                assertThat(Math.exp(chances.logLikelihood())).isEqualTo(9.0 / 16, within(ROUNDING));
            }
        }
    }

    @Test
    @Reference(
            kind = Kind.PUBLISHED,
            source =
                    "S. Ogino and R.B. Wilson (2004) Bayesian analysis and risk assessment in genetic"
                            + " counseling and testing, J Mol Diagn 6:1-9",
            locator = "second example: prior 2/3, detection 90 % negative; posterior 1/6 derived")
    void a_negative_test_that_finds_nine_in_ten_leaves_one_in_six() {
        var negative = new AlleleTest(R, false, 0.9, 1);
        var family =
                family().founder("Dam")
                        .founder("Sire")
                        .founder("Stranger")
                        .het("Dam", "gene", "r", Fraction.WHOLE)
                        .het("Sire", "gene", "r", Fraction.WHOLE)
                        .het("Stranger", "gene", "r", Fraction.of(1, 25))
                        .young("Sib", "Dam", "Sire")
                        .sawNormal("Sib")
                        .tested("Sib", negative)
                        .tested("Stranger", negative);

        var chances = family.infer("gene", NO_DOUBT);

        assertThat(chances.chanceOfCarrying(family.id("Sib"), R))
                .isEqualTo(1.0 / 6, within(ROUNDING));
        assertThat(chances.chanceOfCarrying(family.id("Stranger"), R))
                .isEqualTo(1.0 / 241, within(ROUNDING));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "I.D. Young, Introduction to Risk Calculation in Genetic Counseling (form)",
            locator = "possible het of prior p after n plain young: p c^n to 1 - p, c 1/2 or 3/4")
    void plain_young_prove_a_possible_het_down() {
        assertThat(afterPlainYoung(Fraction.of(2, 3), "r/r", 8))
                .isEqualTo(1.0 / 129, within(ROUNDING));
        assertThat(afterPlainYoung(Fraction.of(2, 3), "r/r", 20))
                .isEqualTo(1.0 / 524_289, within(ROUNDING));
        assertThat(afterPlainYoung(Fraction.HALF, "r/r", 6)).isEqualTo(1.0 / 65, within(ROUNDING));
        assertThat(afterPlainYoung(Fraction.of(2, 3), "r/+", 4))
                .isEqualTo(81.0 / 209, within(ROUNDING));
        assertThat(afterPlainYoung(Fraction.of(2, 3), "r/+", 10))
                .isEqualTo(59_049.0 / 583_337, within(ROUNDING));
        assertThat(afterPlainYoung(Fraction.HALF, "r/+", 12))
                .isEqualTo(531_441.0 / 17_308_657, within(ROUNDING));
    }

    private static double afterPlainYoung(Fraction prior, String mate, int young) {
        var family =
                family().founder("Dam")
                        .founder("Mate")
                        .het("Dam", "gene", "r", prior)
                        .said("Mate", "gene", mate);
        for (var i = 0; i < young; i++) {
            family.young("H" + i, "Dam", "Mate").sawNormal("H" + i);
        }
        return family.chance(family.infer("gene", NO_DOUBT), "Dam", "r/+");
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Bayes' rule over both parents together",
            locator =
                    "66 % by 66 %, n plain young: both het 81/401 at n = 4, 6561/88481 at n = 8;"
                            + " each 39329/88481; next one visual 6561/353924")
    void two_possible_hets_are_not_independent_after_shared_young() {
        for (var n : new int[] {0, 4, 8}) {
            var family =
                    family().founder("A")
                            .founder("B")
                            .het("A", "gene", "r", Fraction.of(2, 3))
                            .het("B", "gene", "r", Fraction.of(2, 3));
            for (var i = 0; i < n; i++) {
                family.young("H" + i, "A", "B").sawNormal("H" + i);
            }
            family.young("Next", "A", "B");

            var chances = family.infer("gene", NO_DOUBT);
            var both = chances.together(List.of(family.id("A"), family.id("B")));

            var expected =
                    switch (n) {
                        case 0 -> List.of(2.0 / 3, 4.0 / 9, 4.0 / 9, 1.0 / 9);
                        case 4 -> List.of(209.0 / 401, 81.0 / 401, 256.0 / 401, 81.0 / 1604);
                        default ->
                                List.of(
                                        39_329.0 / 88_481,
                                        6_561.0 / 88_481,
                                        65_536.0 / 88_481,
                                        6_561.0 / 353_924);
                    };
            assertThat(family.chance(chances, "A", "r/+"))
                    .isEqualTo(expected.get(0), within(ROUNDING));
            assertThat(both.getOrDefault(List.of(HET, HET), 0.0))
                    .isEqualTo(expected.get(1), within(ROUNDING));
            assertThat(
                            both.getOrDefault(List.of(HET, PLAIN), 0.0)
                                    + both.getOrDefault(List.of(PLAIN, HET), 0.0))
                    .isEqualTo(expected.get(2), within(ROUNDING));
            assertThat(family.chance(chances, "Next", "r/r"))
                    .isEqualTo(expected.get(3), within(ROUNDING));
        }
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "the sib of an affected marries a first cousin (Young; Harper)",
            locator = "founders' frequency q: 1/10 gives 43/838 and 129/419; the limit is 1/24")
    void the_sib_of_an_affected_marries_a_first_cousin() {
        cousins(0.1, 43.0 / 838, 129.0 / 419, ROUNDING);
        // One part in a million above the limit of 2/3 1/4 1/4: 0.0416667708.
        cousins(1e-6, 1.0 / 24 + 1.0417e-7, 0.250000625, 1e-10);
    }

    private static void cousins(double q, double affected, double carrier, double tolerance) {
        var family =
                family().founder("G1")
                        .founder("G2")
                        .founder("M")
                        .founder("W")
                        .young("F", Sex.MALE, "G1", "G2")
                        .young("U", Sex.FEMALE, "G1", "G2")
                        .young("Affected", "M", "F")
                        .young("X", Sex.FEMALE, "M", "F")
                        .young("Y", Sex.MALE, "U", "W")
                        .young("Child", "X", "Y")
                        .sawNormal("G1", "G2", "M", "W", "F", "U", "X", "Y")
                        .saw("Affected", "gene", "Shows");

        var chances = family.infer("gene", new Assumptions(q, 0));

        assertThat(family.chance(chances, "Child", "r/r")).isEqualTo(affected, within(tolerance));
        assertThat(family.chance(chances, "Y", "r/+")).isEqualTo(carrier, within(tolerance));
        assertThat(family.chance(chances, "X", "r/+")).isEqualTo(2.0 / 3, within(ROUNDING));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source =
                    "S. Wright; D.S. Falconer and T.F.C. Mackay, Introduction to Quantitative Genetics",
            locator = "q^2 + F q (1 - q) for first cousins, F = 1/16, q = 1/100: 23/32000")
    void first_cousins_of_a_population() {
        var family =
                family().founder("G1")
                        .founder("G2")
                        .founder("M")
                        .founder("W")
                        .young("F", Sex.MALE, "G1", "G2")
                        .young("U", Sex.FEMALE, "G1", "G2")
                        .young("X", Sex.FEMALE, "M", "F")
                        .young("Y", Sex.MALE, "U", "W")
                        .young("Child", "X", "Y");

        var chances = family.infer("gene", new Assumptions(0.01, 0));

        assertThat(family.chance(chances, "Child", "r/r"))
                .isEqualTo(23.0 / 32_000, within(ROUNDING));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Mendel's first law over a prior of carrying; the trade's percentages",
            locator =
                    "plain young of 66 % by normal 1/3, by het 3/5, by 66 % 1/2; 50 % by het 4/7;"
                            + " two plain sibs of 66 % by 66 % both het 8/29, not 196/841")
    void the_percentages_of_the_trade_and_two_siblings_of_them() {
        assertThat(plainYoung(Fraction.of(2, 3), Fraction.NONE))
                .isEqualTo(1.0 / 3, within(ROUNDING));
        assertThat(plainYoung(Fraction.of(2, 3), Fraction.WHOLE))
                .isEqualTo(3.0 / 5, within(ROUNDING));
        assertThat(plainYoung(Fraction.of(2, 3), Fraction.of(2, 3)))
                .isEqualTo(0.5, within(ROUNDING));
        assertThat(plainYoung(Fraction.HALF, Fraction.WHOLE)).isEqualTo(4.0 / 7, within(ROUNDING));
        assertThat(plainYoung(Fraction.HALF, Fraction.HALF)).isEqualTo(2.0 / 5, within(ROUNDING));

        var sibs = couple(Fraction.of(2, 3), Fraction.of(2, 3));
        sibs.young("H1", "A", "B").young("H2", "A", "B").sawNormal("H1", "H2");
        var both = sibs.infer("gene", NO_DOUBT).together(List.of(sibs.id("H1"), sibs.id("H2")));
        assertThat(both.getOrDefault(List.of(HET, HET), 0.0)).isEqualTo(8.0 / 29, within(ROUNDING));
    }

    private static double plainYoung(Fraction dam, Fraction sire) {
        var family = couple(dam, sire).young("H", "A", "B").sawNormal("H");
        return family.chance(family.infer("gene", NO_DOUBT), "H", "r/+");
    }

    private static TestPedigree couple(Fraction dam, Fraction sire) {
        var family = family().founder("A").founder("B");
        return carrying(carrying(family, "A", dam), "B", sire);
    }

    private static TestPedigree carrying(TestPedigree family, String tag, Fraction chance) {
        return chance.isNone()
                ? family.said(tag, "gene", "+/+")
                : family.het(tag, "gene", "r", chance);
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source =
                    "J.L. Foulley and J.M. Elsen (1988) Posterior probability of the sire's genotype at"
                            + " a major locus, Genet. Sel. Evol. 20:227-238",
            locator = "random dams, q = 1/5, no visual of n: odds of het 1/2 (9/10)^n to 1")
    void a_sire_is_judged_by_young_of_random_dams() {
        for (var n : new int[] {20, 60}) {
            var family = family().founder("Sire", Sex.MALE).sawNormal("Sire");
            for (var i = 0; i < n; i++) {
                family.young("H" + i, "", "Sire").sawNormal("H" + i);
            }

            var chances = family.infer("gene", new Assumptions(0.2, 0));

            // Plain males are het at 2 q (1 - q) to (1 - q)^2, that is 1 to 2; plain young of a
            // het by random dams 1 - q/2 each.
            var odds = 0.5 * Math.pow(0.9, n);
            assertThat(family.chance(chances, "Sire", "r/+"))
                    .isEqualTo(odds / (1 + odds), within(ROUNDING));
        }
    }

    private static TestPedigree family() {
        return new TestPedigree(
                new TestGenes().locus("gene", List.of("r"), "r/r", "Shows").model());
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "K. Landsteiner (1901); F. Bernstein (1924): three alleles of one locus",
            locator =
                    "A .3, B .1: sire A, dam B, two young AB: likelihood 9/1250; sire A/A 1/2, dam"
                            + " B/B 1/4")
    void two_young_of_group_ab_tell_of_their_parents() {
        var genes =
                new TestGenes()
                        .locus(
                                "abo",
                                List.of("A", "B"),
                                "A/A",
                                "A",
                                "A/+",
                                "A",
                                "B/B",
                                "B",
                                "B/+",
                                "B",
                                "A/B",
                                "AB");
        var family =
                new TestPedigree(genes.model())
                        .founder("Dam")
                        .founder("Sire")
                        .said("Dam", "abo", bloodGroups())
                        .said("Sire", "abo", bloodGroups())
                        .young("H1", "Dam", "Sire")
                        .young("H2", "Dam", "Sire")
                        .saw("Dam", "abo", "B")
                        .saw("Sire", "abo", "A")
                        .saw("H1", "abo", "AB")
                        .saw("H2", "abo", "AB");

        var chances = family.infer("abo", NO_DOUBT);

        assertThat(Math.exp(chances.logLikelihood())).isEqualTo(9.0 / 1250, within(ROUNDING));
        assertThat(family.chance(chances, "Sire", "A/A")).isEqualTo(0.5, within(ROUNDING));
        assertThat(family.chance(chances, "Dam", "B/B")).isEqualTo(0.25, within(ROUNDING));
    }

    /// Hardy-Weinberg proportions at A 3/10, B 1/10 and O 6/10, in hundredths.
    private static Distribution<Genotype> bloodGroups() {
        var weights = new LinkedHashMap<Genotype, Fraction>();
        weights.put(TestGenes.genotype("abo", "A/A"), Fraction.of(9, 100));
        weights.put(TestGenes.genotype("abo", "A/B"), Fraction.of(6, 100));
        weights.put(TestGenes.genotype("abo", "A/+"), Fraction.of(36, 100));
        weights.put(TestGenes.genotype("abo", "B/B"), Fraction.of(1, 100));
        weights.put(TestGenes.genotype("abo", "B/+"), Fraction.of(12, 100));
        weights.put(TestGenes.genotype("abo", "+/+"), Fraction.of(36, 100));
        return new Distribution<>(weights);
    }
}
