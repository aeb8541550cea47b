package clutchwright.engine.reasons;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.casebook.TestPedigree;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.probability.BayesFactor;
import clutchwright.engine.probability.Fraction;
import java.util.List;
import org.junit.jupiter.api.Test;

/// Why an animal is thought to carry something; factors are written as the algebra.
class ReasonsTest {

    private static final Assumptions EXACT_EYES = new Assumptions(0.01, 0);
    private static final Allele CLOWN = new Allele(new LocusId("clown"), "Clown");

    @Test
    void six_plain_hatchlings_with_a_visual_mate_are_one_in_sixty_four_if_she_were_het() {
        var family = clowns().founder("Ada").founder("Bo");
        family.het("Ada", "clown", "Clown", Fraction.of(2, 3)).said("Bo", "clown", "Clown/Clown");
        hatch(family, "H", 6, "Ada", "Bo");

        var why = why(family, "Ada");

        assertThat(why.chance()).isEqualTo(1.0 / 33, within(1e-14));
        var reason = ofYoung(why, family, "Bo");
        assertThat(reason.source())
                .isInstanceOfSatisfying(
                        Source.Young.class,
                        young -> {
                            assertThat(young.mates()).containsExactly(family.id("Bo"));
                            assertThat(young.tally().young()).hasSize(6);
                            assertThat(young.tally().looks().values()).containsExactly(6);
                            assertThat(young.chanceIf()).hasValueCloseTo(1.0 / 64, within(1e-14));
                            assertThat(young.chanceIfNot()).hasValueCloseTo(1.0, within(1e-14));
                        });
        assertThat(reason.factor().value()).isEqualTo(1.0 / 64, within(1e-14));
        assertThat(reason.factor().strength()).isEqualTo(BayesFactor.Strength.STRONG);
        assertThat(reason.chanceWithout()).hasValueCloseTo(2.0 / 3, within(1e-14));
    }

    @Test
    void a_claim_weighs_its_odds_over_those_of_the_background() {
        var family = clowns().founder("Ada").het("Ada", "clown", "Clown", Fraction.of(2, 3));

        var why = why(family, "Ada");

        var carrying = 2 * 0.01 * 0.99 + 0.01 * 0.01;
        assertThat(why.prior()).isEqualTo(carrying, within(1e-15));
        assertThat(why.strongestFirst())
                .singleElement()
                .satisfies(
                        reason -> {
                            assertThat(reason.source()).isInstanceOf(Source.OwnClaim.class);
                            assertThat(reason.factor().value())
                                    .isEqualTo(2 / (carrying / (1 - carrying)), within(1e-10));
                        });
    }

    @Test
    void without_loops_the_factors_multiply() {
        var family = clowns().founder("Ada").founder("Bo").founder("Max").founder("Rex");
        family.het("Ada", "clown", "Clown", Fraction.HALF)
                .said("Bo", "clown", "Clown/Clown")
                .het("Max", "clown", "Clown", Fraction.of(1, 3))
                .sawNormal("Ada");
        hatch(family, "H", 2, "Ada", "Bo");
        hatch(family, "K", 3, "Ada", "Max");
        hatch(family, "L", 1, "Ada", "Rex");

        var why = why(family, "Ada");

        assertThat(why.multiply()).isTrue();
        // Of a half het, whatever she looks like: 1/4 with Bo; with Max (2/3 + 1/3 (3/4)^3).
        var withMax = 2.0 / 3 + 27.0 / 192;
        assertThat(ofYoung(why, family, "Bo").factor().value()).isEqualTo(1.0 / 4, within(1e-14));
        assertThat(ofYoung(why, family, "Max").factor().value()).isEqualTo(withMax, within(1e-14));
    }

    @Test
    void in_a_loop_they_do_not_and_that_is_said() {
        var family = clowns().founder("Ada").founder("Bo");
        family.het("Ada", "clown", "Clown", Fraction.HALF)
                .het("Bo", "clown", "Clown", Fraction.HALF);
        family.young("Cy", "Ada", "Bo").sawNormal("Cy");
        hatch(family, "B", 4, "Ada", "Bo");
        hatch(family, "H", 4, "Ada", "Cy");

        assertThat(why(family, "Ada").multiply()).isFalse();
    }

    @Test
    void a_visual_hatchling_leaves_no_doubt_and_so_does_each_of_two() {
        var family = clowns().founder("Ada").founder("Bo").founder("Max");
        family.sawNormal("Ada", "Bo", "Max")
                .young("Cy", "Ada", "Bo")
                .saw("Cy", "clown", "Clown")
                .young("Di", "Ada", "Max")
                .saw("Di", "clown", "Clown");

        var why = why(family, "Ada");

        assertThat(why.chance()).isEqualTo(1, within(1e-12));
        assertThat(why.strongestFirst())
                .filteredOn(Reason::settles)
                .hasSize(2)
                .allSatisfy(reason -> assertThat(reason.source()).isInstanceOf(Source.Young.class));
        assertThat(why.multiply()).isFalse();
    }

    @Test
    void a_plain_hatchling_owes_its_chance_to_its_parents_and_loses_by_its_looks() {
        var family =
                clowns().founder("Ada")
                        .founder("Bo")
                        .young("Cy", "Ada", "Bo")
                        .het("Ada", "clown", "Clown", Fraction.WHOLE)
                        .het("Bo", "clown", "Clown", Fraction.WHOLE)
                        .sawNormal("Cy");

        var why = why(family, "Cy");

        assertThat(why.strongestFirst())
                .satisfiesExactly(
                        first -> {
                            assertThat(first.source()).isEqualTo(new Source.ParentsSide(2));
                            assertThat(first.parts())
                                    .extracting(Reason::source)
                                    .containsExactlyInAnyOrder(
                                            new Source.Ancestor(family.id("Ada"), 1),
                                            new Source.Ancestor(family.id("Bo"), 1));
                        },
                        second -> {
                            assertThat(second.source()).isInstanceOf(Source.OwnSighting.class);
                            // Odds 3 before anybody looked, 2 after.
                            assertThat(second.factor().value()).isEqualTo(2.0 / 3, within(1e-14));
                        });
    }

    @Test
    void a_clutch_of_two_possible_sires_speaks_of_the_one_who_may_carry() {
        var family = clowns().founder("Ada").founder("Bo").founder("Carl");
        family.het("Ada", "clown", "Clown", Fraction.WHOLE)
                .said("Bo", "clown", "Clown/Clown")
                .het("Carl", "clown", "Clown", Fraction.HALF);
        for (var n = 1; n <= 6; n++) {
            family.youngOfEither("H" + n, "clutch", "Ada", "Bo", "Carl");
            if (n <= 2) {
                family.saw("H" + n, "clown", "Clown");
            } else {
                family.sawNormal("H" + n);
            }
        }

        var why = why(family, "Carl");

        // 145/209 with the clutch, one half without.
        assertThat(why.strongestFirst())
                .filteredOn(reason -> reason.source() instanceof Source.Young)
                .singleElement()
                .satisfies(
                        reason ->
                                assertThat(reason.factor().value())
                                        .isEqualTo(145.0 / 64, within(1e-10)));
    }

    @Test
    void a_visual_sibling_proves_the_parents_and_makes_a_plain_one_a_possible_het() {
        var family = clowns().founder("Ada").founder("Bo").sawNormal("Ada", "Bo");
        family.young("Cy", "Ada", "Bo").sawNormal("Cy");
        family.young("Di", "Ada", "Bo").saw("Di", "clown", "Clown");

        var why = why(family, "Cy");

        assertThat(why.chance()).isEqualTo(2.0 / 3, within(1e-12));
        var side = why.strongestFirst().getFirst();
        assertThat(side.source()).isInstanceOf(Source.ParentsSide.class);
        assertThat(side.parts().getFirst().source())
                .isInstanceOfSatisfying(
                        Source.Siblings.class,
                        siblings -> {
                            assertThat(siblings.full()).isTrue();
                            assertThat(siblings.tally().young()).containsExactly(family.id("Di"));
                        });
    }

    @Test
    void without_a_background_a_claim_may_be_all_that_makes_the_rest_possible() {
        var family = clowns().founder("Ada").founder("Bo");
        family.het("Ada", "clown", "Clown", Fraction.WHOLE)
                .het("Bo", "clown", "Clown", Fraction.WHOLE)
                .young("Cy", "Ada", "Bo")
                .saw("Cy", "clown", "Clown");

        var why =
                Reasons.of(family.infer(new Assumptions(0, 0)), family.id("Ada"), CLOWN)
                        .orElseThrow();

        assertThat(why.prior()).isZero();
        assertThat(why.strongestFirst())
                .filteredOn(reason -> reason.source() instanceof Source.OwnClaim)
                .singleElement()
                .satisfies(reason -> assertThat(reason.chanceWithout()).isEmpty());
    }

    private static Reasons why(TestPedigree family, String tag) {
        return Reasons.of(family.infer(EXACT_EYES), family.id(tag), CLOWN).orElseThrow();
    }

    private static Reason ofYoung(Reasons why, TestPedigree family, String mate) {
        return why.strongestFirst().stream()
                .filter(
                        reason ->
                                reason.source() instanceof Source.Young young
                                        && young.mates().equals(List.of(family.id(mate))))
                .findFirst()
                .orElseThrow();
    }

    private static void hatch(
            TestPedigree family, String prefix, int count, String dam, String sire) {
        for (var n = 1; n <= count; n++) {
            family.young(prefix + n, dam, sire).sawNormal(prefix + n);
        }
    }

    private static TestPedigree clowns() {
        return new TestPedigree(new TestGenes().recessive("clown", "Clown").model());
    }
}
