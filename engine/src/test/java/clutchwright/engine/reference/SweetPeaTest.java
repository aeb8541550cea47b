package clutchwright.engine.reference;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.casebook.TestGenes.chanceOf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.Haplotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference.Kind;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/// The first linkage found: flower colour and pollen shape of sweet peas, both from one parent.
class SweetPeaTest {

    private static final String SOURCE =
            "W. Bateson, E.R. Saunders and R.C. Punnett (1905, 1906) Reports to the Evolution"
                    + " Committee of the Royal Society II, III";

    private static final String LATER =
            "R.C. Punnett (1917), the enlarged totals of the same cross";

    /// Purple long, purple round, red long, red round; red and round are the recessives.
    private static final List<String> LOOKS = List.of("Normal", "Round", "Red", "Red Round");

    private static final List<Integer> FIRST = List.of(284, 21, 21, 55);
    private static final List<Integer> ENLARGED = List.of(4831, 390, 393, 1338);

    @Test
    @Reference(
            kind = Kind.FROM_MEMORY,
            source = SOURCE,
            locator = "284, 21, 21, 55: chi-square 134.7282 against 9:3:3:1, derived")
    void the_first_count_is_not_that_of_two_genes_apart() {
        assertThat(ChiSquare.of(FIRST, chances(Fraction.HALF)).value())
                .isCloseTo(134.7282, within(5e-5));
    }

    @Test
    @Reference(
            kind = Kind.FROM_MEMORY,
            source = SOURCE,
            locator = "at r 0.1280427 expected 262.92, 22.83, 22.83, 72.42 of 381, derived")
    void the_first_count_is_expected_at_its_recombination() {
        // Half of the last figure that is printed.
        assertExpected(381, Fraction.of(1_280_427, 10_000_000), 262.92, 22.83, 22.83, 72.42);
    }

    @Test
    @Reference(
            kind = Kind.FROM_MEMORY,
            source = LATER,
            locator = "4831, 390, 393, 1338: chi-square 3371.5914; at r 0.1200523 4821.75, 392.25")
    void the_enlarged_count_agrees() {
        assertThat(ChiSquare.of(ENLARGED, chances(Fraction.HALF)).value())
                .isCloseTo(3371.5914, within(5e-5));
        assertExpected(6952, Fraction.of(1_200_523, 10_000_000), 4821.75, 392.25, 392.25, 1345.75);
    }

    private static void assertExpected(int plants, Fraction r, double... expected) {
        var chances = chances(r);
        IntStream.range(0, expected.length)
                .forEach(
                        i ->
                                assertThat(plants * chances.get(i).value())
                                        .as(LOOKS.get(i))
                                        .isCloseTo(expected[i], within(0.0051)));
    }

    private static List<Fraction> chances(Fraction r) {
        var model =
                new TestGenes()
                        .recessive("colour", "Red")
                        .recessive("pollen", "Round")
                        .linked(List.of("colour", "pollen"), r)
                        .model();
        var fromOneParent =
                Haplotype.of(
                        List.of(
                                new Allele(new LocusId("colour"), "Red"),
                                new Allele(new LocusId("pollen"), "Round")));
        var hybrid = animal("colour", "Red/+", "pollen", "Round/+").withTogether(fromOneParent);
        var cross = Cross.of(model, hybrid, hybrid);
        return LOOKS.stream().map(look -> chanceOf(cross, look)).toList();
    }
}
