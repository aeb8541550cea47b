package clutchwright.engine.casebook;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.casebook.TestGenes.carries;
import static clutchwright.engine.casebook.TestGenes.chanceOf;
import static clutchwright.engine.casebook.TestGenes.groups;
import static clutchwright.engine.casebook.TestGenes.outcome;
import static clutchwright.engine.casebook.TestGenes.perhaps;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference;
import clutchwright.engine.reference.Reference.Kind;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/// Many genes in one animal: what a single pairing of a longer project gives.
class A11_PyramidsTest {

    private static GeneticModel recessives(int count) {
        var genes = new TestGenes();
        for (var i = 0; i < count; i++) {
            genes.recessive("r" + i, "R" + i);
        }
        return genes.model();
    }

    private static ParentGenotype all(int count, String pair) {
        var animal = ParentGenotype.WILD;
        for (var i = 0; i < count; i++) {
            animal =
                    animal.with(
                            Distribution.certain(
                                    TestGenes.genotype("r" + i, pair.replace("R", "R" + i))));
        }
        return animal;
    }

    private static String allNames(int count) {
        var names = new ArrayList<String>();
        for (var i = 0; i < count; i++) {
            names.add("R" + i);
        }
        return String.join(" ", names);
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "independent assortment of k recessives",
            locator = "all visual (1/4)^k of hets, (1/2)^k of a het by a visual; k 1 to 5")
    void one_intercross_of_full_hets() {
        for (var k = 1; k <= 5; k++) {
            var hets = all(k, "R/+");
            var visuals = all(k, "R/R");
            assertThat(chanceOf(Cross.of(recessives(k), hets, hets), allNames(k)))
                    .isEqualTo(Fraction.of(1, 4).power(k));
            assertThat(chanceOf(Cross.of(recessives(k), hets, visuals), allNames(k)))
                    .isEqualTo(Fraction.HALF.power(k));
        }
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "1 - (1 - P)^n at least 95 % and 99 %",
            locator = "P 1/4: 11 and 17 eggs (not 16, as often printed); P 1/16: 47 and 72")
    void eggs_until_one_is_nearly_sure() {
        var one = Cross.of(recessives(1), all(1, "R/+"), all(1, "R/+"));
        var two = Cross.of(recessives(2), all(2, "R/+"), all(2, "R/+"));

        assertThat(eggsNeeded(one, "R0", 0.95)).isEqualTo(11);
        assertThat(eggsNeeded(one, "R0", 0.99)).isEqualTo(17);
        assertThat(eggsNeeded(two, "R0 R1", 0.95)).isEqualTo(47);
        assertThat(eggsNeeded(two, "R0 R1", 0.99)).isEqualTo(72);
    }

    private static int eggsNeeded(Cross cross, String name, double assurance) {
        var group = outcome(cross, name);
        var eggs = 1;
        while (cross.atLeastOne(group, eggs).value() < assurance) {
            eggs++;
        }
        return eggs;
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "two recessives from two visuals, the everyday project",
            locator = "double hets 1/16 and 5386591/16777216 in six eggs; half-way routes 1/4, 1/8")
    void two_recessives_from_two_visuals() {
        var model = recessives(2);
        var doubleHet = all(2, "R/+");
        var halfway = animal("r0", "R0/R0", "r1", "R1/+");
        var start = Cross.of(model, animal("r0", "R0/R0"), animal("r1", "R1/R1"));

        assertThat(groups(start)).isEqualTo("1/1 Normal");
        assertThat(carries(start, "Normal")).isEqualTo("1/1 R0, 1/1 R1");
        var straight = Cross.of(model, doubleHet, doubleHet);
        assertThat(straight.atLeastOne(outcome(straight, "R0 R1"), 6))
                .isEqualTo(Fraction.of(5_386_591, 16_777_216));
        assertThat(chanceOf(Cross.of(model, halfway, halfway), "R0 R1"))
                .isEqualTo(Fraction.of(1, 4));
        assertThat(chanceOf(Cross.of(model, halfway, doubleHet), "R0 R1"))
                .isEqualTo(Fraction.of(1, 8));
        var back = Cross.of(model, doubleHet, animal("r0", "R0/R0"));
        // A visual of the first gene that is het for the second: 1/2 * 1/2
        assertThat(chanceOf(back, "R0")).isEqualTo(Fraction.HALF);
        assertThat(carries(back, "R0")).isEqualTo("1/2 R1");
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "an incomplete dominant and a recessive together",
            locator = "D r-het by r/r: 1/4; D r-het twice: 1/16, 1/8, and 1/6 where D/D dies")
    void an_incomplete_dominant_with_a_recessive() {
        var genes = new TestGenes().incomplete("d", "D").recessive("r", "R");
        var both = animal("d", "D/+", "r", "R/+");

        assertThat(chanceOf(Cross.of(genes.model(), both, animal("r", "R/R")), "D R"))
                .isEqualTo(Fraction.of(1, 4));
        var intercross = Cross.of(genes.model(), both, both);
        assertThat(chanceOf(intercross, "Super D R")).isEqualTo(Fraction.of(1, 16));
        assertThat(chanceOf(intercross, "D R")).isEqualTo(Fraction.of(1, 8));
        var lethal = genes.viability("d", "D/D", Fraction.NONE).model();
        assertThat(chanceOf(Cross.of(lethal, both, both), "D R")).isEqualTo(Fraction.of(1, 6));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "two alleles of one series and a recessive",
            locator = "M/L r/r from M/+ r-het by L/+ r-het: 1/16; from M/L visuals: 1/2")
    void a_compound_of_a_series_with_a_recessive() {
        var model =
                new TestGenes()
                        .locus(
                                "s",
                                List.of("M", "L"),
                                "M/+",
                                "M",
                                "L/+",
                                "L",
                                "M/M",
                                "MM",
                                "L/M",
                                "ML",
                                "L/L",
                                "LL")
                        .recessive("r", "R")
                        .model();

        assertThat(
                        chanceOf(
                                Cross.of(
                                        model,
                                        animal("s", "M/+", "r", "R/+"),
                                        animal("s", "L/+", "r", "R/+")),
                                "ML R"))
                .isEqualTo(Fraction.of(1, 16));
        var compound = animal("s", "L/M", "r", "R/R");
        assertThat(chanceOf(Cross.of(model, compound, compound), "ML R")).isEqualTo(Fraction.HALF);
    }

    @Test
    void thirty_incomplete_dominants_are_counted_and_ranked_without_being_listed() {
        var genes = new TestGenes();
        var parent = ParentGenotype.WILD;
        for (var i = 10; i < 40; i++) {
            genes.incomplete("d" + i, "D" + i);
            parent = parent.with(Distribution.certain(TestGenes.genotype("d" + i, "D" + i + "/+")));
        }
        var cross = Cross.of(genes.model(), parent, parent);

        assertThat(cross.outcomeCount()).isEqualTo(BigInteger.valueOf(3).pow(30));
        var best = cross.groups(61);
        // All single, then with one of thirty normal or super: 2^-30 and half of that.
        assertThat(best.getFirst().chance()).isEqualTo(Fraction.HALF.power(30));
        assertThat(best.subList(1, 61))
                .allMatch(group -> group.chance().equals(Fraction.HALF.power(31)));
        assertThat(best.get(1).name()).startsWith("D10 D11").endsWith("D37 D38");
        assertThat(best.get(2).name()).startsWith("D10 D11").endsWith("D38 Super D39");
        assertThat(best.getLast().name()).startsWith("Super D10 D11");
    }

    @Test
    void chances_beyond_a_long_stay_exact() {
        var genes = new TestGenes();
        var parent = ParentGenotype.WILD;
        for (var i = 10; i < 50; i++) {
            genes.recessive("r" + i, "R" + i);
            parent = perhaps(parent, "r" + i, "R" + i + "/+", Fraction.of(2, 3));
        }
        var cross = Cross.of(genes.model(), parent, parent);

        // Each gene is visual at 1/9.
        assertThat(cross.groups(1).getFirst().chance()).isEqualTo(Fraction.of(8, 9).power(40));
        assertThat(cross.groups(41).getLast().chance())
                .isEqualTo(Fraction.of(8, 9).power(39).times(Fraction.of(1, 9)));
        assertThat(cross.outcomeCount()).isEqualTo(BigInteger.TWO.pow(40));
    }
}
