package clutchwright.engine.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.casebook.TestPedigree;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference.Kind;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/// What clutches say of their parents where it is more than one recessive: the sex chromosome of
/// a gene, a series that looks alike, the sire, a lethal.
class ClutchEvidenceTest {

    private static final String SEX_LINKED =
            "B.M. Mallery and M.M. Carrillo (2016), Phyllomedusa 15:29-42; T. Gamble et al. (2017),"
                    + " Current Biology 27:2148-2153 (the model)";
    private static final Assumptions NO_DOUBT = new Assumptions(0, 0);

    /// Exact values as doubles: a few roundings of 2^-53, and chances below 10^-12 left out.
    private static final double ROUNDING = 1e-11;

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = SEX_LINKED,
            locator =
                    "1 B male and 1 plain female from plain dams, r = 1/20: male maker at 361/362")
    void young_of_plain_dams_tell_which_chromosome_a_male_has_the_gene_on() {
        var family = ofPhaseUnknown().young("H1", Sex.MALE, "Dam", "Sire").saw("H1", "banana", "B");
        family.young("H2", Sex.FEMALE, "Dam", "Sire").sawNormal("H2");

        var chances = family.infer("banana", NO_DOUBT);

        assertThat(family.chance(chances, "Sire", "+|B")).isEqualTo(361.0 / 362, within(ROUNDING));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = SEX_LINKED,
            locator = "6 B males, 1 B female, 1 plain male, 5 plain females, r = 1/20: 19^9 to 1")
    void thirteen_young_of_which_two_crossed_over() {
        var family = ofPhaseUnknown();
        var kinds = List.of(6, 1, 1, 5);
        for (var kind = 0; kind < 4; kind++) {
            for (var i = 0; i < kinds.get(kind); i++) {
                var tag = "H" + kind + i;
                family.young(tag, kind % 2 == 0 ? Sex.MALE : Sex.FEMALE, "Dam", "Sire");
                if (kind < 2) {
                    family.saw(tag, "banana", "B");
                } else {
                    family.sawNormal(tag);
                }
            }
        }

        var chances = family.infer("banana", NO_DOUBT);

        // The other phase at 1 in 322687697779, nine digits of it.
        assertThat(family.chance(chances, "Sire", "B|+") * 322_687_697_780.0)
                .isEqualTo(1, within(1e-9));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = SEX_LINKED,
            locator =
                    "male maker by B female, r = 1/20: males 19/80, 1/4, 1/80 of all; son's phase")
    void a_son_has_his_phase_from_the_parent_that_gave_the_gene() {
        var family =
                new TestPedigree(banana())
                        .founder("Dam", Sex.FEMALE)
                        .founder("Plain", Sex.FEMALE)
                        .founder("Sire", Sex.MALE)
                        .said("Dam", "banana", "B/+")
                        .said("Plain", "banana", "+/+")
                        .said("Sire", "banana", "+|B")
                        .young("Son", Sex.MALE, "Plain", "Sire")
                        .saw("Son", "banana", "B")
                        .young("Daughter", Sex.FEMALE, "Plain", "Sire")
                        .saw("Daughter", "banana", "B")
                        .founder("PlainSire", Sex.MALE)
                        .said("PlainSire", "banana", "+|+")
                        .young("Grandson", Sex.MALE, "Daughter", "PlainSire")
                        .saw("Grandson", "banana", "B")
                        .young("Any", Sex.MALE, "Dam", "Sire");

        var chances = family.infer("banana", NO_DOUBT);

        assertThat(family.chance(chances, "Son", "+|B")).isEqualTo(1, within(ROUNDING));
        assertThat(family.chance(chances, "Grandson", "B|+")).isEqualTo(1, within(ROUNDING));
        // Of males, twice the share of all young.
        assertThat(family.chance(chances, "Any", "B|B")).isEqualTo(19.0 / 40, within(ROUNDING));
        assertThat(family.chance(chances, "Any", "+|+")).isEqualTo(1.0 / 40, within(ROUNDING));
    }

    private static TestPedigree ofPhaseUnknown() {
        return new TestPedigree(banana())
                .founder("Dam", Sex.FEMALE)
                .founder("Sire", Sex.MALE)
                .said("Dam", "banana", "+/+")
                .said("Sire", "banana", "B/+");
    }

    private static GeneticModel banana() {
        return new TestGenes()
                .sexLinked("banana", Fraction.of(1, 20), "B", "B/+", "B", "B/B", "Super B")
                .model();
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Mendel's first law at a series M, L where MM, ML and LL look alike",
            locator =
                    "white of M/L by M/+, n young from +/+ all M: M/M at 2^n/(2^n+1); of M/L by M/L"
                            + " 2^n/(2^n+2)")
    void a_white_one_is_told_by_its_young() {
        for (var n : new int[] {0, 1, 4, 8}) {
            var two = Math.pow(2, n);
            assertThat(white("M/+", n)).isEqualTo(two / (two + 1), within(ROUNDING));
            // Before the first young one L/L is open too.
            assertThat(white("L/M", n))
                    .isEqualTo(n == 0 ? 1.0 / 4 : two / (two + 2), within(ROUNDING));
        }
        assertThat(white("L/+", 0)).isEqualTo(0, within(ROUNDING));
    }

    /// The chance of M/M for a white one of an M/L dam, after young that are all M.
    private static double white(String sire, int young) {
        var whites =
                new TestGenes()
                        .locus(
                                "white",
                                List.of("M", "L"),
                                "M/+",
                                "Mo",
                                "L/+",
                                "Le",
                                "M/M",
                                "White",
                                "L/M",
                                "White",
                                "L/L",
                                "White");
        var family =
                new TestPedigree(whites.model())
                        .founder("Dam", Sex.FEMALE)
                        .founder("Sire", Sex.MALE)
                        .founder("Plain", Sex.FEMALE)
                        .said("Dam", "white", sire.equals("L/+") ? "M/+" : "L/M")
                        .said("Sire", "white", sire)
                        .said("Plain", "white", "+/+")
                        .young("White", Sex.MALE, "Dam", "Sire")
                        .saw("White", "white", "White");
        for (var i = 0; i < young; i++) {
            family.young("H" + i, "Plain", "White").saw("H" + i, "white", "Mo");
        }
        return family.chance(family.infer("white", NO_DOUBT), "White", "M/M");
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Bayes' rule over the possible sires",
            locator = "het dam; A visual, B 50 % het; none visual of six: A at 128/4953")
    void six_plain_young_speak_for_the_other_male() {
        var family =
                new TestPedigree(new TestGenes().recessive("clown", "Clown").model())
                        .founder("Dam")
                        .founder("A")
                        .founder("B")
                        .said("Dam", "clown", "Clown/+")
                        .said("A", "clown", "Clown/Clown")
                        .het("B", "clown", "Clown", Fraction.HALF);
        for (var i = 0; i < 6; i++) {
            family.youngOfEither("H" + i, "clutch", "Dam", "A", "B").sawNormal("H" + i);
        }

        assertThat(family.infer(NO_DOUBT).sireChances().get("clutch"))
                .hasEntrySatisfying(
                        family.id("A"),
                        chance -> assertThat(chance).isEqualTo(128.0 / 4953, within(ROUNDING)));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Mendel's first law, given survival",
            locator =
                    "recessive lethal: young of two hets het at 2/3, of a het and a plain one 1/2")
    void hatchlings_of_a_lethal_say_nothing_by_living() {
        var family =
                new TestPedigree(
                                new TestGenes()
                                        .locus("lethal", List.of("l"))
                                        .viability("lethal", "l/l", Fraction.NONE)
                                        .model())
                        .founder("Het")
                        .founder("Sire")
                        .founder("Perhaps")
                        .said("Het", "lethal", "l/+")
                        .said("Sire", "lethal", "l/+")
                        .het("Perhaps", "lethal", "l", Fraction.HALF)
                        .founder("Plain")
                        .said("Plain", "lethal", "+/+")
                        .young("OfTwo", "Het", "Sire")
                        .young("OfOne", "Plain", "Sire");
        for (var i = 0; i < 8; i++) {
            family.young("H" + i, "Perhaps", "Sire").sawNormal("H" + i);
        }

        var chances = family.infer("lethal", NO_DOUBT);

        assertThat(family.chance(chances, "OfTwo", "l/+")).isEqualTo(2.0 / 3, within(ROUNDING));
        assertThat(family.chance(chances, "OfOne", "l/+")).isEqualTo(0.5, within(ROUNDING));
        // Eight young were recorded because they lived; how many eggs there were is not said.
        assertThat(family.chance(chances, "Perhaps", "l/+")).isEqualTo(0.5, within(ROUNDING));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source =
                    "W. Booth et al. (2014) New insights on facultative parthenogenesis in pythons,"
                            + " Biol J Linn Soc 112:461-468 (terminal fusion)",
            locator =
                    "het dam, het again at y: y 0: 1/2, 0, 1/2; y 1/3: 1/3 each; y 2/3: 1/6, 2/3, 1/6")
    void half_clones_of_a_het_are_het_at_the_second_division_share() {
        for (var y : new double[] {0, 1.0 / 3, 2.0 / 3}) {
            var family = halfClone(List.of("r"), Fraction.WHOLE);

            var chances =
                    family.infer(new Assumptions(0, 0, 0, 0, y))
                            .chancesAt(new LocusId("gene"))
                            .orElseThrow();

            assertThat(family.chance(chances, "H", "r/r")).isEqualTo((1 - y) / 2, within(ROUNDING));
            assertThat(family.chance(chances, "H", "r/+")).isEqualTo(y, within(ROUNDING));
            assertThat(family.chance(chances, "H", "+/+")).isEqualTo((1 - y) / 2, within(ROUNDING));
        }
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "terminal fusion, given survival",
            locator =
                    "dam het for a homozygous lethal: carriers 0, 1/2 and 4/5 at y 0, 1/3 and 2/3")
    void half_clones_of_a_lethal_het() {
        var carriers = List.of(0.0, 1.0 / 2, 4.0 / 5);
        for (var i = 0; i < 3; i++) {
            var family = halfClone(List.of("r"), Fraction.NONE);

            var chances =
                    family.infer(new Assumptions(0, 0, 0, 0, i / 3.0))
                            .chancesAt(new LocusId("gene"))
                            .orElseThrow();

            assertThat(family.chance(chances, "H", "r/+"))
                    .isEqualTo(carriers.get(i), within(ROUNDING));
        }
    }

    private static TestPedigree halfClone(List<String> alleles, Fraction viability) {
        var genes = new TestGenes().locus("gene", alleles, "r/r", "Shows");
        var family =
                new TestPedigree(genes.viability("gene", "r/r", viability).model())
                        .founder("Dam", Sex.FEMALE)
                        .said("Dam", "gene", "r/+");
        return family.member(
                "H", Optional.empty(), new Parentage.Parthenogenetic(family.id("Dam")));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "half-clones of an XX dam are all daughters",
            locator = "five daughters, a male possible: odds of no sire times 2^5; one son: none")
    void sexes_of_a_clutch_speak_of_parthenogenesis() {
        for (var sons = 0; sons <= 1; sons++) {
            var family =
                    new TestPedigree(new TestGenes().recessive("clown", "Clown").model())
                            .founder("Dam", Sex.FEMALE);
            for (var i = 0; i < 5; i++) {
                family.young("H" + i, i < sons ? Sex.MALE : Sex.FEMALE, "Dam", "");
            }

            var inference = family.infer(NO_DOUBT.withParthenogenesis(0.1));

            // Prior odds 1 to 9.
            assertThat(inference.chanceOfNoSire(family.id("H4")))
                    .isEqualTo(sons == 0 ? 32.0 / (32 + 9) : 0, within(ROUNDING));
        }
    }
}
