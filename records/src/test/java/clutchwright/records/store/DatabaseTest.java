package clutchwright.records.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clutchwright.records.Notebook;
import clutchwright.records.animals.Animals;
import clutchwright.records.journal.Change;
import clutchwright.records.journal.Journal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DatabaseTest {

    @TempDir Path folder;

    @Test
    void a_folder_without_records_becomes_one_with_empty_records() {
        var house = folder.resolve("house/records");

        try (var notebook = new Notebook(house)) {
            assertThat(count(notebook)).isZero();
        }

        assertThat(house.resolve(Database.FILE)).exists();
    }

    @Test
    void what_was_written_is_there_after_closing_and_opening() {
        try (var notebook = new Notebook(folder)) {
            notebook.female("Ada-1");
        }
        try (var notebook = new Notebook(folder)) {
            var found = notebook.read(tx -> new Animals(tx).byTag("ada-1"));
            assertThat(found).isPresent();
        }
    }

    @Test
    void a_failure_in_the_middle_of_a_write_leaves_nothing_behind() {
        try (var notebook = new Notebook(folder)) {
            assertThatThrownBy(
                            () ->
                                    notebook.write(
                                            tx -> {
                                                new Animals(tx)
                                                        .add(Notebook.animal("A1"))
                                                        .theSaved();
                                                throw new IllegalStateException("power cut");
                                            }))
                    .hasMessage("power cut");

            assertThat(count(notebook)).isZero();
            assertThat(changes(notebook)).isEmpty();
            assertThat(notebook.female("A1").tag().value()).isEqualTo("A1");
        }
    }

    @Test
    void an_abandoned_write_leaves_nothing_behind_but_gives_its_result() {
        try (var notebook = new Notebook(folder)) {
            var tried =
                    notebook.write(
                            tx -> {
                                tx.abandon();
                                return new Animals(tx).add(Notebook.animal("A1")).theSaved();
                            });

            assertThat(tried.tag().value()).isEqualTo("A1");
            assertThat(count(notebook)).isZero();
            assertThat(notebook.database().revision()).isZero();
        }
    }

    @Test
    void a_write_that_changes_nothing_is_not_in_the_journal() {
        try (var notebook = new Notebook(folder)) {
            notebook.write(tx -> new Animals(tx).count());

            assertThat(changes(notebook)).isEmpty();
        }
    }

    @Test
    void a_reader_cannot_write() {
        try (var notebook = new Notebook(folder)) {
            assertThatThrownBy(
                            () -> notebook.read(tx -> new Animals(tx).add(Notebook.animal("A1"))))
                    .isInstanceOf(IllegalStateException.class);
        }
    }

    @Test
    void a_write_within_a_write_is_our_mistake_and_not_a_standstill() {
        try (var notebook = new Notebook(folder)) {
            assertThatThrownBy(() -> notebook.write(tx -> notebook.write(inner -> inner.today())))
                    .isInstanceOf(IllegalStateException.class);
        }
    }

    @Test
    void a_reader_sees_the_moment_it_began_while_another_writes() throws Exception {
        try (var notebook = new Notebook(folder)) {
            notebook.female("A1");
            var counted = new CountDownLatch(1);
            var written = new CountDownLatch(1);
            var reader =
                    CompletableFuture.supplyAsync(
                            () ->
                                    notebook.read(
                                            tx -> {
                                                int before = new Animals(tx).count();
                                                counted.countDown();
                                                await(written);
                                                return before + " " + new Animals(tx).count();
                                            }));
            await(counted);
            notebook.female("A2");
            written.countDown();

            assertThat(reader.get(10, TimeUnit.SECONDS)).isEqualTo("1 1");
            assertThat(count(notebook)).isEqualTo(2);
        }
    }

    @Test
    void a_file_that_is_no_database_is_refused_and_left_alone() throws IOException {
        var file = folder.resolve(Database.FILE);
        Files.writeString(file, "tag;name;sex\nA1;Ada;female\n".repeat(200));

        assertThatThrownBy(() -> Database.open(folder, Notebook.CLOCK))
                .isInstanceOf(StoreFailure.class);

        assertThat(Files.readString(file)).startsWith("tag;name;sex");
    }

    @Test
    void a_file_that_is_damaged_is_refused() throws IOException {
        try (var notebook = new Notebook(folder)) {
            for (int i = 0; i < 200; i++) {
                notebook.female("A" + i);
            }
        }
        var file = folder.resolve(Database.FILE);
        var bytes = Files.readAllBytes(file);
        // Past the first page, which holds the header and the schema's root.
        for (int i = 8192; i < bytes.length; i++) {
            bytes[i] = (byte) (i * 31);
        }
        Files.write(file, bytes);

        assertThatThrownBy(() -> Database.open(folder, Notebook.CLOCK))
                .isInstanceOf(StoreFailure.class);
    }

    @Test
    void records_of_a_later_version_of_the_program_are_refused() throws SQLException {
        new Notebook(folder).close();
        try (var connection =
                        DriverManager.getConnection(
                                "jdbc:sqlite:" + folder.resolve(Database.FILE));
                var statement = connection.createStatement()) {
            statement.executeUpdate(
                    "insert into flyway_schema_history (installed_rank, version, description,"
                            + " type, script, checksum, installed_by, installed_on,"
                            + " execution_time, success) values (99, '99', 'later', 'SQL',"
                            + " 'V99__later.sql', 1, 'x', '2030-01-01', 1, 1)");
        }

        assertThatThrownBy(() -> Database.open(folder, Notebook.CLOCK))
                .isInstanceOf(StoreFailure.class);
    }

    @Test
    void the_file_itself_refuses_what_cannot_be() throws SQLException {
        try (var notebook = new Notebook(folder)) {
            var dam = notebook.female("A1");
            assertRefused("update animal set sex = 'YES' where id = " + dam.id());
            assertRefused("update animal set dam = id where id = " + dam.id());
            assertRefused("update animal set dam = 4711 where id = " + dam.id());
            assertRefused("update animal set hatched = 'May' where id = " + dam.id());
            assertRefused("update animal set place = 'shelf' where id = " + dam.id());
            assertRefused(
                    "insert into weighing (version, animal, made_on, grams, notes)"
                            + " values (1, "
                            + dam.id()
                            + ", '2024-01-01', -3, '')");
        }
    }

    @Test
    void another_program_can_write_between_two_writes_of_ours() throws SQLException {
        try (var notebook = new Notebook(folder)) {
            notebook.female("A1");
            try (var connection =
                            DriverManager.getConnection(
                                    "jdbc:sqlite:"
                                            + folder.resolve(Database.FILE)
                                            + "?busy_timeout=0");
                    var statement = connection.createStatement()) {
                statement.executeUpdate("update animal set name = 'Clementine'");
            }

            assertThat(notebook.read(tx -> new Animals(tx).byTag("A1")).orElseThrow().name())
                    .isEqualTo("Clementine");
            notebook.female("A2");
        }
    }

    @Test
    void the_day_is_the_keepers_own() {
        var tokyo = Clock.fixed(Instant.parse("2024-05-10T20:00:00Z"), ZoneId.of("Asia/Tokyo"));
        try (var database = Database.open(folder, tokyo)) {
            LocalDate day = database.read(Transaction::today);
            assertThat(day).isEqualTo(LocalDate.of(2024, 5, 11));
        }
    }

    private static int count(Notebook notebook) {
        return notebook.read(tx -> new Animals(tx).count());
    }

    private static List<Change> changes(Notebook notebook) {
        return notebook.read(tx -> new Journal(tx).latest(10));
    }

    private void assertRefused(String sql) {
        assertThatThrownBy(
                        () -> {
                            try (var connection =
                                            DriverManager.getConnection(
                                                    "jdbc:sqlite:"
                                                            + folder.resolve(Database.FILE)
                                                            + "?foreign_keys=true");
                                    var statement = connection.createStatement()) {
                                statement.executeUpdate(sql);
                            }
                        })
                .describedAs(sql)
                .isInstanceOf(SQLException.class)
                .hasMessageMatching("(?s).*(CONSTRAINT|cannot store).*");
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(10, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
