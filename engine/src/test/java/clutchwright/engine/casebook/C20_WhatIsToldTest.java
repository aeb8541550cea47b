package clutchwright.engine.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.Held;
import clutchwright.engine.inference.Held.Basis;
import clutchwright.engine.inference.Posteriors;
import clutchwright.engine.probability.Fraction;
import org.junit.jupiter.api.Test;

/// What the keeper is told of an animal: the possible hets of the trade, and where they come
/// from.
class C20_WhatIsToldTest {

    private static final Assumptions NO_BACKGROUND =
            new Assumptions(0, 0.005).withAcquiredForLook(1).withClaimOfHalfKnown(true);
    private static final LocusId CLOWN = new LocusId("clown");

    @Test
    void a_plain_hatchling_of_two_hets_is_66_percent_whatever_the_misread_rate() {
        var family = hets(Fraction.WHOLE, Fraction.WHOLE);

        for (var misread : new double[] {0, 0.005, 0.3}) {
            var told = new Posteriors(family.infer(new Assumptions(0.005, misread)));
            assertThat(carrying(family, told, "Cy")).isEqualTo(Fraction.of(2, 3));
        }
    }

    @Test
    void plain_young_of_possible_hets_are_as_published() {
        assertThat(ofHets(Fraction.WHOLE, Fraction.NONE)).isEqualTo(Fraction.of(1, 2));
        assertThat(ofHets(Fraction.of(2, 3), Fraction.NONE)).isEqualTo(Fraction.of(1, 3));
        assertThat(ofHets(Fraction.HALF, Fraction.NONE)).isEqualTo(Fraction.of(1, 4));
        assertThat(ofHets(Fraction.HALF, Fraction.WHOLE)).isEqualTo(Fraction.of(4, 7));
        assertThat(ofHets(Fraction.of(2, 3), Fraction.WHOLE)).isEqualTo(Fraction.of(3, 5));
        assertThat(ofHets(Fraction.of(2, 3), Fraction.of(2, 3))).isEqualTo(Fraction.HALF);
        assertThat(ofHets(Fraction.HALF, Fraction.HALF)).isEqualTo(Fraction.of(2, 5));
    }

    @Test
    void nobody_looked_so_it_may_be_visual() {
        var family =
                clowns().founder("Ada")
                        .founder("Bo")
                        .young("Cy", "Ada", "Bo")
                        .het("Ada", "clown", "Clown", Fraction.WHOLE)
                        .het("Bo", "clown", "Clown", Fraction.WHOLE);

        var at = told(family, "Cy").loci().get(CLOWN);

        assertThat(at.genotypes().chanceOf(TestGenes.genotype("clown", "Clown/Clown")))
                .isEqualTo(Fraction.of(1, 4));
        assertThat(at.asRecorded()).isEqualTo(1);
    }

    @Test
    void a_visual_from_parents_that_nobody_took_for_hets_is_told_as_seen_and_doubted() {
        var family =
                clowns().founder("Ada")
                        .founder("Bo")
                        .young("Cy", "Ada", "Bo")
                        .sawNormal("Ada", "Bo")
                        .saw("Cy", "clown", "Clown");
        var told = new Posteriors(family.infer(Assumptions.KEEPER));

        var at = told.of(family.id("Cy")).loci().get(CLOWN);

        assertThat(at.genotypes().theCertain())
                .contains(TestGenes.genotype("clown", "Clown/Clown"));
        assertThat(at.basis()).isEqualTo(Basis.SIGHTING_AGAINST_RECORDS);
        // Both carry and both gave it, against a misread plain one.
        var carrier = 2 * 0.005 * 0.995 / (1 - 0.005 * 0.005);
        var truly = carrier * carrier / 4 * 0.995;
        assertThat(at.asRecorded()).isEqualTo(truly / (truly + 0.005), within(1e-3 * 0.005));
    }

    @Test
    void a_visual_bought_in_is_what_it_looks_like() {
        var family = clowns().founder("Ada").saw("Ada", "clown", "Clown");
        var told = new Posteriors(family.infer(Assumptions.KEEPER));

        var at = told.of(family.id("Ada")).loci().get(CLOWN);

        assertThat(at.genotypes().theCertain())
                .contains(TestGenes.genotype("clown", "Clown/Clown"));
        assertThat(at.basis()).isEqualTo(Basis.SIGHTING);
    }

    @Test
    void what_any_animal_may_carry_is_not_told_of_each() {
        var family =
                clowns().founder("Ada")
                        .founder("Bo")
                        .founder("Di")
                        .young("Cy", "Ada", "Bo")
                        .sawNormal("Ada", "Bo", "Cy")
                        .saw("Di", "clown", "Clown");
        var told = new Posteriors(family.infer(Assumptions.KEEPER));

        assertThat(told.of(family.id("Ada"))).isEqualTo(Held.WILD);
        assertThat(told.of(family.id("Cy"))).isEqualTo(Held.WILD);
    }

    @Test
    void with_one_parent_unknown_the_claim_stands_and_says_nothing_of_the_other_parent() {
        var family =
                clowns().founder("Ada", Sex.FEMALE)
                        .sawNormal("Ada")
                        .young("Cy", "Ada", "")
                        .het("Cy", "clown", "Clown", Fraction.of(2, 3))
                        .sawNormal("Cy");
        var told = new Posteriors(family.infer(Assumptions.KEEPER));

        // Ada may be a visual that was misread, at 1e-7: she would have given it for certain.
        assertThat(carrying(family, told, "Cy").value()).isEqualTo(2.0 / 3, within(1e-7));
        assertThat(told.of(family.id("Cy")).loci().get(CLOWN).basis()).isEqualTo(Basis.CLAIM);
        assertThat(told.of(family.id("Ada"))).isEqualTo(Held.WILD);
        // As other programs are told, the claim of an animal with a recorded parent is no prior.
        var literal = new Posteriors(family.infer(Assumptions.STANDARD));
        assertThat(literal.of(family.id("Cy"))).isEqualTo(Held.WILD);
    }

    @Test
    void a_claim_stands_only_within_what_the_known_parent_can_give() {
        var family =
                clowns().founder("Ada", Sex.FEMALE)
                        .said("Ada", "clown", "Clown/Clown")
                        .young("Cy", "Ada", "")
                        .het("Cy", "clown", "Clown", Fraction.HALF);

        assertThat(carrying(family, new Posteriors(family.infer(NO_BACKGROUND)), "Cy"))
                .isEqualTo(Fraction.WHOLE);
    }

    @Test
    void what_a_white_animal_hides_is_no_evidence_of_absence() {
        var model =
                new TestGenes()
                        .recessive("white", "White")
                        .recessive("clown", "Clown")
                        .masking("white", "White", new Masking.Everything())
                        .model();
        var family =
                new TestPedigree(model)
                        .founder("Ada")
                        .founder("Bo")
                        .young("Cy", "Ada", "Bo")
                        .said("Ada", "clown", "Clown/Clown")
                        .said("Bo", "clown", "Clown/Clown")
                        .saw("Cy", "white", "White");

        var at = new Posteriors(family.infer(NO_BACKGROUND)).of(family.id("Cy")).loci().get(CLOWN);

        assertThat(at.genotypes().theCertain())
                .contains(TestGenes.genotype("clown", "Clown/Clown"));
    }

    @Test
    void each_strand_knows_its_parent() {
        var family =
                clowns().founder("Ada")
                        .founder("Bo")
                        .young("Cy", "Ada", "Bo")
                        .said("Ada", "clown", "Clown/Clown")
                        .sawNormal("Bo", "Cy");

        var strands =
                new Posteriors(family.infer(NO_BACKGROUND)).strands(family.id("Cy")).get(CLOWN);

        assertThat(strands.fromDam().theCertain()).contains(clown());
        assertThat(strands.fromSire().theCertain()).contains(Allele.wildOf(CLOWN));
    }

    /// +/C and C/+ are as likely, a third each; the rest is +/+.
    @Test
    void of_two_hets_either_may_have_given_it() {
        var family = hets(Fraction.WHOLE, Fraction.WHOLE);

        var strands =
                new Posteriors(family.infer(NO_BACKGROUND)).strands(family.id("Cy")).get(CLOWN);

        assertThat(strands.fromDam().chanceOf(clown())).isEqualTo(Fraction.of(1, 3));
        assertThat(strands.fromSire().chanceOf(clown())).isEqualTo(Fraction.of(1, 3));
    }

    /// By a male with the allele on his Y, r = 1/20.
    @Test
    void a_daughter_of_a_male_maker_seldom_carries() {
        var model =
                new TestGenes()
                        .sexLinked("coral", Fraction.of(1, 20), "Coral", "Coral/+", "Coral")
                        .model();
        var family =
                new TestPedigree(model)
                        .founder("Ada", Sex.FEMALE)
                        .founder("Bo", Sex.MALE)
                        .said("Bo", "coral", "+|Coral")
                        .young("Daughter", Sex.FEMALE, "Ada", "Bo")
                        .young("Son", Sex.MALE, "Ada", "Bo")
                        .young("Unsexed", "Ada", "Bo");
        var told = new Posteriors(family.infer(NO_BACKGROUND));
        var coral = new Allele(new LocusId("coral"), "Coral");

        assertThat(told.of(family.id("Daughter")).chanceOfCarrying(coral))
                .isEqualTo(Fraction.of(1, 20));
        assertThat(told.of(family.id("Son")).chanceOfCarrying(coral))
                .isEqualTo(Fraction.of(19, 20));
        assertThat(told.of(family.id("Unsexed")).chanceOfCarrying(coral)).isEqualTo(Fraction.HALF);
    }

    @Test
    void records_that_cannot_be_true_together_leave_each_animal_its_own() {
        var family =
                clowns().founder("Ada")
                        .founder("Bo")
                        .young("Cy", "Ada", "Bo")
                        .sawNormal("Ada", "Bo")
                        .saw("Cy", "clown", "Clown");
        var told = new Posteriors(family.infer(new Assumptions(0, 0).withAcquiredForLook(1)));

        var at = told.of(family.id("Cy")).loci().get(CLOWN);

        assertThat(at.basis()).isEqualTo(Basis.CONTRADICTED);
        assertThat(at.genotypes().theCertain())
                .contains(TestGenes.genotype("clown", "Clown/Clown"));
    }

    private static Fraction ofHets(Fraction dam, Fraction sire) {
        var family = hets(dam, sire);
        return carrying(family, new Posteriors(family.infer(NO_BACKGROUND)), "Cy");
    }

    private static TestPedigree hets(Fraction dam, Fraction sire) {
        var family = clowns().founder("Ada").founder("Bo").young("Cy", "Ada", "Bo").sawNormal("Cy");
        het(family, "Ada", dam);
        het(family, "Bo", sire);
        return family;
    }

    private static void het(TestPedigree family, String tag, Fraction chance) {
        if (chance.isNone()) {
            family.said(tag, "clown", "+/+");
        } else {
            family.het(tag, "clown", "Clown", chance);
        }
    }

    private static Fraction carrying(TestPedigree family, Posteriors told, String tag) {
        return told.of(family.id(tag)).chanceOfCarrying(clown());
    }

    private static Held told(TestPedigree family, String tag) {
        return new Posteriors(family.infer(NO_BACKGROUND)).of(family.id(tag));
    }

    private static Allele clown() {
        return new Allele(CLOWN, "Clown");
    }

    private static TestPedigree clowns() {
        return new TestPedigree(new TestGenes().recessive("clown", "Clown").model());
    }
}
