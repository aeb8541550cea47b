package clutchwright.engine.pedigree;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.Member.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class PedigreeTest {

    private static final AnimalId ADA = new AnimalId(1);
    private static final AnimalId BO = new AnimalId(2);
    private static final AnimalId CY = new AnimalId(3);

    @Test
    void parents_come_before_their_offspring_whatever_the_order_they_were_given_in() {
        var pedigree = sound(young(CY, ADA, BO), founder(BO), founder(ADA));

        assertThat(pedigree.members().stream().map(Member::id).toList().getLast()).isEqualTo(CY);
        assertThat(pedigree.offspringOf(ADA)).containsExactly(CY);
        assertThat(pedigree.offspringOf(BO)).containsExactly(CY);
        assertThat(pedigree.offspringOf(CY)).isEmpty();
    }

    @Test
    void a_line_of_a_hundred_thousand_generations_is_no_trouble() {
        var members = new ArrayList<Member>();
        LongStream.rangeClosed(2, 100_000)
                .mapToObj(n -> sireless(new AnimalId(n), new AnimalId(n - 1)))
                .forEach(members::addFirst);
        members.add(founder(ADA));

        var pedigree = sound(members.toArray(Member[]::new));

        assertThat(pedigree.members().getFirst().id()).isEqualTo(ADA);
        assertThat(pedigree.members().getLast().id()).isEqualTo(new AnimalId(100_000));
    }

    @Test
    void an_animal_cannot_be_its_own_ancestor() {
        assertThat(faults(young(ADA, CY, BO), founder(BO), young(CY, ADA, BO)))
                .singleElement()
                .isInstanceOfSatisfying(
                        PedigreeFault.OwnAncestor.class,
                        fault -> assertThat(fault.circle()).containsExactlyInAnyOrder(ADA, CY));
    }

    @Test
    void an_animal_cannot_be_its_own_dam() {
        assertThat(faults(sireless(ADA, ADA)))
                .containsExactly(new PedigreeFault.OwnAncestor(ADA, List.of(ADA)));
    }

    @Test
    void a_male_cannot_be_a_dam_nor_a_female_a_sire() {
        assertThat(faults(sexed(ADA, Sex.MALE), sexed(BO, Sex.FEMALE), young(CY, ADA, BO)))
                .containsExactly(
                        new PedigreeFault.WrongSex(CY, ADA, Sex.MALE),
                        new PedigreeFault.WrongSex(CY, BO, Sex.FEMALE));
    }

    @Test
    void nothing_hatches_before_its_parent() {
        var day = LocalDate.of(2022, 7, 1);
        var dam = hatched(founder(ADA), Span.day(day));
        var before = hatched(sireless(CY, ADA), Span.day(day.minusDays(1)));

        assertThat(faults(dam, before))
                .containsExactly(new PedigreeFault.HatchedBeforeParent(CY, ADA));
    }

    @Test
    void years_alone_do_not_accuse_where_they_may_be_right() {
        var dam = hatched(founder(ADA), Span.year(2022));
        var sameYear = hatched(sireless(CY, ADA), Span.year(2022));

        assertThat(sound(dam, sameYear).contains(CY)).isTrue();
    }

    @Test
    void every_fault_is_told_at_once() {
        assertThat(faults(young(CY, ADA, BO), young(CY, BO, BO), founder(BO)))
                .contains(
                        new PedigreeFault.ListedTwice(CY),
                        new PedigreeFault.UnknownParent(CY, ADA));
    }

    @Test
    void one_animal_cannot_be_both_parents() {
        assertThat(faults(founder(BO), young(CY, BO, BO)))
                .containsExactly(new PedigreeFault.DamIsSire(CY, BO));
    }

    private static Pedigree sound(Member... members) {
        return switch (Pedigree.of(List.of(members))) {
            case Pedigree.Result.Sound(var pedigree) -> pedigree;
            case Pedigree.Result.Faulty(var faults) -> throw new AssertionError(faults);
        };
    }

    private static List<PedigreeFault> faults(Member... members) {
        return switch (Pedigree.of(List.of(members))) {
            case Pedigree.Result.Sound(var pedigree) ->
                    throw new AssertionError("no fault found in " + pedigree.members());
            case Pedigree.Result.Faulty(var faults) -> faults;
        };
    }

    private static Member founder(AnimalId id) {
        return new Member(id, Optional.empty(), Optional.empty(), new Parentage.Founder());
    }

    private static Member sexed(AnimalId id, Sex sex) {
        return new Member(id, Optional.of(sex), Optional.empty(), new Parentage.Founder());
    }

    private static Member young(AnimalId id, AnimalId dam, AnimalId sire) {
        var parents =
                new Parentage.Biparental(
                        new Parentage.Dam.Known(dam), new Parentage.Sire.Known(sire));
        return new Member(id, Optional.empty(), Optional.empty(), parents);
    }

    private static Member sireless(AnimalId id, AnimalId dam) {
        var parents =
                new Parentage.Biparental(
                        new Parentage.Dam.Known(dam), new Parentage.Sire.Unknown());
        return new Member(id, Optional.empty(), Optional.empty(), parents);
    }

    private static Member hatched(Member member, Span span) {
        return new Member(member.id(), member.sex(), Optional.of(span), member.parentage());
    }
}
