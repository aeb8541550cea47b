package clutchwright.records.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.Notebook;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Particulars;
import clutchwright.records.animals.Query;
import clutchwright.records.animals.Tag;
import clutchwright.records.checks.Edit;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.statements.Statements;
import clutchwright.records.statements.Witness;
import clutchwright.records.store.ChangeId;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalTest {

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
    void every_change_says_who_when_what_before_and_after() {
        var animal = notebook.female("A1");
        notebook.database()
                .write(
                        Notebook.BO,
                        "rename",
                        tx ->
                                new Animals(tx)
                                        .update(
                                                animal.with(
                                                        animal.particulars()
                                                                .withName("Clementine")))
                                        .theSaved());

        var history = notebook.read(tx -> new Journal(tx).historyOf(animal.id()));

        assertThat(history).hasSize(2);
        var rename = history.getFirst();
        assertThat(rename.change().who()).isEqualTo(Notebook.BO);
        assertThat(rename.change().at()).isEqualTo(Notebook.CLOCK.instant());
        assertThat(rename.change().what()).isEqualTo("rename");
        assertThat(rename.kind()).isEqualTo(Entry.Kind.CHANGED);
        assertThat(rename.columns())
                .containsOnlyKeys("name")
                .containsEntry(
                        "name", new Entry.BeforeAfter(Optional.of(""), Optional.of("Clementine")));
        assertThat(history.getLast().kind()).isEqualTo(Entry.Kind.ADDED);
    }

    @Test
    void an_animals_history_has_its_statements_and_weights() {
        var animal = notebook.female("A1");
        notebook.write(
                tx ->
                        new Statements(tx)
                                .claim(
                                        animal.id(),
                                        Notebook.clownHetPiebald(),
                                        Witness.undated("seller"))
                                .theSaved());
        notebook.write(
                tx -> new Husbandry(tx).weigh(animal.id(), Notebook.TODAY, 812.5, "").theSaved());

        var history = notebook.read(tx -> new Journal(tx).historyOf(animal.id()));
        assertThat(history)
                .extracting(Entry::table)
                .containsExactly("weighing", "statement", "animal");
    }

    @Test
    void what_was_taken_back_is_as_it_was_and_can_be_had_again() {
        var before = notebook.female("A1");
        var after = edit(before, particulars -> particulars.withName("Clementine"));
        var rename = latest();

        var undo = undo(rename);
        assertThat(undo).isInstanceOf(Undo.Undone.class);
        assertThat(notebook.now(before).particulars()).isEqualTo(before.particulars());

        var redo = undo(((Undo.Undone) undo).by());
        assertThat(redo).isInstanceOf(Undo.Undone.class);
        assertThat(notebook.now(before).particulars()).isEqualTo(after.particulars());

        assertThat(undo(rename)).isInstanceOf(Undo.Undone.class);
        assertThat(notebook.now(before).particulars()).isEqualTo(before.particulars());
        assertThat(undo(rename)).isInstanceOf(Undo.AlreadyUndone.class);
    }

    @Test
    void a_form_opened_before_something_was_taken_back_is_stale_afterwards() {
        var first = notebook.female("A1");
        var second = edit(first, particulars -> particulars.withName("Clementine"));
        undo(latest());

        var late =
                notebook.write(
                        tx ->
                                new Animals(tx)
                                        .update(
                                                second.with(
                                                        second.particulars().withNotes("late"))));

        assertThat(late).isInstanceOf(Edit.Stale.class);
    }

    @Test
    void a_removed_animal_comes_back_with_what_was_written_of_it() {
        var animal = notebook.female("A1");
        notebook.write(
                tx ->
                        new Statements(tx)
                                .claim(
                                        animal.id(),
                                        Notebook.clownHetPiebald(),
                                        Witness.undated("seller"))
                                .theSaved());
        notebook.write(tx -> new Animals(tx).remove(animal.id(), animal.version()).theSaved());
        int left = notebook.read(tx -> new Animals(tx).count());
        assertThat(left).isZero();

        assertThat(undo(latest())).isInstanceOf(Undo.Undone.class);

        assertThat(notebook.now(animal).particulars()).isEqualTo(animal.particulars());
        assertThat(notebook.read(tx -> new Statements(tx).latest(animal.id())).claim())
                .hasValueSatisfying(
                        claim -> assertThat(claim.genes()).isEqualTo(Notebook.clownHetPiebald()));
        var showing = Query.everything().withShows("clown");
        assertThat(notebook.read(tx -> new Animals(tx).find(showing)).total()).isOne();
    }

    @Test
    void what_somebody_changed_since_is_not_overwritten() {
        var animal = notebook.female("A1");
        var renamed = edit(animal, particulars -> particulars.withName("Clementine"));
        var rename = latest();
        edit(renamed, particulars -> particulars.withName("Clementia"));
        var later = latest();

        var undo = undo(rename);

        assertThat(undo).isInstanceOf(Undo.Blocked.class);
        assertThat(((Undo.Blocked) undo).later()).extracting(Change::id).containsExactly(later);
        assertThat(notebook.now(animal).name()).isEqualTo("Clementia");

        assertThat(undo(later)).isInstanceOf(Undo.Undone.class);
        assertThat(undo(rename)).isInstanceOf(Undo.Undone.class);
        assertThat(notebook.now(animal).name()).isEmpty();
    }

    @Test
    void an_animal_that_has_been_weighed_since_is_not_taken_off_the_record() {
        var animal = notebook.female("A1");
        var entered = latest();
        notebook.write(
                tx -> new Husbandry(tx).weigh(animal.id(), Notebook.TODAY, 812, "").theSaved());
        var weighed = latest();

        var undo = undo(entered);

        assertThat(undo).isInstanceOf(Undo.Blocked.class);
        assertThat(((Undo.Blocked) undo).later()).extracting(Change::id).containsExactly(weighed);
        assertThat(notebook.now(animal)).isEqualTo(animal);
    }

    @Test
    void a_tag_that_another_animal_has_by_now_is_not_given_back() {
        var animal = notebook.female("A1");
        edit(animal, particulars -> particulars.withTag(new Tag("A2")));
        var retagged = latest();
        notebook.female("a1");
        var taken = latest();

        var undo = undo(retagged);

        assertThat(undo).isInstanceOf(Undo.Blocked.class);
        assertThat(((Undo.Blocked) undo).later()).extracting(Change::id).contains(taken);
        assertThat(notebook.now(animal).tag().value()).isEqualTo("A2");
        assertThat(latest()).isEqualTo(taken);
    }

    @Test
    void a_sex_that_was_needed_since_is_not_taken_back() {
        var animal = notebook.add(Notebook.animal("A1"));
        var sexed = edit(animal, particulars -> particulars.withSex(Sex.MALE));
        var corrected = edit(sexed, particulars -> particulars.withSex(Sex.FEMALE));
        var correction = latest();
        notebook.add(
                Notebook.animal("B1")
                        .withParentage(
                                Parentage.of(
                                        new Parentage.Dam.Known(corrected.id()),
                                        new Parentage.Sire.Unknown())));

        assertThat(undo(correction)).isInstanceOf(Undo.Blocked.class);
        assertThat(notebook.now(animal).sex()).contains(Sex.FEMALE);
    }

    @Test
    void a_change_that_never_was_cannot_be_taken_back() {
        assertThat(undo(new ChangeId(77))).isEqualTo(new Undo.NoSuchChange(new ChangeId(77)));
    }

    @Test
    void taking_back_and_writing_do_not_mix() {
        notebook.female("A1");
        var change = latest();

        assertThatThrownBy(
                        () ->
                                notebook.write(
                                        tx -> {
                                            new Animals(tx).add(Notebook.animal("A2")).theSaved();
                                            return new Journal(tx).undo(change);
                                        }))
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void the_latest_changes_come_first() {
        notebook.female("A1");
        notebook.female("A2");

        List<Change> latest = notebook.read(tx -> new Journal(tx).latest(5));

        assertThat(latest).extracting(Change::what).containsExactly("enter A2", "enter A1");
    }

    private Animal edit(Animal animal, UnaryOperator<Particulars> edit) {
        return notebook.write(
                "edit",
                tx ->
                        new Animals(tx)
                                .update(animal.with(edit.apply(animal.particulars())))
                                .theSaved());
    }

    private ChangeId latest() {
        return notebook.read(tx -> new Journal(tx).latest(1)).getFirst().id();
    }

    private Undo undo(ChangeId change) {
        return notebook.database()
                .write(Notebook.BO, "take back", tx -> new Journal(tx).undo(change));
    }
}
