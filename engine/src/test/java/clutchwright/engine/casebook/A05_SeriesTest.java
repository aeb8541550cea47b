package clutchwright.engine.casebook;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.casebook.TestGenes.carries;
import static clutchwright.engine.casebook.TestGenes.groups;
import static clutchwright.engine.casebook.TestGenes.outcome;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference;
import clutchwright.engine.reference.Reference.Kind;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/// An allelic series: the blood groups, where O is the wild type, and look-alike compounds.
class A05_SeriesTest {

    private static final String CROSSES =
            """
            AA x AA : AA 1 : A 1
            AA x AO : AA 1/2, AO 1/2 : A 1
            AA x BB : AB 1 : AB 1
            AA x BO : AB 1/2, AO 1/2 : A 1/2, AB 1/2
            AA x AB : AA 1/2, AB 1/2 : A 1/2, AB 1/2
            AA x OO : AO 1 : A 1
            AO x AO : AA 1/4, AO 1/2, OO 1/4 : A 3/4, O 1/4
            AO x BB : AB 1/2, BO 1/2 : B 1/2, AB 1/2
            AO x BO : AB 1/4, AO 1/4, BO 1/4, OO 1/4 : A 1/4, B 1/4, AB 1/4, O 1/4
            AO x AB : AA 1/4, AB 1/4, AO 1/4, BO 1/4 : A 1/2, B 1/4, AB 1/4
            AO x OO : AO 1/2, OO 1/2 : A 1/2, O 1/2
            BB x BB : BB 1 : B 1
            BB x BO : BB 1/2, BO 1/2 : B 1
            BB x AB : AB 1/2, BB 1/2 : B 1/2, AB 1/2
            BB x OO : BO 1 : B 1
            BO x BO : BB 1/4, BO 1/2, OO 1/4 : B 3/4, O 1/4
            BO x AB : AB 1/4, AO 1/4, BB 1/4, BO 1/4 : A 1/4, B 1/2, AB 1/4
            BO x OO : BO 1/2, OO 1/2 : B 1/2, O 1/2
            AB x AB : AA 1/4, AB 1/2, BB 1/4 : A 1/4, B 1/4, AB 1/2
            AB x OO : AO 1/2, BO 1/2 : A 1/2, B 1/2
            OO x OO : OO 1 : O 1
            """;

    private final GeneticModel blood =
            new TestGenes()
                    .locus(
                            "abo",
                            List.of("A", "B"),
                            "A/+",
                            "A",
                            "A/A",
                            "A",
                            "B/+",
                            "B",
                            "B/B",
                            "B",
                            "A/B",
                            "AB")
                    .model();

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "K. Landsteiner (1901); F. Bernstein (1924): three alleles of one locus",
            locator = "all 21 crosses of the six genotypes, textbook table")
    void all_twenty_one_crosses_of_blood_groups() {
        var crosses = CROSSES.strip().split("\n", -1);
        assertThat(crosses).hasSize(21);
        for (var line : crosses) {
            var parts = line.split(" : ", -1);
            var parents = parts[0].split(" x ", -1);
            var cross = Cross.of(blood, blood(parents[0]), blood(parents[1]));

            assertThat(phenotypes(cross)).as(line).isEqualTo(Set.of(parts[2].split(", ", -1)));
            assertThat(genotypes(cross)).as(line).isEqualTo(Set.of(parts[1].split(", ", -1)));
        }
    }

    private static ParentGenotype blood(String genotype) {
        return animal("abo", pair(genotype));
    }

    /// `AO` is `A/+`.
    private static String pair(String genotype) {
        return genotype.replace('O', '+').replaceAll("(.)(.)", "$1/$2");
    }

    private static Set<String> phenotypes(Cross cross) {
        return cross.groups(9).stream()
                .map(group -> entry(group.name().replace("Normal", "O"), group.chance()))
                .collect(Collectors.toSet());
    }

    private static Set<String> genotypes(Cross cross) {
        var all = Set.of("AA", "AO", "AB", "BB", "BO", "OO");
        return all.stream()
                .map(
                        genotype -> {
                            var sum = Fraction.NONE;
                            for (var outcome : cross.likeliest(9)) {
                                var here =
                                        outcome.loci().isEmpty()
                                                ? genotype.equals("OO")
                                                        ? Fraction.WHOLE
                                                        : Fraction.NONE
                                                : outcome.loci()
                                                        .getFirst()
                                                        .genotypes()
                                                        .chanceOf(
                                                                TestGenes.genotype(
                                                                        "abo", pair(genotype)));
                                sum = sum.plus(outcome.chance().times(here));
                            }
                            return entry(genotype, sum);
                        })
                .filter(entry -> !entry.endsWith(" 0/1"))
                .collect(Collectors.toSet());
    }

    private static String entry(String what, Fraction chance) {
        return what + " " + (chance.isWhole() ? "1" : chance);
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Mendel's first law at a series M, L where MM, ML and LL look alike",
            locator = "M/L by M/+: a white one is M/M or M/L, half each")
    void a_look_that_several_pairs_share_reveals_none_of_their_alleles() {
        var model =
                new TestGenes()
                        .locus(
                                "blue-eyed",
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
                                "White")
                        .model();
        var cross = Cross.of(model, animal("blue-eyed", "M/L"), animal("blue-eyed", "M/+"));

        assertThat(groups(cross)).isEqualTo("1/2 White, 1/4 Le, 1/4 Mo");
        assertThat(carries(cross, "White")).isEqualTo("1/1 M, 1/2 L");
        assertThat(carries(cross, "Mo")).isEmpty();
    }

    @Test
    void allelic_recessives_never_give_a_normal_one() {
        var model =
                new TestGenes()
                        .locus(
                                "albino",
                                List.of("Albino", "Candy"),
                                "Albino/Albino",
                                "Albino",
                                "Candy/Candy",
                                "Candy",
                                "Albino/Candy",
                                "Candino")
                        .model();

        assertThat(
                        groups(
                                Cross.of(
                                        model,
                                        animal("albino", "Albino/Albino"),
                                        animal("albino", "Candy/Candy"))))
                .isEqualTo("1/1 Candino");
    }
}
