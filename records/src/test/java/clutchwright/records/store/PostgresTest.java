package clutchwright.records.store;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Parentage.SireQuestion;
import clutchwright.engine.probability.Distribution;
import clutchwright.records.Notebook;
import clutchwright.records.Snapshot;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Query;
import clutchwright.records.animals.Query.Sort;
import clutchwright.records.animals.Tag;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Questions;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.clutches.Eggs;
import clutchwright.records.clutches.Hatching;
import clutchwright.records.clutches.Laying;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.journal.Journal;
import clutchwright.records.journal.Undo;
import clutchwright.records.places.Places;
import clutchwright.records.settings.Settings;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The same records on PostgreSQL: what may differ between databases is done once.
class PostgresTest {

    private static EmbeddedPostgres server;

    @TempDir Path folder;
    private Notebook notebook;

    @BeforeAll
    static void start() throws IOException {
        server = EmbeddedPostgres.builder().start();
    }

    @AfterAll
    static void stop() throws IOException {
        server.close();
    }

    @BeforeEach
    void open() {
        notebook =
                new Notebook(
                        Database.url(
                                server.getJdbcUrl("postgres", "postgres"), folder, Notebook.CLOCK));
    }

    @AfterEach
    void emptied() throws Exception {
        notebook.close();
        try (var connection = server.getPostgresDatabase().getConnection();
                var statement = connection.createStatement()) {
            statement.execute("drop schema public cascade; create schema public");
        }
    }

    @Test
    void a_season_from_two_animals_to_a_hatchling_and_back() {
        var dam = notebook.female("D1");
        var sire = notebook.male("S1");
        var other = notebook.male("S2");
        var question = new SireQuestion("q", Distribution.uniform(List.of(sire.id(), other.id())));
        var laying =
                new Laying(
                        Optional.empty(),
                        2024,
                        Parentage.of(new Dam.Known(dam.id()), new Sire.InDoubt(question)),
                        Optional.empty(),
                        LocalDate.of(2024, 3, 1),
                        Notebook.ROYAL,
                        "",
                        2,
                        1);
        var clutch = notebook.write(tx -> new Clutches(tx).lay(laying, Questions.ASK).theSaved());
        var hatching =
                Hatching.of(LocalDate.of(2024, 4, 28), new Tag("24-01A"))
                        .withSex(Sex.MALE)
                        .showing(Notebook.clownHetPiebald(), false)
                        .weighing(58);

        var young =
                notebook.write(
                        tx ->
                                new Eggs(tx)
                                        .hatchNext(clutch.id(), hatching, Questions.ASK)
                                        .theSaved());

        assertThat(notebook.now(young).parentage()).isEqualTo(clutch.parentage());
        assertThat(notebook.list(tx -> new Husbandry(tx).weights(young.id()))).hasSize(1);
        var change = notebook.read(tx -> new Journal(tx).latest(1)).getFirst().id();
        Undo undo = notebook.write(tx -> new Journal(tx).undo(change));
        assertThat(undo).isInstanceOf(Undo.Undone.class);
        Snapshot without = notebook.read(Snapshot::of);
        assertThat(without.animals()).hasSize(3);
        Undo redo = notebook.write(tx -> new Journal(tx).undo(((Undo.Undone) undo).by()));
        assertThat(redo).isInstanceOf(Undo.Undone.class);
        Snapshot again = notebook.read(Snapshot::of);
        assertThat(again.animals()).containsKey(young.id());
        assertThat(again.statementsOf(young.id())).hasSize(1);
    }

    @Test
    void animals_are_found_sorted_and_placed() {
        var tub = notebook.write(tx -> new Places(tx).theTub("North", "Rack 1", "A4"));
        notebook.add(Notebook.animal("24-10").withName("Clémentine").withPlace(tub.id()));
        notebook.add(Notebook.animal("24-2").withHatched(Notebook.on(2020, 7, 1)));
        notebook.add(Notebook.animal("100%"));

        assertFound(Query.everything(), "24-2", "24-10", "100%");
        assertFound(Query.everything().withText("clementine north"), "24-10");
        assertFound(Query.everything().withText("%"), "100%");
        assertFound(Query.everything().withSeason(2020), "24-2");
        assertFound(Query.everything().sortedBy(Sort.HATCHED, true).page(0, 1), "24-2");
        notebook.write(
                tx -> {
                    new Settings(tx).put("filter/a", "x");
                    assertThat(new Settings(tx).under("filter/")).hasSize(1);
                    return tx.today();
                });
    }

    @Test
    void a_constraint_in_the_middle_of_taking_back_leaves_all_as_it_was() {
        var animal = notebook.female("A1");
        var renamed = animal.with(animal.particulars().withTag(new Tag("A2")));
        notebook.write(tx -> new Animals(tx).update(renamed).theSaved());
        var change = notebook.read(tx -> new Journal(tx).latest(1)).getFirst().id();
        notebook.female("A1");

        Undo undo = notebook.write(tx -> new Journal(tx).undo(change));

        assertThat(undo).isInstanceOf(Undo.Blocked.class);
        assertThat(notebook.now(animal).tag().value()).isEqualTo("A2");
        Edit<Animal> stale = notebook.write(tx -> new Animals(tx).update(renamed));
        assertThat(stale).isInstanceOf(Edit.Stale.class);
    }

    private void assertFound(Query query, String... tags) {
        Query.Page page = notebook.read(tx -> new Animals(tx).find(query));
        assertThat(page.animals()).extracting(animal -> animal.tag().value()).containsExactly(tags);
    }
}
