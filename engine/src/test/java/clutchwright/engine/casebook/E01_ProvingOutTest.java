package clutchwright.engine.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.probability.BayesFactor;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.proof.CarrierTest;
import clutchwright.engine.proof.ClutchEvidence;
import clutchwright.engine.proof.TestMating;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/// Is she het? What the clutches say, and with whom to find out.
class E01_ProvingOutTest {

    private static final Assumptions NO_DOUBT = new Assumptions(0, 0);

    @Test
    void six_plain_hatchlings_of_a_visual_mate_are_one_in_sixty_four_if_she_were_het() {
        var family = possibleHetAndVisual();
        hatch(family, 6, "Ada", "Bo");

        var test = clown(family, "Ada", NO_DOUBT);

        assertThat(test.evidence()).hasSize(1);
        assertThat(factorOf(test.evidence().getFirst())).isEqualTo(1.0 / 64, within(1e-14));
        assertThat(test.evidence().getFirst().chanceWithout()).isEqualTo(2.0 / 3, within(1e-14));
        assertThat(test.evidence().getFirst().looks().sequencedValues()).containsExactly(6);
        assertThat(test.chance()).isEqualTo(1.0 / 33, within(1e-14));
    }

    @Test
    void each_clutch_of_hers_is_weighed_by_itself_in_the_order_of_hatching() {
        var family = possibleHetAndVisual().founder("Cy").said("Cy", "clown", "Clown/+");
        for (var n = 1; n <= 2; n++) {
            family.young("L" + n, LocalDate.of(2025, 8, n), "Ada", "Bo").sawNormal("L" + n);
            family.young("C" + n, LocalDate.of(2024, 7, n), "Ada", "Cy").sawNormal("C" + n);
            family.young("E" + n, LocalDate.of(2023, 7, n), "Ada", "Bo").sawNormal("E" + n);
        }

        var clutches = clown(family, "Ada", NO_DOUBT).evidence();

        assertThat(clutches).hasSize(3);
        assertThat(clutches.getFirst().young()).containsExactly(family.id("E1"), family.id("E2"));
        assertThat(clutches.get(1).sires()).containsExactly(family.id("Cy"));
        // (1/2)^2, (3/4)^2, (1/2)^2
        assertThat(clutches.stream().map(E01_ProvingOutTest::factorOf))
                .usingComparatorForType((a, b) -> Math.abs(a - b) < 1e-12 ? 0 : 1, Double.class)
                .containsExactly(1.0 / 4, 9.0 / 16, 1.0 / 4);
    }

    @Test
    void young_of_whom_nobody_looked_say_nothing() {
        var family = possibleHetAndVisual().young("Kim", "Ada", "Bo");

        var clutch = clown(family, "Ada", NO_DOUBT).evidence().getFirst();

        assertThat(clutch.looked()).isZero();
        assertThat(factorOf(clutch)).isEqualTo(1, within(1e-15));
    }

    @Test
    void one_visual_hatchling_proves_for_ever() {
        var family = possibleHetAndVisual();
        hatch(family, 3, "Ada", "Bo");
        family.young("Kim", LocalDate.of(2025, 8, 1), "Ada", "Bo").saw("Kim", "clown", "Clown");

        var test = clown(family, "Ada", NO_DOUBT);

        assertThat(test.chance()).isEqualTo(1);
        assertThat(test.chanceOfNot()).isZero();
        assertThat(test.evidence().getFirst().factor()).isEmpty();
        assertThat(factorOf(test.evidence().getLast())).isInfinite();
        assertThat(with(test, family, "Bo").needed(0.05)).isEmpty();
        assertThat(with(test, family, "Bo").bits(6)).isZero();
    }

    @Test
    void where_a_look_may_be_misread_no_hatchling_proves_alone() {
        var family = possibleHetAndVisual();
        family.young("Kim", "Ada", "Bo").saw("Kim", "clown", "Clown");
        var e = 0.01;

        var test = clown(family, "Ada", new Assumptions(0, e));

        // The only clutch: half of a carrier's young are Clown, read right or misread.
        assertThat(factorOf(test.evidence().getFirst()))
                .isEqualTo(((1 - e) / 2 + e / 2) / e, within(1e-10));
        // Ever more plain hatchlings still bring the chance down.
        assertThat(with(test, family, "Bo").limit()).isZero();
        assertThat(with(test, family, "Bo").needed(0.05)).isPresent();
    }

    @Test
    void a_possible_het_as_mate_may_never_settle_it() {
        var family = possibleHetAndVisual().founder("Cy", Sex.MALE);
        family.het("Cy", "clown", "Clown", Fraction.HALF)
                .het("Ada", "clown", "Clown", Fraction.HALF);

        var mating = with(clown(family, "Ada", NO_DOUBT), family, "Cy");

        // Both het, the first alone, the second alone and neither are a quarter each.
        assertThat(mating.limit()).isEqualTo(1.0 / 3, within(1e-12));
        assertThat(mating.needed(0.05)).isEmpty();
        assertThat(mating.needed(0.34)).isPresent();
        // A quarter of the time both are, and then (3/4)^6 of clutches show nothing.
        assertThat(mating.chanceOfTrait(6))
                .isEqualTo(0.25 * (1 - Math.pow(0.75, 6)), within(1e-15));
    }

    @Test
    void siblings_as_test_mates_are_judged_together() {
        var family =
                clowns().founder("Ma", Sex.FEMALE)
                        .founder("Pa", Sex.MALE)
                        .het("Ma", "clown", "Clown", Fraction.HALF)
                        .said("Pa", "clown", "+/+")
                        .young("Ada", Sex.FEMALE, "Ma", "Pa")
                        .young("Bo", Sex.MALE, "Ma", "Pa")
                        .sawNormal("Ada", "Bo");

        var mating = with(clown(family, "Ada", NO_DOUBT), family, "Bo");

        // Apart each is het at 1/4; together both are at 1/8, not 1/16.
        assertThat(mating.chanceOfTrait(1)).isEqualTo(1.0 / 8 / 4, within(1e-15));
    }

    @Test
    void taken_apart_strangers_give_the_same_and_siblings_do_not() {
        var family =
                clowns().founder("Ma", Sex.FEMALE)
                        .founder("Pa", Sex.MALE)
                        .het("Ma", "clown", "Clown", Fraction.HALF)
                        .said("Pa", "clown", "+/+")
                        .young("Ada", Sex.FEMALE, "Ma", "Pa")
                        .young("Bo", Sex.MALE, "Ma", "Pa")
                        .founder("Cy", Sex.MALE)
                        .said("Cy", "clown", "Clown/+")
                        .sawNormal("Ada", "Bo");
        var test = clown(family, "Ada", NO_DOUBT);

        var sibling = test.withEachApart(List.of(family.id("Bo"))).getFirst();
        var stranger = test.withEachApart(List.of(family.id("Cy"))).getFirst();

        assertThat(sibling.chanceOfTrait(1)).isEqualTo(1.0 / 16 / 4, within(1e-15));
        assertThat(stranger.chanceOfTrait(1)).isEqualTo(1.0 / 4 / 4, within(1e-15));
        assertThat(with(test, family, "Cy").chanceOfTrait(1)).isEqualTo(1.0 / 16, within(1e-15));
    }

    @Test
    void the_best_mate_is_the_one_who_settles_it_with_the_fewest_hatchlings() {
        var family =
                possibleHetAndVisual()
                        .founder("Het", Sex.MALE)
                        .founder("Plain", Sex.MALE)
                        .founder("Perhaps", Sex.MALE)
                        .founder("Eve", Sex.FEMALE)
                        .said("Het", "clown", "Clown/+")
                        .said("Plain", "clown", "+/+")
                        .het("Perhaps", "clown", "Clown", Fraction.HALF);

        var matings =
                clown(family, "Ada", NO_DOUBT)
                        .withEach(
                                List.of(
                                        family.id("Plain"),
                                        family.id("Perhaps"),
                                        family.id("Het"),
                                        family.id("Eve"),
                                        family.id("Bo")));

        assertThat(matings.stream().map(TestMating::mate))
                .containsExactly(
                        family.id("Bo"),
                        family.id("Het"),
                        family.id("Perhaps"),
                        family.id("Plain"));
        var plain = matings.getLast();
        assertThat(plain.telling()).isEmpty();
        assertThat(plain.bits(6)).isZero();
        assertThat(plain.limit()).isEqualTo(2.0 / 3, within(1e-12));
        assertThat(plain.needed(0.05)).isEmpty();
    }

    @Test
    void one_hatchling_of_a_visual_mate_is_worth_so_many_bits() {
        var family = possibleHetAndVisual().het("Ada", "clown", "Clown", Fraction.HALF);

        var mating = with(clown(family, "Ada", NO_DOUBT), family, "Bo");

        // One bit is unknown; three plain hatchlings of four leave the odds at one to two.
        var left = 0.75 * -(Math.log(1.0 / 3) / 3 + Math.log(2.0 / 3) * 2 / 3) / Math.log(2);
        assertThat(mating.bits(1)).isEqualTo(1 - left, within(1e-14));
        // No clutch tells more than what is unknown.
        assertThat(mating.bits(60)).isEqualTo(1, within(1e-9)).isLessThanOrEqualTo(1 + 1e-12);
        assertThat(mating.bits(0)).isZero();
    }

    @Test
    void a_white_one_is_split_by_what_its_young_by_a_normal_show() {
        var genes =
                new TestGenes()
                        .locus(
                                "white",
                                List.of("M", "L"),
                                "M/+",
                                "M look",
                                "L/+",
                                "L look",
                                "M/M",
                                "White",
                                "L/M",
                                "White",
                                "L/L",
                                "White");
        var family =
                new TestPedigree(genes.model())
                        .founder("Ada", Sex.FEMALE)
                        .founder("Bo", Sex.MALE)
                        .said(
                                "Ada",
                                "white",
                                TestGenes.chances(
                                        "white", "M/M", Fraction.HALF, "L/M", Fraction.HALF))
                        .said("Bo", "white", "+/+")
                        .saw("Ada", "white", "White");
        var test = test(family, "Ada", "white", "L", NO_DOUBT);

        var mating = with(test, family, "Bo");

        assertThat(test.showsAtSight()).isFalse();
        assertThat(mating.telling()).containsExactly(TestGenes.form("white", "L look"));
        // (1/2)^n of a carrier's clutches show M alone.
        assertThat(mating.chanceAfter(0, 4)).hasValueCloseTo(1.0 / 17, within(1e-14));
        assertThat(mating.needed(0.05)).hasValue(5);
        assertThat(mating.chanceAfter(1, 3)).hasValue(1);
    }

    @Test
    void what_shows_needs_a_look_and_no_test() {
        var genes = new TestGenes().incomplete("pastel", "Pastel").recessive("clown", "Clown");
        var family = new TestPedigree(genes.model()).founder("Ada", Sex.FEMALE);

        assertThat(test(family, "Ada", "pastel", "Pastel", NO_DOUBT).showsAtSight()).isTrue();
        assertThat(test(family, "Ada", "clown", "Clown", NO_DOUBT).showsAtSight()).isFalse();
    }

    @Test
    void a_recessive_that_kills_cannot_be_proven_by_what_hatches() {
        var genes =
                new TestGenes()
                        .locus("spot", List.of("Lethal"))
                        .viability("spot", "Lethal/Lethal", Fraction.NONE);
        var family =
                new TestPedigree(genes.model())
                        .founder("Ada", Sex.FEMALE)
                        .founder("Bo", Sex.MALE)
                        .het("Ada", "spot", "Lethal", Fraction.HALF)
                        .said("Bo", "spot", "Lethal/+");

        var mating = with(test(family, "Ada", "spot", "Lethal", NO_DOUBT), family, "Bo");

        assertThat(mating.telling()).isEmpty();
        assertThat(mating.limit()).isEqualTo(0.5, within(1e-15));
        assertThat(mating.needed(0.05)).isEmpty();
    }

    @Test
    void a_form_that_half_survives_is_rarer_among_what_hatches() {
        var genes =
                new TestGenes()
                        .recessive("clown", "Clown")
                        .viability("clown", "Clown/Clown", Fraction.HALF);
        var family =
                new TestPedigree(genes.model())
                        .founder("Ada", Sex.FEMALE)
                        .founder("Bo", Sex.MALE)
                        .het("Ada", "clown", "Clown", Fraction.HALF)
                        .said("Bo", "clown", "Clown/Clown");

        var mating = with(clown(family, "Ada", NO_DOUBT), family, "Bo");

        // Of four eggs two are Clown and one of them lives: a third of the hatchlings.
        assertThat(mating.detection(1)).hasValueCloseTo(1.0 / 3, within(1e-15));
        assertThat(mating.chanceAfter(0, 1)).hasValueCloseTo(2.0 / 5, within(1e-15));
    }

    @Test
    void a_sex_linked_recessive_shows_in_the_young_of_a_visual_mate() {
        var genes =
                new TestGenes()
                        .locus(
                                "link",
                                new Inheritance.SexLinked(Fraction.NONE),
                                List.of("Faded"),
                                "Faded/Faded",
                                "Faded");
        var family =
                new TestPedigree(genes.model())
                        .founder("Ada", Sex.FEMALE)
                        .founder("Bo", Sex.MALE)
                        .het("Ada", "link", "Faded", Fraction.HALF)
                        .said("Bo", "link", "Faded|Faded");

        var mating = with(test(family, "Ada", "link", "Faded", NO_DOUBT), family, "Bo");

        assertThat(mating.detection(1)).hasValueCloseTo(0.5, within(1e-15));
        assertThat(mating.needed(0.05)).hasValue(5);
    }

    @Test
    void a_male_whose_faded_gene_is_on_the_chromosome_of_his_sons_shows_it_in_sons_alone() {
        var genes =
                new TestGenes()
                        .locus(
                                "link",
                                new Inheritance.SexLinked(Fraction.NONE),
                                List.of("Faded"),
                                "Faded/Faded",
                                "Faded");
        var family =
                new TestPedigree(genes.model())
                        .founder("Ada", Sex.FEMALE)
                        .founder("Bo", Sex.MALE)
                        .said("Ada", "link", "Faded/Faded")
                        .said(
                                "Bo",
                                "link",
                                TestGenes.chances(
                                        "link", "+|Faded", Fraction.HALF, "+|+", Fraction.HALF));

        var mating = with(test(family, "Bo", "link", "Faded", NO_DOUBT), family, "Ada");

        // Half of the young are sons, and all of them show it.
        assertThat(mating.detection(1)).hasValueCloseTo(0.5, within(1e-15));
    }

    @Test
    void without_a_sex_there_is_no_test_mating() {
        var family = possibleHetAndVisual().founder("Uma");

        assertThat(clown(family, "Uma", NO_DOUBT).withEach(List.of(family.id("Bo")))).isEmpty();
        assertThat(clown(family, "Ada", NO_DOUBT).with(family.id("Uma"))).isEmpty();
    }

    @Test
    void a_clutch_of_one_of_two_males_speaks_for_each_as_far_as_he_may_be_the_sire() {
        var family =
                clowns().founder("Ada")
                        .founder("Bo")
                        .founder("Carl")
                        .said("Ada", "clown", "Clown/Clown")
                        .het("Bo", "clown", "Clown", Fraction.HALF)
                        .said("Carl", "clown", "+/+")
                        .youngOfEither("H1", "clutch", "Ada", "Bo", "Carl")
                        .youngOfEither("H2", "clutch", "Ada", "Bo", "Carl")
                        .sawNormal("H1", "H2");

        var clutch = clown(family, "Bo", NO_DOUBT).evidence().getFirst();

        // If he carries: half the time he is the sire, and then (1/2)^2.
        assertThat(factorOf(clutch)).isEqualTo((1 + 0.25) / 2, within(1e-14));
    }

    @Test
    void nonsense_is_refused() {
        var family = possibleHetAndVisual();
        var inference = family.infer(NO_DOUBT);
        var locus = new LocusId("clown");

        assertThatThrownBy(() -> CarrierTest.of(inference, family.id("Ada"), Allele.wildOf(locus)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(
                        () ->
                                CarrierTest.of(
                                        inference, family.id("Ada"), new Allele(locus, "Clwn")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(with(clown(family, "Ada", NO_DOUBT), family, "Bo").needed(0.99))
                .isEqualTo(OptionalInt.of(0));
    }

    private static double factorOf(ClutchEvidence clutch) {
        return clutch.factor().map(BayesFactor::value).orElseThrow();
    }

    private static void hatch(TestPedigree family, int young, String dam, String sire) {
        for (var n = 1; n <= young; n++) {
            family.young("H" + n, LocalDate.of(2024, 8, n), dam, sire).sawNormal("H" + n);
        }
    }

    private static TestMating with(CarrierTest test, TestPedigree family, String mate) {
        return test.with(family.id(mate)).orElseThrow();
    }

    private static CarrierTest clown(TestPedigree family, String tag, Assumptions assumptions) {
        return test(family, tag, "clown", "Clown", assumptions);
    }

    private static CarrierTest test(
            TestPedigree family, String tag, String locus, String allele, Assumptions assumptions) {
        return CarrierTest.of(
                        family.infer(assumptions),
                        family.id(tag),
                        new Allele(new LocusId(locus), allele))
                .orElseThrow();
    }

    /// Ada is a 66 % possible het, Bo a Clown.
    private static TestPedigree possibleHetAndVisual() {
        return clowns().founder("Ada", Sex.FEMALE)
                .founder("Bo", Sex.MALE)
                .het("Ada", "clown", "Clown", Fraction.of(2, 3))
                .said("Bo", "clown", "Clown/Clown");
    }

    private static TestPedigree clowns() {
        return new TestPedigree(new TestGenes().recessive("clown", "Clown").model());
    }
}
