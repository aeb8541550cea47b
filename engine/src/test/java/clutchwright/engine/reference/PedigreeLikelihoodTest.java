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
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.inference.OwnRecords.AlleleTest;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;

/// Likelihoods of whole families, without loops (Elston and Stewart 1971) and with them, as
/// exact fractions that a second program enumerated.
class PedigreeLikelihoodTest {

    private static final String HASSTEDT =
            "S.J. Hasstedt, Pedigree Analysis Package, appendix D, pedigree 3 (structure)";

    /// Exact values as doubles: a few roundings of 2^-53, and chances below 10^-12 left out.
    private static final double ROUNDING = 1e-11;

    @Test
    @Reference(
            kind = Kind.PUBLISHED,
            source = "M.D. Vigeland (2021) Pedigree Analysis in R; the library pedprobr",
            locator = "two brothers a/b, frequencies .2 and .8: 0.1856; parents 9/58, 25/58, 12/29")
    void two_brothers_of_untyped_parents() {
        var genes = new TestGenes().locus("gene", List.of("r"), "r/+", "AB", "r/r", "AA");
        var family =
                new TestPedigree(genes.model())
                        .founder("M")
                        .founder("F")
                        .young("B1", "M", "F")
                        .young("B2", "M", "F")
                        .saw("B1", "gene", "AB")
                        .saw("B2", "gene", "AB");

        var chances = family.infer("gene", new Assumptions(0.2, 0));

        likelihood(chances, 116.0 / 625);
        for (var parent : List.of("M", "F")) {
            is(family, chances, parent, "r/r", 9.0 / 58);
            is(family, chances, parent, "r/+", 25.0 / 58);
            is(family, chances, parent, "+/+", 12.0 / 29);
        }
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "R.C. Elston and J. Stewart (1971): a family of three generations, enumerated",
            locator = "q = 1/20, a visual in the second and third generation: 20577/1024000000")
    void three_generations_with_two_visuals() {
        var family = three().sawNormal("1", "2", "3", "5", "7");
        family.saw("4", "gene", "Shows").saw("6", "gene", "Shows");

        var chances = family.infer("gene", new Assumptions(0.05, 0));

        likelihood(chances, 20_577.0 / 1_024_000_000);
        for (var sure : List.of("1", "2", "3", "5")) {
            is(family, chances, sure, "r/+", 1);
        }
        is(family, chances, "7", "r/+", 2.0 / 3);
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "R.C. Elston and J. Stewart (1971): a family of three generations, enumerated",
            locator =
                    "the same without a visual in the third: 336091/204800000; 23/35, 17/245, 86/245")
    void three_generations_with_one_visual() {
        var family = three().sawNormal("1", "2", "3", "5", "6", "7").saw("4", "gene", "Shows");

        var chances = family.infer("gene", new Assumptions(0.05, 0));

        likelihood(chances, 336_091.0 / 204_800_000);
        is(family, chances, "3", "r/+", 23.0 / 35);
        is(family, chances, "5", "r/+", 17.0 / 245);
        is(family, chances, "6", "r/+", 86.0 / 245);
        is(family, chances, "7", "r/+", 86.0 / 245);
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "R.C. Elston and J. Stewart (1971): a family of three generations, enumerated",
            locator = "r/r shows at 9/10, others at 1/50: 0.0188346373; 4 r/r 0.0724621135")
    void three_generations_with_a_penetrance() {
        var family = three();
        var wild = new Allele(new LocusId("gene"), "+");
        // Recorded plain: 49/50 if it has a wild allele, 1/10 if it is r/r.
        for (var plain : List.of("1", "2", "3", "5", "6", "7")) {
            family.tested(plain, new AlleleTest(wild, true, 0.98, 0.9));
        }
        family.tested("4", new AlleleTest(wild, false, 0.98, 0.9));

        var chances =
                family.infer(new Assumptions(0.05, 0)).chancesAt(new LocusId("gene")).orElseThrow();

        likelihood(chances, 47_086_593_336_547_671.0 / 2_500_000_000_000_000_000.0);
        is(family, chances, "4", "r/r", 4_549_325_430_373_755.0 / 62_782_124_448_730_228.0);
        is(family, chances, "3", "r/+", 9_982_599_100_738_873.0 / 78_477_655_560_912_785.0);
        is(family, chances, "7", "r/+", 17_080_065_112_489_211.0 / 156_955_311_121_825_570.0);
    }

    private static TestPedigree three() {
        return family().founder("1", Sex.MALE)
                .founder("2", Sex.FEMALE)
                .founder("5", Sex.FEMALE)
                .young("3", Sex.MALE, "2", "1")
                .young("4", Sex.FEMALE, "2", "1")
                .young("6", Sex.MALE, "5", "3")
                .young("7", Sex.FEMALE, "5", "3");
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = HASSTEDT,
            locator = "first-cousin loop, one visual, q = 1/20 and 1/100, enumerated")
    void a_loop_of_first_cousins() {
        loop(
                1.0 / 20,
                1_561_115_259.0 / 409_600_000_000.0,
                List.of(3673.0 / 7986, 1071.0 / 1331, 362.0 / 1331));
        loop(
                1.0 / 100,
                105_655_859_080_299.0 / 160_000_000_000_000_000.0,
                List.of(119_011.0 / 244_422, 346_733.0 / 366_633, 2974.0 / 40_737));
    }

    private static void loop(double q, double likelihood, List<Double> hets) {
        var family =
                family().founder("1", Sex.MALE)
                        .founder("2", Sex.FEMALE)
                        .founder("3", Sex.FEMALE)
                        .founder("6", Sex.FEMALE)
                        .young("4", Sex.MALE, "2", "1")
                        .young("5", Sex.MALE, "2", "1")
                        .young("7", Sex.FEMALE, "3", "4")
                        .young("8", Sex.MALE, "6", "5")
                        .young("9", Sex.MALE, "7", "8")
                        .sawNormal("1", "2", "3", "4", "5", "6", "7", "8")
                        .saw("9", "gene", "Shows");

        var chances = family.infer("gene", new Assumptions(q, 0));

        likelihood(chances, likelihood);
        is(family, chances, "1", "r/+", hets.get(0));
        is(family, chances, "4", "r/+", hets.get(1));
        is(family, chances, "3", "r/+", hets.get(2));
        is(family, chances, "7", "r/+", 1);
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "double first cousins, enumerated",
            locator = "k visual, ten others plain, q = 1/20: 4673441381/819200000000")
    void a_loop_of_double_first_cousins() {
        var family =
                family().founder("a", Sex.MALE)
                        .founder("b", Sex.FEMALE)
                        .founder("c", Sex.MALE)
                        .founder("d", Sex.FEMALE)
                        .young("e", Sex.MALE, "b", "a")
                        .young("f", Sex.MALE, "b", "a")
                        .young("g", Sex.FEMALE, "d", "c")
                        .young("h", Sex.FEMALE, "d", "c")
                        .young("i", Sex.FEMALE, "g", "e")
                        .young("j", Sex.MALE, "h", "f")
                        .young("k", "i", "j")
                        .sawNormal("a", "b", "c", "d", "e", "f", "g", "h", "i", "j")
                        .saw("k", "gene", "Shows");

        var chances = family.infer("gene", new Assumptions(0.05, 0));

        likelihood(chances, 4_673_441_381.0 / 819_200_000_000.0);
        is(family, chances, "a", "r/+", 44_777.0 / 143_444);
        is(family, chances, "e", "r/+", 38_221.0 / 71_722);
        is(family, chances, "i", "r/+", 1);
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "a sire put back to his daughter, enumerated",
            locator = "q = 1/10: one visual of three 8019/640000; none 589113/640000")
    void a_sire_and_his_daughter() {
        var seen = backCross().sawNormal("S", "D", "d1", "x2", "x3").saw("x1", "gene", "Shows");
        var withVisual = seen.infer("gene", new Assumptions(0.1, 0));

        likelihood(withVisual, 8019.0 / 640_000);
        is(seen, withVisual, "D", "r/+", 2.0 / 11);
        is(seen, withVisual, "x2", "r/+", 2.0 / 3);
        Genotype het = TestGenes.genotype("gene", "r/+");
        assertThat(
                        withVisual
                                .together(List.of(seen.id("x2"), seen.id("x3")))
                                .getOrDefault(List.of(het, het), 0.0))
                .isEqualTo(4.0 / 9, within(ROUNDING));

        var plain = backCross().sawNormal("S", "D", "d1", "x1", "x2", "x3");
        var without =
                plain.infer(new Assumptions(0.1, 0)).chancesAt(new LocusId("gene")).orElseThrow();

        likelihood(without, 589_113.0 / 640_000);
        is(plain, without, "S", "r/+", 937.0 / 7273);
        is(plain, without, "D", "r/+", 1270.0 / 7273);
        is(plain, without, "d1", "r/+", 873.0 / 7273);
        is(plain, without, "x1", "r/+", 806.0 / 7273);
    }

    private static TestPedigree backCross() {
        return family().founder("S", Sex.MALE)
                .founder("D", Sex.FEMALE)
                .young("d1", Sex.FEMALE, "D", "S")
                .young("x1", "d1", "S")
                .young("x2", "d1", "S")
                .young("x3", "d1", "S");
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "siblings mated, their parents a het and a plain or possible het, enumerated",
            locator = "six plain young: 13017/16384 and 9433/16384; b 4825/13017, 3801/9433")
    void siblings_mated() {
        var sure = siblings().said("D", "gene", "+/+");
        var chances = sure.infer("gene", new Assumptions(0, 0));

        likelihood(chances, 13_017.0 / 16_384);
        is(sure, chances, "b", "r/+", 4825.0 / 13_017);
        is(sure, chances, "o0", "r/+", 4582.0 / 13_017);

        var perhaps = siblings().het("D", "gene", "r", Fraction.HALF);
        var again = perhaps.infer("gene", new Assumptions(0, 0));

        likelihood(again, 9433.0 / 16_384);
        is(perhaps, again, "D", "r/+", 5849.0 / 18_866);
        is(perhaps, again, "b", "r/+", 3801.0 / 9433);
        is(perhaps, again, "o0", "r/+", 3558.0 / 9433);
    }

    private static TestPedigree siblings() {
        var family =
                family().founder("S", Sex.MALE)
                        .founder("D", Sex.FEMALE)
                        .said("S", "gene", "r/+")
                        .young("b", Sex.MALE, "D", "S")
                        .young("c", Sex.FEMALE, "D", "S")
                        .sawNormal("S", "D", "b", "c");
        for (var i = 0; i < 6; i++) {
            family.young("o" + i, "c", "b").sawNormal("o" + i);
        }
        return family;
    }

    private static TestPedigree family() {
        return new TestPedigree(
                new TestGenes().locus("gene", List.of("r"), "r/r", "Shows").model());
    }

    private static void likelihood(LocusChances chances, double expected) {
        assertThat(Math.exp(chances.logLikelihood()) / expected).isEqualTo(1, within(ROUNDING));
    }

    private static void is(
            TestPedigree family,
            LocusChances chances,
            String tag,
            String genotype,
            double expected) {
        assertThat(family.chance(chances, tag, genotype))
                .as("%s %s", tag, genotype)
                .isEqualTo(expected, within(ROUNDING));
    }
}
