package clutchwright.records.animals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Parentage.SireQuestion;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import clutchwright.records.Notebook;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Parent;
import clutchwright.records.checks.Problem;
import clutchwright.records.checks.Questions;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.places.Places;
import clutchwright.records.places.TubId;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AnimalsTest {

    @TempDir Path folder;
    private Notebook notebook;

    @BeforeEach
    void open() {
        notebook = new Notebook(folder);
    }

    @AfterEach
    void close() {
        notebook.close();
    }

    @Test
    void everything_written_of_an_animal_is_read_again() {
        var dam = notebook.female("D1");
        var one = notebook.male("S1");
        var other = notebook.male("S2");
        var weights = new LinkedHashMap<AnimalId, Fraction>();
        weights.put(other.id(), Fraction.of(7, 10));
        weights.put(one.id(), Fraction.of(3, 10));
        var tub = notebook.write(tx -> new Places(tx).theTub("North room", "Rack 1", "A4"));
        var written =
                new Particulars(
                        new Tag("23-04B"),
                        "Clémentine",
                        Optional.of(Sex.FEMALE),
                        Notebook.on(2023, 8, 1),
                        Parentage.of(
                                new Dam.Known(dam.id()),
                                new Sire.InDoubt(
                                        new SireQuestion("m", new Distribution<>(weights)))),
                        new Origin(
                                Origin.How.BOUGHT,
                                "a show",
                                Optional.of(LocalDate.of(2023, 10, 2))),
                        new Line("Old line", "Somebody"),
                        Status.HOLD_BACK,
                        Optional.of(tub.id()),
                        Notebook.ROYAL,
                        "shy\neater");

        var saved = notebook.add(written);

        assertThat(saved.particulars()).isEqualTo(written);
        assertThat(notebook.now(saved)).isEqualTo(saved);
        assertThat(List.copyOf(notebook.now(saved).parentage().sires()))
                .containsExactly(other.id(), one.id());
    }

    @Test
    void a_parthenogenetic_animal_keeps_its_one_parent() {
        var dam = notebook.female("D1");
        var saved =
                notebook.add(
                        Notebook.animal("P1")
                                .withParentage(new Parentage.Parthenogenetic(dam.id())));

        assertThat(notebook.now(saved).parentage())
                .isEqualTo(new Parentage.Parthenogenetic(dam.id()));
    }

    @Test
    void a_tag_is_taken_whatever_the_case_of_its_letters() {
        var first = notebook.female("Ab-1");

        assertProblems(Notebook.animal("aB-1"), new Problem.TagTaken("aB-1", first.id()));
        assertProblems(Notebook.animal(" ab-1 "), new Problem.TagTaken("ab-1", first.id()));
        assertThat(byTag("AB-1")).contains(first);
    }

    @Test
    void letters_beyond_english_make_the_same_tag_too() {
        var first = notebook.female("ÄÖ-1");

        assertProblems(Notebook.animal("äö-1"), new Problem.TagTaken("äö-1", first.id()));
    }

    @Test
    void a_dam_is_no_male_and_a_sire_no_female() {
        var male = notebook.male("M1");
        var female = notebook.female("F1");

        assertProblems(
                Notebook.animal("X").withParentage(parents(male, female)),
                new Problem.WrongSex(male.id(), Parent.DAM, Sex.MALE),
                new Problem.WrongSex(female.id(), Parent.SIRE, Sex.FEMALE));
    }

    @Test
    void a_parent_that_was_not_sexed_is_asked_about() {
        var dam = notebook.add(Notebook.animal("U1"));
        var sire = notebook.male("M1");
        var young = Notebook.animal("X").withParentage(parents(dam, sire));

        assertProblems(young, new Problem.UnsexedParent(dam.id(), Parent.DAM));
        Edit<Animal> all_the_same =
                notebook.write(tx -> new Animals(tx).add(young, Questions.ALL_THE_SAME));
        assertThat(all_the_same.saved()).isPresent();
    }

    @Test
    void a_parent_hatches_before_its_young() {
        var dam = notebook.add(female("D1").withHatched(Notebook.on(2022, 7, 1)));
        var sire = notebook.add(male("S1").withHatched(new Hatched.InYear(2023)));

        assertProblems(
                Notebook.animal("X")
                        .withParentage(parents(dam, sire))
                        .withHatched(Notebook.on(2021, 7, 1)),
                new Problem.HatchedBeforeParent(dam.id(), Parent.DAM, "2021-07-01", "2022-07-01"),
                new Problem.HatchedBeforeParent(sire.id(), Parent.SIRE, "2021-07-01", "2023"));
    }

    @Test
    void a_year_alone_is_no_contradiction_where_it_may_be_right() {
        var dam = notebook.add(female("D1").withHatched(new Hatched.InYear(2021)));
        var sire = notebook.add(male("S1").withHatched(Notebook.on(2021, 5, 1)));

        notebook.add(
                Notebook.animal("X")
                        .withParentage(parents(dam, sire))
                        .withHatched(new Hatched.InYear(2021)));
    }

    @Test
    void a_hatch_date_cannot_move_past_that_of_the_young() {
        var dam = notebook.female("D1");
        var sire = notebook.male("S1");
        notebook.add(
                Notebook.animal("X")
                        .withParentage(parents(dam, sire))
                        .withHatched(Notebook.on(2021, 7, 1)));

        assertThat(problems(dam.with(dam.particulars().withHatched(Notebook.on(2021, 8, 1)))))
                .containsExactly(
                        new Problem.HatchedBeforeParent(
                                dam.id(), Parent.DAM, "2021-07-01", "2021-08-01"));
    }

    @Test
    void nobody_is_its_own_ancestor() {
        var sire = notebook.male("S1");
        var grandmother = notebook.female("G1");
        var mother = notebook.add(female("M1").withParentage(parents(grandmother, sire)));
        var daughter = notebook.add(female("T1").withParentage(parents(mother, sire)));

        assertThat(
                        problems(
                                grandmother.with(
                                        grandmother
                                                .particulars()
                                                .withParentage(parents(daughter, sire)))))
                .containsExactly(
                        new Problem.OwnAncestor(
                                List.of(
                                        grandmother.id(),
                                        daughter.id(),
                                        mother.id(),
                                        grandmother.id())));
    }

    @Test
    void a_circle_through_a_sire_in_doubt_is_one_too() {
        var other = notebook.male("S0");
        var father = notebook.male("S1");
        var dam = notebook.female("D1");
        var son =
                notebook.add(
                        male("S2")
                                .withParentage(
                                        Parentage.of(
                                                new Dam.Known(dam.id()),
                                                new Sire.InDoubt(
                                                        new SireQuestion(
                                                                "q",
                                                                Distribution.uniform(
                                                                        List.of(
                                                                                father.id(),
                                                                                other.id())))))));

        assertThat(problems(father.with(father.particulars().withParentage(parents(dam, son)))))
                .containsExactly(
                        new Problem.OwnAncestor(List.of(father.id(), son.id(), father.id())));
    }

    @Test
    void the_same_animal_is_not_dam_and_sire() {
        var unsexed = notebook.add(Notebook.animal("U1"));

        assertProblems(
                Notebook.animal("X").withParentage(parents(unsexed, unsexed)),
                new Problem.UnsexedParent(unsexed.id(), Parent.DAM),
                new Problem.UnsexedParent(unsexed.id(), Parent.SIRE),
                new Problem.DamIsSire(unsexed.id()));
    }

    @Test
    void an_animal_with_young_keeps_the_sex_that_it_takes() {
        var dam = notebook.female("D1");
        var sire = notebook.male("S1");
        notebook.add(Notebook.animal("X").withParentage(parents(dam, sire)));

        assertThat(problems(dam.with(dam.particulars().withSex(Sex.MALE))))
                .containsExactly(new Problem.UsedAs(dam.id(), Parent.DAM));
        assertThat(problems(sire.with(sire.particulars().withSex(Sex.FEMALE))))
                .containsExactly(new Problem.UsedAs(sire.id(), Parent.SIRE));
    }

    @Test
    void nothing_hatches_more_than_a_day_ahead() {
        notebook.add(Notebook.animal("A").withHatched(Notebook.on(2024, 5, 11)));

        assertProblems(
                Notebook.animal("B").withHatched(Notebook.on(2024, 5, 12)),
                new Problem.InTheFuture(Field.HATCHED, LocalDate.of(2024, 5, 12), Notebook.TODAY));
        assertProblems(
                Notebook.animal("C").withHatched(new Hatched.InYear(2204)),
                new Problem.InTheFuture(Field.HATCHED, LocalDate.of(2204, 1, 1), Notebook.TODAY));
    }

    @Test
    void every_problem_is_told_at_once() {
        var taken = notebook.female("A1");
        var missing = new AnimalId(4711);

        assertProblems(
                Notebook.animal("a1")
                        .withHatched(Notebook.on(2034, 1, 1))
                        .withOrigin(
                                new Origin(
                                        Origin.How.BOUGHT,
                                        "",
                                        Optional.of(LocalDate.of(1820, 1, 1))))
                        .withPlace(new TubId(99))
                        .withParentage(
                                Parentage.of(new Dam.Known(taken.id()), new Sire.Known(missing))),
                new Problem.InTheFuture(Field.HATCHED, LocalDate.of(2034, 1, 1), Notebook.TODAY),
                new Problem.OutOfRange(Field.ACQUIRED, 1820, 1900, 2024),
                new Problem.WrongOrder(
                        Field.HATCHED,
                        LocalDate.of(2034, 1, 1),
                        Field.ACQUIRED,
                        LocalDate.of(1820, 1, 1)),
                new Problem.Missing(Field.TUB, 99),
                new Problem.TagTaken("a1", taken.id()),
                new Problem.Missing(Field.SIRE, 4711));
    }

    @Test
    void two_people_editing_one_animal_lose_nothing() {
        var animal = notebook.female("A1");
        var ada = animal.with(animal.particulars().withName("Clementine"));
        var bo = animal.with(animal.particulars().withNotes("refuses mice"));

        var first =
                notebook.database().write(Notebook.ADA, "name", tx -> new Animals(tx).update(ada));
        var second =
                notebook.database().write(Notebook.BO, "notes", tx -> new Animals(tx).update(bo));

        assertThat(second).isEqualTo(new Edit.Stale<>(first.theSaved()));
        assertThat(notebook.now(animal).name()).isEqualTo("Clementine");
        assertThat(notebook.now(animal).notes()).isEmpty();
    }

    @Test
    void changing_only_a_sire_in_doubt_is_a_new_version_too() {
        var dam = notebook.female("D1");
        var one = notebook.male("S1");
        var other = notebook.male("S2");
        var third = notebook.male("S3");
        var young = notebook.add(Notebook.animal("X").withParentage(either(dam, one, other)));
        var first = young.with(young.particulars().withParentage(either(dam, one, third)));
        var second = young.with(young.particulars().withParentage(either(dam, other, third)));

        notebook.write(tx -> new Animals(tx).update(first).theSaved());

        Edit<Animal> late = notebook.write(tx -> new Animals(tx).update(second));
        assertThat(late).isInstanceOf(Edit.Stale.class);
        assertThat(notebook.now(young).parentage().sires()).containsExactly(one.id(), third.id());
    }

    @Test
    void an_animal_with_young_or_a_pairing_stays_on_record() {
        var dam = notebook.female("D1");
        var sire = notebook.male("S1");
        notebook.add(Notebook.animal("X").withParentage(parents(dam, sire)));
        notebook.write(
                tx ->
                        new Pairings(tx)
                                .plan(2024, dam.id(), sire.id(), "", Questions.ASK)
                                .theSaved());

        var refused = notebook.write(tx -> new Animals(tx).remove(dam.id(), dam.version()));

        var uses = new LinkedHashMap<String, Integer>();
        uses.put("offspring", 1);
        uses.put("pairing", 1);
        assertThat(refused).isEqualTo(new Edit.Refused<>(List.of(new Problem.StillUsed(uses))));
        assertThat(notebook.now(dam)).isEqualTo(dam);
    }

    @Test
    void young_of_a_sire_in_doubt_are_among_his() {
        var dam = notebook.female("D1");
        var one = notebook.male("S1");
        var other = notebook.male("S2");
        var young = notebook.add(Notebook.animal("X").withParentage(either(dam, one, other)));

        assertThat(notebook.list(tx -> new Animals(tx).offspringOf(other.id())))
                .containsExactly(young);
    }

    @Test
    void an_animal_that_is_not_there_cannot_be_asked_for() {
        assertThatThrownBy(() -> notebook.read(tx -> new Animals(tx).theAnimal(new AnimalId(9))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private Optional<Animal> byTag(String tag) {
        return notebook.read(tx -> new Animals(tx).byTag(tag));
    }

    private void assertProblems(Particulars animal, Problem... expected) {
        int before = notebook.read(tx -> new Animals(tx).count());

        Edit<Animal> edit = notebook.write(tx -> new Animals(tx).add(animal));

        assertThat(edit).isInstanceOf(Edit.Refused.class);
        assertThat(((Edit.Refused<Animal>) edit).problems()).containsExactlyInAnyOrder(expected);
        int after = notebook.read(tx -> new Animals(tx).count());
        assertThat(after).isEqualTo(before);
    }

    private List<Problem> problems(Animal changed) {
        Edit<Animal> edit = notebook.write(tx -> new Animals(tx).update(changed));
        assertThat(edit).isInstanceOf(Edit.Refused.class);
        return ((Edit.Refused<Animal>) edit).problems();
    }

    private static Particulars female(String tag) {
        return Notebook.animal(tag).withSex(Sex.FEMALE);
    }

    private static Particulars male(String tag) {
        return Notebook.animal(tag).withSex(Sex.MALE);
    }

    private static Parentage parents(Animal dam, Animal sire) {
        return Parentage.of(new Dam.Known(dam.id()), new Sire.Known(sire.id()));
    }

    private static Parentage either(Animal dam, Animal one, Animal other) {
        return Parentage.of(
                new Dam.Known(dam.id()),
                new Sire.InDoubt(
                        new SireQuestion(
                                "q", Distribution.uniform(List.of(one.id(), other.id())))));
    }
}
