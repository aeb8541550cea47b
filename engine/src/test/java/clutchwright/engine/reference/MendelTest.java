package clutchwright.engine.reference;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.casebook.TestGenes.chanceOf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/// Mendel's published counts against the ratios that the engine gives.
class MendelTest {

    private static final String MENDEL =
            "G. Mendel (1866) Versuche über Pflanzen-Hybriden, Verh. naturf. Ver. Brünn 4:3-47";

    /// Every genotype has a look of its own; both dominant is the wild type, which shows nothing.
    private final GeneticModel peas =
            new TestGenes()
                    .locus("a", List.of("a"), "a/+", "Aa", "a/a", "aa")
                    .locus("b", List.of("b"), "b/+", "Bb", "b/b", "bb")
                    .locus("c", List.of("c"), "c/+", "Cc", "c/c", "cc")
                    .model();

    @Test
    @Reference(
            kind = Kind.PUBLISHED,
            source = MENDEL + "; English in W. Bateson (1902) Mendel's Principles of Heredity",
            locator = "seven monohybrid crosses, Bateson pp. 52 and 54; chi-squares derived")
    void seven_crosses_of_hybrids_fit_three_to_one() {
        var model = new TestGenes().recessive("character", "Recessive").model();
        var hybrid = animal("character", "Recessive/+");
        var cross = Cross.of(model, hybrid, hybrid);
        var ratio = List.of(chanceOf(cross, "Normal"), chanceOf(cross, "Recessive"));
        var expected = new LinkedHashMap<List<Integer>, Fraction>();
        expected.put(List.of(5474, 1850), Fraction.of(1444, 5493));
        expected.put(List.of(6022, 2001), Fraction.of(361, 24069));
        expected.put(List.of(705, 224), Fraction.of(363, 929));
        expected.put(List.of(882, 299), Fraction.of(75, 1181));
        expected.put(List.of(428, 152), Fraction.of(196, 435));
        expected.put(List.of(651, 207), Fraction.of(50, 143));
        expected.put(List.of(787, 277), Fraction.of(242, 399));

        expected.forEach(
                (counts, value) -> assertThat(ChiSquare.of(counts, ratio)).isEqualTo(value));
        var sum =
                expected.keySet().stream()
                        .map(counts -> ChiSquare.of(counts, ratio))
                        .reduce(Fraction.NONE, Fraction::plus);
        // Printed with four decimals.
        assertThat(sum.value()).isCloseTo(2.1389, within(0.00005));
    }

    @Test
    @Reference(
            kind = Kind.PUBLISHED,
            source = MENDEL + "; quoted in T.H. Morgan (1903) Evolution and Adaptation",
            locator = "556 seeds of 15 plants: 315, 101, 108, 32; chi-square 196/417 derived")
    void two_characters_fit_nine_to_three_to_three_to_one() {
        var model =
                new TestGenes().recessive("form", "Angular").recessive("colour", "Green").model();
        var hybrid = animal("form", "Angular/+", "colour", "Green/+");
        var cross = Cross.of(model, hybrid, hybrid);

        var value =
                ChiSquare.of(
                        List.of(315, 101, 108, 32),
                        List.of(
                                chanceOf(cross, "Normal"),
                                chanceOf(cross, "Angular"),
                                chanceOf(cross, "Green"),
                                chanceOf(cross, "Angular Green")));

        assertThat(value).isEqualTo(Fraction.of(196, 417));
    }

    @Test
    @Reference(
            kind = Kind.FROM_MEMORY,
            source = MENDEL + "; R.A. Fisher (1936) Annals of Science 1:115-137",
            locator = "529 plants proved by their offspring; Fisher's 2.8110")
    void nine_genotypes_of_two_characters_fit_their_ratio() {
        var counts =
                counts(
                        "AABB 38, AAbb 35, aaBB 28, aabb 30, AABb 65, aaBb 68, AaBB 60, Aabb 67,"
                                + " AaBb 138");

        var hybrid = animal("a", "a/+", "b", "b/+");

        // Printed with four decimals.
        assertThat(chiSquare(counts, hybrid, hybrid).value()).isCloseTo(2.8110, within(0.00005));
    }

    @Test
    @Reference(
            kind = Kind.FROM_MEMORY,
            source = MENDEL + "; R.A. Fisher (1936) Annals of Science 1:115-137",
            locator = "639 plants of three characters; Fisher's 15.3224")
    void twenty_seven_genotypes_of_three_characters_fit_their_ratio() {
        var counts =
                counts(
                        "AABBCC 8, AABBcc 14, AAbbCC 9, AAbbcc 11, aaBBCC 8, aaBBcc 10, aabbCC 10,"
                                + " aabbcc 7, AABBCc 22, AAbbCc 17, aaBBCc 25, aabbCc 20, AABbCC"
                                + " 15, AABbcc 18, aaBbCC 19, aaBbcc 24, AaBBCC 14, AaBBcc 18,"
                                + " AabbCC 20, Aabbcc 16, AABbCc 45, aaBbCc 36, AaBBCc 38, AabbCc"
                                + " 40, AaBbCC 49, AaBbcc 48, AaBbCc 78");

        var hybrid = animal("a", "a/+", "b", "b/+", "c", "c/+");

        // Printed with four decimals.
        assertThat(chiSquare(counts, hybrid, hybrid).value()).isCloseTo(15.3224, within(0.00005));
    }

    @Test
    @Reference(
            kind = Kind.PUBLISHED,
            source = MENDEL,
            locator = "reciprocal back-crosses, four experiments; chi-squares derived")
    void back_crosses_fit_one_to_one_to_one_to_one_whichever_parent_is_the_hybrid() {
        var hybrid = animal("a", "a/+", "b", "b/+");
        var dominant = ParentGenotype.WILD;
        var recessive = animal("a", "a/a", "b", "b/b");

        assertThat(chiSquare(counts("AABB 20, AABb 23, AaBB 25, AaBb 22"), hybrid, dominant))
                .isEqualTo(Fraction.of(26, 45));
        assertThat(chiSquare(counts("AABB 25, AABb 19, AaBB 22, AaBb 21"), dominant, hybrid))
                .isEqualTo(Fraction.of(25, 29));
        assertThat(chiSquare(counts("AaBb 31, Aabb 26, aaBb 27, aabb 26"), hybrid, recessive))
                .isEqualTo(Fraction.of(34, 55));
        assertThat(chiSquare(counts("AaBb 24, Aabb 25, aaBb 22, aabb 27"), recessive, hybrid))
                .isEqualTo(Fraction.of(26, 49));
    }

    @Test
    @Reference(
            kind = Kind.FROM_MEMORY,
            source = MENDEL,
            locator = "back-cross of flower colour and stem length: 47, 40, 38, 41")
    void the_fifth_back_cross_fits_too() {
        var hybrid = animal("a", "a/+", "b", "b/+");
        var recessive = animal("a", "a/a", "b", "b/b");

        assertThat(chiSquare(counts("AaBb 47, Aabb 40, aaBb 38, aabb 41"), hybrid, recessive))
                .isEqualTo(Fraction.of(90, 83));
    }

    private Fraction chiSquare(
            Map<String, Integer> counts, ParentGenotype dam, ParentGenotype sire) {
        var cross = Cross.of(peas, dam, sire);
        var chances = new ArrayList<Fraction>();
        counts.keySet().forEach(genotype -> chances.add(chanceOf(cross, nameOf(genotype))));
        return ChiSquare.of(List.copyOf(counts.values()), chances);
    }

    /// `AaBBcc` shows `Aa cc`.
    private static String nameOf(String genotype) {
        var forms = new ArrayList<String>();
        for (var i = 0; i < genotype.length(); i += 2) {
            var form = genotype.substring(i, i + 2);
            if (!Character.isUpperCase(form.charAt(1))) {
                forms.add(form);
            }
        }
        return forms.isEmpty() ? "Normal" : String.join(" ", forms);
    }

    private static Map<String, Integer> counts(String text) {
        var counts = new LinkedHashMap<String, Integer>();
        for (var entry : text.split(",\\s*", -1)) {
            var parts = entry.split("\\s+", -1);
            counts.put(parts[0], Integer.valueOf(parts[1]));
        }
        return counts;
    }
}
