package clutchwright.records.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.Notebook;
import clutchwright.records.husbandry.Happening;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.journal.Journal;
import clutchwright.records.journal.Undo;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/// A phone that got no answer sends the same again. It must be on record once.
class EnteredOnceTest {

    private static final EntryKey KEY = new EntryKey("0f6c1b52-7a1e-4d53-9d0c-3f3a1c2b4d5e");

    private static EmbeddedPostgres server;

    @TempDir Path folder;

    @BeforeAll
    static void start() throws IOException {
        server = EmbeddedPostgres.builder().start();
    }

    @AfterAll
    static void stop() throws IOException {
        server.close();
    }

    @AfterEach
    void emptied() throws Exception {
        try (var connection = server.getPostgresDatabase().getConnection();
                var statement = connection.createStatement()) {
            statement.execute("drop schema public cascade; create schema public");
        }
    }

    @ParameterizedTest
    @EnumSource(Dialect.class)
    void the_second_arrival_of_a_key_writes_nothing_and_is_told_what_was_written(Dialect dialect) {
        try (var notebook = open(dialect)) {
            var animal = notebook.female("A1").id();
            assertThat(feed(notebook, KEY, animal)).isInstanceOf(Once.Now.class);
            notebook.database()
                    .answered(Notebook.ADA, KEY, new Entered.Answer("/collection/1", "A1 fed."));
            var revision = notebook.database().revision();

            var again = feed(notebook, KEY, animal);

            var change = notebook.read(tx -> new Journal(tx).latest(1)).getFirst();
            assertThat(again)
                    .isEqualTo(
                            new Once.Before<Boolean>(
                                    new Entered(
                                            change.id(),
                                            true,
                                            "Fed",
                                            Optional.of(
                                                    new Entered.Answer(
                                                            "/collection/1", "A1 fed.")))));
            assertThat(meals(notebook, animal)).hasSize(1);
            assertThat(notebook.database().revision()).isEqualTo(revision);
            assertThat(feed(notebook, fresh(), animal)).isInstanceOf(Once.Now.class);
            assertThat(meals(notebook, animal)).hasSize(2);
        }
    }

    @ParameterizedTest
    @EnumSource(Dialect.class)
    void a_key_is_known_after_the_program_was_ended_and_begun_again(Dialect dialect) {
        try (var notebook = open(dialect)) {
            feed(notebook, KEY, notebook.female("A1").id());
        }
        try (var notebook = open(dialect)) {
            assertThat(feed(notebook, KEY, new AnimalId(1))).isInstanceOf(Once.Before.class);
            assertThat(meals(notebook, new AnimalId(1))).hasSize(1);
        }
    }

    @ParameterizedTest
    @EnumSource(Dialect.class)
    void what_was_taken_back_is_not_written_again(Dialect dialect) {
        try (var notebook = open(dialect)) {
            var animal = notebook.female("A1").id();
            feed(notebook, KEY, animal);
            var change = notebook.read(tx -> new Journal(tx).latest(1)).getFirst().id();
            Undo undo = notebook.write(tx -> new Journal(tx).undo(change));
            assertThat(undo).isInstanceOf(Undo.Undone.class);

            var again = feed(notebook, KEY, animal);

            assertThat(again)
                    .isInstanceOfSatisfying(
                            Once.Before.class,
                            before ->
                                    assertThat(before.entered())
                                            .extracting("stands")
                                            .isEqualTo(false));
            assertThat(meals(notebook, animal)).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(Dialect.class)
    void what_was_refused_or_failed_leaves_its_key_free_for_another_try(Dialect dialect) {
        try (var notebook = open(dialect)) {
            var animal = notebook.female("A1").id();
            var database = notebook.database();
            database.writeOnce(
                    Notebook.ADA,
                    "Fed tomorrow",
                    KEY,
                    tx -> new Husbandry(tx).feed(animal, Notebook.TODAY.plusDays(9), "", true, ""));
            database.writeOnce(
                    Notebook.ADA,
                    "Thought better of it",
                    KEY,
                    tx -> {
                        tx.abandon();
                        return new Husbandry(tx).feed(animal, tx.today(), "", true, "");
                    });
            assertThatThrownBy(
                            () ->
                                    database.writeOnce(
                                            Notebook.ADA,
                                            "Fed",
                                            KEY,
                                            tx -> {
                                                new Husbandry(tx)
                                                        .feed(animal, tx.today(), "", true, "")
                                                        .theSaved();
                                                throw new IllegalStateException("power cut");
                                            }))
                    .hasMessage("power cut");
            assertThat(meals(notebook, animal)).isEmpty();

            assertThat(feed(notebook, KEY, animal)).isInstanceOf(Once.Now.class);
            assertThat(meals(notebook, animal)).hasSize(1);
        }
    }

    /// Two programs on the same records, four threads in each: eight arrivals of every key.
    @ParameterizedTest
    @EnumSource(Dialect.class)
    void of_all_who_come_at_once_with_one_key_one_writes(Dialect dialect) {
        try (var notebook = open(dialect);
                var other = open(dialect)) {
            var animal = notebook.female("A1").id();
            var rounds = 12;
            for (int round = 0; round < rounds; round++) {
                var key = fresh();
                var gate = new CountDownLatch(1);
                var arrivals = new ArrayList<CompletableFuture<Once<Boolean>>>();
                for (int i = 0; i < 8; i++) {
                    var at = i % 2 == 0 ? notebook : other;
                    arrivals.add(
                            CompletableFuture.supplyAsync(
                                    () -> {
                                        await(gate);
                                        return feed(at, key, animal);
                                    },
                                    task -> Thread.ofPlatform().start(task)));
                }
                gate.countDown();
                List<Once<Boolean>> came = arrivals.stream().map(CompletableFuture::join).toList();

                assertThat(came).filteredOn(once -> once instanceof Once.Now).hasSize(1);
                assertThat(meals(notebook, animal)).hasSize(round + 1);
            }
            assertThat(notebook.list(tx -> new Journal(tx).latest(100))).hasSize(rounds + 1);
        }
    }

    @ParameterizedTest
    @EnumSource(Dialect.class)
    void a_key_is_forgotten_after_a_year_and_not_before(Dialect dialect) {
        try (var notebook = open(dialect)) {
            feed(notebook, KEY, notebook.female("A1").id());
        }
        try (var later = open(dialect, Duration.ofDays(365))) {
            feed(later, fresh(), new AnimalId(1));
            assertThat(later.database().entered(KEY)).isPresent();
        }
        try (var later = open(dialect, Duration.ofDays(367))) {
            feed(later, fresh(), new AnimalId(1));
            assertThat(later.database().entered(KEY)).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(Dialect.class)
    void records_keep_a_mark_of_their_own(Dialect dialect) throws Exception {
        String mark;
        try (var notebook = open(dialect)) {
            mark = notebook.database().house();
            assertThat(mark).matches("[0-9a-f]{32}");
        }
        try (var again = open(dialect)) {
            assertThat(again.database().house()).isEqualTo(mark);
        }
        folder = folder.resolve("another");
        emptied();
        try (var another = open(dialect)) {
            assertThat(another.database().house()).isNotEqualTo(mark);
        }
    }

    private static Once<Boolean> feed(Notebook notebook, EntryKey key, AnimalId animal) {
        return notebook.database()
                .writeOnce(
                        Notebook.ADA,
                        "Fed",
                        key,
                        tx -> {
                            new Husbandry(tx)
                                    .feed(animal, Notebook.TODAY, "rat", true, "")
                                    .theSaved();
                            return true;
                        });
    }

    private static List<Happening> meals(Notebook notebook, AnimalId animal) {
        return notebook.list(tx -> new Husbandry(tx).of(animal));
    }

    private static EntryKey fresh() {
        return new EntryKey(UUID.randomUUID().toString());
    }

    private Notebook open(Dialect dialect) {
        return open(dialect, Duration.ZERO);
    }

    private Notebook open(Dialect dialect, Duration later) {
        var clock = Clock.offset(Notebook.CLOCK, later);
        return new Notebook(
                switch (dialect) {
                    case SQLITE -> Database.open(folder, clock);
                    case POSTGRESQL ->
                            Database.url(server.getJdbcUrl("postgres", "postgres"), folder, clock);
                });
    }

    private static void await(CountDownLatch gate) {
        try {
            gate.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
