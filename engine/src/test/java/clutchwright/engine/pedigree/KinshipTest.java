package clutchwright.engine.pedigree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clutchwright.engine.genetics.SexDetermination;
import clutchwright.engine.pedigree.KinshipBasis.Method;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/// What kinship is worth to a breeder, in figures that can be worked out by hand.
class KinshipTest {

    /// Doubles hold halves of halves exactly; thirds and tenths to their last digit.
    private static final Offset<Double> ROUNDING = Offset.offset(1e-15);

    @Test
    void bought_in_animals_are_strangers_and_not_inbred() {
        var two = Kindred.of("Ada; Bo");

        assertThat(two.kinship().inbreeding(two.id("Ada"))).isZero();
        assertThat(two.kinship().between(two.id("Ada"), two.id("Bo"))).isZero();
        assertThat(two.kinship().between(two.id("Ada"), two.id("Ada"))).isEqualTo(1.0 / 2);
        assertThat(two.kinship().commonAncestors(two.id("Ada"), two.id("Bo"))).isEmpty();
    }

    @Test
    void a_parent_that_is_not_on_record_is_a_stranger() {
        var some = Kindred.of("Ada; Cy = Ada x ?; Di = Ada x ?; Ed = Di x Cy");

        assertThat(some.kinship().between(some.id("Cy"), some.id("Di"))).isEqualTo(1.0 / 8);
        assertThat(some.kinship().inbreeding(some.id("Ed"))).isEqualTo(1.0 / 8);
    }

    @Test
    void no_animals_have_no_kinship() {
        assertThat(Kindred.of("").kinship().allInbreeding()).isEmpty();
        assertThat(Inbreeding.ofNumbered(new int[0], new int[0])).isEmpty();
    }

    /// Half of what the dam has two of is lost at the second division: F = 1 - y(1 - F of the dam).
    @Test
    void young_without_a_sire_have_lost_what_did_not_segregate_at_the_second_division() {
        var line = Kindred.of("Ada; Bo; Cy = Ada alone; Di = Cy alone; Ed = Ada x Bo");
        double y = 1.0 / 3;

        var kinship = line.kinship();

        assertThat(kinship.inbreeding(line.id("Cy"))).isEqualTo(1 - y, ROUNDING);
        assertThat(kinship.inbreeding(line.id("Di"))).isEqualTo(1 - y * y, ROUNDING);
        assertThat(kinship.between(line.id("Ada"), line.id("Cy"))).isEqualTo(1.0 / 2, ROUNDING);
        assertThat(kinship.between(line.id("Cy"), line.id("Ed"))).isEqualTo(1.0 / 4, ROUNDING);
        var atTheCentromere =
                Kinship.of(line.pedigree(), KinshipAssumptions.STANDARD.withSecondDivision(0));
        assertThat(atTheCentromere.inbreeding(line.id("Cy"))).isEqualTo(1);
    }

    @Test
    void clutch_mates_of_one_question_are_full_siblings_for_certain() {
        var clutch =
                Kindred.of(
                        """
                        Ada; Bo; Max
                        Cy = Ada x Bo|Max of clutch
                        Di = Ada x Bo|Max of clutch
                        """);

        assertThat(clutch.kinship().between(clutch.id("Cy"), clutch.id("Di"))).isEqualTo(1.0 / 4);
    }

    /// Of one sire at 1/2, else half siblings: the mean of 1/4 and 1/8.
    @Test
    void clutch_mates_of_two_questions_are_full_siblings_at_a_chance() {
        var clutch =
                Kindred.of(
                        """
                        Ada; Bo; Max
                        Cy = Ada x Bo|Max of first
                        Di = Ada x Bo|Max of second
                        """);

        assertThat(clutch.kinship().between(clutch.id("Cy"), clutch.id("Di"))).isEqualTo(3.0 / 16);
    }

    /// A clutch's question, asked of one of its young with other weights: two answers.
    @Test
    void a_question_of_other_candidates_is_another_question() {
        var clutch =
                Kindred.of(
                        """
                        Ada; Bo; Max
                        Cy = Ada x Bo|Max of clutch
                        Di = Ada x Bo:1|Max:3 of clutch
                        """);

        // Full siblings at 1/2 (both Bo 1/8, both Max 3/8), else half siblings.
        assertThat(clutch.kinship().between(clutch.id("Cy"), clutch.id("Di"))).isEqualTo(3.0 / 16);
    }

    @Test
    void the_chances_of_the_sires_can_be_those_that_the_young_have_shown() {
        var clutch = Kindred.of("Ada; Bo; Max; Cy = Ada x Bo|Max of clutch; Di = ? x Bo");
        var sires = new LinkedHashMap<String, Map<AnimalId, Double>>();
        sires.put("clutch", Map.of(clutch.id("Bo"), 0.9, clutch.id("Max"), 0.1));

        var kinship = Kinship.of(clutch.pedigree(), KinshipAssumptions.STANDARD.withSires(sires));

        assertThat(clutch.kinship().between(clutch.id("Cy"), clutch.id("Di")))
                .isEqualTo(1.0 / 2 * 1 / 8, ROUNDING);
        assertThat(kinship.between(clutch.id("Cy"), clutch.id("Di")))
                .isEqualTo(0.9 * 1 / 8, ROUNDING);
        assertThat(kinship.basisOf(clutch.id("Cy")).method()).isInstanceOf(Method.Expected.class);
    }

    @Test
    void a_question_that_is_settled_is_none() {
        var clutch = Kindred.of("Ada; Bo; Max; Cy = Ada x Bo|Max of clutch; Di = ? x Bo");
        var sires = new LinkedHashMap<String, Map<AnimalId, Double>>();
        sires.put("clutch", Map.of(clutch.id("Bo"), 1.0, clutch.id("Max"), 0.0));

        var kinship = Kinship.of(clutch.pedigree(), KinshipAssumptions.STANDARD.withSires(sires));

        assertThat(kinship.between(clutch.id("Cy"), clutch.id("Di"))).isEqualTo(1.0 / 8);
        assertThat(kinship.basisOf(clutch.id("Cy")).method()).isEqualTo(new Method.Exact());
        assertThat(kinship.openQuestions()).isEmpty();
        sires.put("clutch", Map.of(clutch.id("Ada"), 1.0));
        assertThatThrownBy(
                        () ->
                                Kinship.of(
                                        clutch.pedigree(),
                                        KinshipAssumptions.STANDARD.withSires(sires)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void chances_that_do_not_sum_to_one_are_refused() {
        for (double chance : List.of(0.4, Double.NaN, -0.1, 1.1)) {
            var sires = new LinkedHashMap<String, Map<AnimalId, Double>>();
            sires.put("clutch", Map.of(new AnimalId(1), chance, new AnimalId(2), 0.5));
            assertThatThrownBy(() -> KinshipAssumptions.STANDARD.withSires(sires))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> KinshipAssumptions.STANDARD.withSecondDivision(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /// Wright's paths: half siblings share their sire alone, whatever he descends from.
    @Test
    void half_siblings_are_related_through_their_sire_and_not_through_his_parents() {
        var some = Kindred.of("P; Q; A; B; Bo = P x Q; Cy = A x Bo; Di = B x Bo");

        assertThat(some.kinship().commonAncestors(some.id("Cy"), some.id("Di")))
                .containsExactly(new CommonAncestor(some.id("Bo"), 1.0 / 8));
    }

    @Test
    void full_siblings_are_related_through_both_parents_and_young_through_the_dam_herself() {
        var some = Kindred.of("A; B; Cy = A x B; Di = A x B; Ed = Cy x B");

        assertThat(some.kinship().commonAncestors(some.id("Cy"), some.id("Di")))
                .containsExactly(
                        new CommonAncestor(some.id("A"), 1.0 / 8),
                        new CommonAncestor(some.id("B"), 1.0 / 8));
        assertThat(some.kinship().commonAncestors(some.id("Cy"), some.id("Ed")))
                .containsExactly(
                        new CommonAncestor(some.id("Cy"), 1.0 / 4),
                        new CommonAncestor(some.id("B"), 1.0 / 8));
    }

    @Test
    void either_candidate_is_a_common_ancestor_of_clutch_mates_at_his_chance() {
        var some =
                Kindred.of(
                        """
                        A; B; M
                        Cy = A x B:1/4|M:3/4 of q
                        Di = A x B:1/4|M:3/4 of q
                        """);

        assertThat(some.kinship().commonAncestors(some.id("Cy"), some.id("Di")))
                .containsExactly(
                        new CommonAncestor(some.id("A"), 1.0 / 8),
                        new CommonAncestor(some.id("M"), 3.0 / 32),
                        new CommonAncestor(some.id("B"), 1.0 / 32));
    }

    @Test
    void genes_are_from_the_founders_in_the_parts_that_descent_gives() {
        var some = Kindred.of("A; B; Cy = A x B; Di = Cy x ?; Ed = Di x B");

        var shares = some.kinship().founderShares(some.id("Ed"));

        assertThat(shares.founders())
                .containsExactly(
                        Map.entry(some.id("B"), 5.0 / 8), Map.entry(some.id("A"), 1.0 / 8));
        assertThat(shares.unrecorded()).isEqualTo(1.0 / 4);
        assertThat(some.kinship().founderShares(some.id("A")).founders())
                .containsExactly(Map.entry(some.id("A"), 1.0));
    }

    @Test
    void one_with_all_is_each_with_each() {
        var some = Kindred.of("A; B; Cy = A x B; Di = A x B; Ed = Di x Cy; Fay = Ed alone");

        some.names()
                .forEach(
                        one ->
                                some.kinship()
                                        .withAll(some.id(one))
                                        .forEach(
                                                (other, kinship) ->
                                                        assertThat(kinship)
                                                                .isEqualTo(
                                                                        some.kinship()
                                                                                .between(
                                                                                        some.id(
                                                                                                one),
                                                                                        other),
                                                                        ROUNDING)));
    }

    @Test
    void the_basis_says_how_much_of_the_ancestry_is_on_record() {
        var some =
                Kindred.of(
                        """
                        A; B; M
                        Cy = A x B; Di = A x ?
                        Ed = Di x Cy; Fay = Cy x B|M of q; Gus = Fay alone
                        """);

        var ed = some.kinship().basisOf(some.id("Ed"));
        var gus = some.kinship().basisOf(some.id("Gus"));

        assertThat(ed.ancestors()).isEqualTo(4);
        assertThat(ed.completeGenerations()).isEqualTo(1);
        assertThat(ed.deepestGeneration()).isEqualTo(2);
        assertThat(ed.method()).isEqualTo(new Method.Exact());
        assertThat(gus.parthenogenetic()).isEqualTo(1);
        assertThat(gus.method())
                .isInstanceOfSatisfying(
                        Method.Expected.class,
                        expected ->
                                assertThat(expected.over())
                                        .extracting(Parentage.SireQuestion::key)
                                        .containsExactly("q"));
    }

    @Test
    void a_line_of_three_thousand_generations_is_nothing_special() {
        int size = 6_002;
        var dams = new int[size];
        var sires = new int[size];
        for (int i = 0; i < size; i++) {
            // Brother and sister, for ever.
            dams[i] = i < 2 ? -1 : i / 2 * 2 - 2;
            sires[i] = i < 2 ? -1 : i / 2 * 2 - 1;
        }

        var inbreeding = Inbreeding.ofNumbered(dams, sires);

        assertThat(inbreeding[4]).isEqualTo(1.0 / 4);
        assertThat(inbreeding[6]).isEqualTo(3.0 / 8);
        assertThat(inbreeding[size - 1]).isEqualTo(1, Offset.offset(1e-9));
        assertThat(inbreeding).doesNotContain(Double.NaN);
    }

    @Test
    void parents_after_their_young_are_refused() {
        assertThatThrownBy(() -> Inbreeding.ofNumbered(new int[] {0}, new int[] {-1}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Inbreeding.ofNumbered(new int[] {-2}, new int[] {-1}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Inbreeding.ofNumbered(new int[1], new int[2]))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_son_has_nothing_of_his_sires_x_and_a_daughter_under_zw_nothing_of_her_dams_z() {
        var some = Kindred.sireFirst("A* B C*(A,B) D(A,B)");
        var pedigree = some.pedigree();
        var xy =
                SexChromosomeKinship.of(pedigree, SexDetermination.XY, KinshipAssumptions.STANDARD);
        var zw =
                SexChromosomeKinship.of(pedigree, SexDetermination.ZW, KinshipAssumptions.STANDARD);

        assertThat(xy.between(some.id("A"), some.id("C"))).contains(0.0);
        assertThat(xy.between(some.id("A"), some.id("D"))).contains(1.0 / 2);
        assertThat(zw.between(some.id("B"), some.id("D"))).contains(0.0);
        assertThat(zw.between(some.id("B"), some.id("C"))).contains(1.0 / 2);
        assertThat(xy.between(some.id("C"), some.id("C"))).contains(1.0);
    }

    @Test
    void without_a_sex_nothing_is_said_of_the_sex_chromosomes() {
        var some = Kindred.of("A; B; C = A x B");
        var xy =
                SexChromosomeKinship.of(
                        some.pedigree(), SexDetermination.XY, KinshipAssumptions.STANDARD);

        assertThat(xy.between(some.id("A"), some.id("C"))).isEmpty();
        assertThat(xy.between(some.id("A"), some.id("B"))).contains(0.0);
    }
}
