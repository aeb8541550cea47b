package clutchwright.engine.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reasons.Contradiction;
import clutchwright.engine.reasons.Contradictions;
import clutchwright.engine.reasons.ErrorRates;
import clutchwright.engine.reasons.Repair;
import clutchwright.engine.reasons.Testimony;
import java.util.List;
import org.junit.jupiter.api.Test;

/// Records that cannot all be true: what is found, which statements show it, and what may have
/// happened.
class D01_ContradictionsTest {

    @Test
    void a_collection_without_a_mistake_has_no_findings() {
        var family = clowns().founder("Ada").founder("Bo").founder("Vi");
        family.het("Ada", "clown", "Clown", Fraction.WHOLE)
                .saw("Bo", "clown", "Clown")
                .saw("Vi", "clown", "Clown")
                .young("Cy", "Ada", "Bo")
                .saw("Cy", "clown", "Clown")
                .young("Di", "Ada", "Bo")
                .sawNormal("Di", "Ada");

        assertThat(audited(family)).isEmpty();
    }

    @Test
    void a_plain_hatchling_of_two_visuals_is_a_misread_or_another_male_s() {
        var family = clowns().founder("Ada", Sex.FEMALE).founder("Bo", Sex.MALE);
        family.founder("Max", Sex.MALE).sawNormal("Max");
        family.said("Ada", "clown", "Clown/Clown")
                .said("Bo", "clown", "Clown/Clown")
                .young("Cy", "Ada", "Bo")
                .sawNormal("Cy");

        var finding = audited(family).getFirst();

        assertThat(finding.animal()).isEqualTo(family.id("Cy"));
        assertThat(finding.impossible()).isTrue();
        assertThat(finding.conflict())
                .hasExactlyElementsOfTypes(
                        Testimony.Saw.class,
                        Testimony.DamOf.class,
                        Testimony.SireOf.class,
                        Testimony.Stated.class,
                        Testimony.Stated.class);
        assertThat(finding.repairs())
                .hasAtLeastOneElementOfType(Repair.Misread.class)
                .anyMatch(
                        repair ->
                                repair instanceof Repair.OtherSire
                                        || repair instanceof Repair.OtherDam
                                        || repair instanceof Repair.StrangeSire
                                        || repair instanceof Repair.StrangeDam);
        assertThat(finding.repairs().stream().mapToDouble(Repair::chance).sum())
                .isEqualTo(1, within(0.02));
    }

    @Test
    void of_two_that_look_visual_and_a_plain_hatchling_each_may_be_the_one_misread() {
        var family = clowns().founder("Ada", Sex.FEMALE).founder("Bo", Sex.MALE);
        family.saw("Ada", "clown", "Clown")
                .saw("Bo", "clown", "Clown")
                .young("Cy", "Ada", "Bo")
                .sawNormal("Cy");

        var findings = audited(family);

        assertThat(findings).hasSize(1);
        assertThat(findings.getFirst().conflict())
                .hasExactlyElementsOfTypes(
                        Testimony.Saw.class,
                        Testimony.DamOf.class,
                        Testimony.SireOf.class,
                        Testimony.Saw.class,
                        Testimony.Saw.class);
        assertThat(findings.getFirst().repairs())
                .filteredOn(Repair.Misread.class::isInstance)
                .extracting(repair -> ((Repair.Misread) repair).animal())
                .containsExactlyInAnyOrder(family.id("Ada"), family.id("Bo"), family.id("Cy"));
    }

    @Test
    void a_carrier_that_is_visible_in_its_young_needs_no_mistake() {
        var genes = new TestGenes().dominant("pastel", "Pastel").model();
        var family = new TestPedigree(genes).founder("Ada").founder("Bo");
        family.sawNormal("Ada", "Bo").young("Cy", "Ada", "Bo").saw("Cy", "pastel", "Pastel");

        var finding = audited(family).getFirst();

        assertThat(finding.animal()).isEqualTo(family.id("Cy"));
        assertThat(finding.repairs())
                .filteredOn(Repair.Misread.class::isInstance)
                .hasSizeGreaterThanOrEqualTo(2);
    }

    @Test
    void many_plain_hatchlings_of_two_visuals_point_to_another_sire() {
        var family = clowns().founder("Ada", Sex.FEMALE).founder("Bo", Sex.MALE);
        family.founder("Max", Sex.MALE).sawNormal("Max");
        family.said("Ada", "clown", "Clown/Clown").said("Bo", "clown", "Clown/Clown");
        for (var n = 1; n <= 5; n++) {
            family.young("H" + n, "Ada", "Bo").sawNormal("H" + n);
        }

        var likeliest = audited(family).getFirst().repairs().getFirst();

        assertThat(likeliest).isNotInstanceOf(Repair.Misread.class);
    }

    @Test
    void a_visual_hatchling_of_a_male_that_cannot_carry_belongs_to_the_visual_male() {
        var family = clowns().founder("Ada", Sex.FEMALE).founder("Bo", Sex.MALE);
        family.founder("Max", Sex.MALE).said("Max", "clown", "Clown/Clown");
        family.het("Ada", "clown", "Clown", Fraction.WHOLE).said("Bo", "clown", "+/+");
        for (var n = 1; n <= 4; n++) {
            family.young("H" + n, "Ada", "Bo").saw("H" + n, "clown", "Clown");
        }

        var finding = audited(family).getFirst();

        assertThat(finding.repairs())
                .anySatisfy(
                        repair ->
                                assertThat(repair)
                                        .isInstanceOfSatisfying(
                                                Repair.OtherSire.class,
                                                other ->
                                                        assertThat(other.instead())
                                                                .isEqualTo(family.id("Max"))));
    }

    @Test
    void a_het_that_never_shows_it_with_a_visual_mate_was_sold_wrongly() {
        var family = clowns().founder("Ada").founder("Bo");
        family.het("Ada", "clown", "Clown", Fraction.WHOLE).said("Bo", "clown", "Clown/Clown");
        for (var n = 1; n <= 14; n++) {
            family.young("H" + n, "Ada", "Bo").sawNormal("H" + n);
        }

        var finding = audited(family).getFirst();

        assertThat(finding.animal()).isEqualTo(family.id("Ada"));
        assertThat(finding.impossible()).isFalse();
        assertThat(finding.repairs().getFirst()).isInstanceOf(Repair.WrongClaim.class);
    }

    @Test
    void a_visual_hatchling_of_two_of_whom_nothing_is_said_may_have_hidden_carriers() {
        var family = clowns().founder("Ada").founder("Bo").sawNormal("Ada", "Bo");
        for (var n = 1; n <= 3; n++) {
            family.young("H" + n, "Ada", "Bo").saw("H" + n, "clown", "Clown");
        }
        family.young("K", "Ada", "Bo").sawNormal("K");

        // Three misreads, or another sire of a sort that nobody has, against two hidden hets.
        assertThat(audited(family)).isEmpty();

        // Where eyes are trusted and nobody carries anything unsaid, that cannot be.
        var found = audited(family, new Assumptions(0, 0));
        assertThat(found).hasSize(1);
        assertThat(found.getFirst().impossible()).isTrue();
        assertThat(found.getFirst().repairs().getFirst()).isInstanceOf(Repair.HiddenCarriers.class);
    }

    @Test
    void where_eyes_are_trusted_the_impossible_is_found_too() {
        var family = clowns().founder("Ada").founder("Bo");
        family.said("Ada", "clown", "+/+").young("Cy", "Ada", "Bo").saw("Cy", "clown", "Clown");

        var found = audited(family, new Assumptions(0, 0));

        assertThat(found).hasSize(1);
        assertThat(found.getFirst().impossible()).isTrue();
    }

    private static List<Contradiction> audited(TestPedigree family) {
        return audited(family, Assumptions.STANDARD);
    }

    private static List<Contradiction> audited(TestPedigree family, Assumptions assumptions) {
        var records = family.records();
        return Contradictions.of(
                records, assumptions, ErrorRates.STANDARD, PedigreeInference.touched(records));
    }

    private static TestPedigree clowns() {
        return new TestPedigree(new TestGenes().recessive("clown", "Clown").model());
    }
}
