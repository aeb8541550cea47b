package clutchwright.records.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.Notebook;
import clutchwright.records.clutches.Candling;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.clutches.EggId;
import clutchwright.records.clutches.Eggs;
import clutchwright.records.pairings.PairingId;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.pairings.SignSeen;
import clutchwright.records.plans.PlanWord;
import clutchwright.records.plans.PlanWords;
import clutchwright.records.plans.Plans;
import clutchwright.records.plans.Price;
import clutchwright.records.plans.Prices;
import clutchwright.records.plans.SavedPlan;
import clutchwright.records.projects.Project;
import clutchwright.records.projects.ProjectId;
import clutchwright.records.projects.Projects;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteDataSource;

/// A collection that an earlier version wrote is opened by this one, with all that it holds.
class EarlierSchemaTest {

    /// Two animals, their pairing, two signs of it and one that was removed since.
    private static final List<String> FIRST_VERSION =
            List.of(
                    """
                    insert into change (made_at, made_by, what)
                    values ('2024-01-01T00:00:00Z', 'Ada', 'test')""",
                    """
                    insert into animal (id, version, tag, tag_key, name, sex, without_sire, origin,
                        origin_from, line, credit, status, species, notes)
                    values (1, 1, 'D1', 'd1', '', 'FEMALE', 0, 'UNKNOWN', '', '', '', 'KEPT',
                        'python-regius', ''),
                        (2, 1, 'S1', 's1', '', 'MALE', 0, 'UNKNOWN', '', '', '', 'KEPT',
                        'python-regius', '')""",
                    """
                    insert into pairing (id, version, season, dam, sire, state, put_together, notes)
                    values (1, 1, 2024, 1, 2, 'ACTIVE', '2023-12-01', '')""",
                    """
                    insert into sign_seen (id, version, pairing, kind, seen_on, notes)
                    values (1, 1, 1, 'LOCK', '2023-12-03', 'at night'),
                        (4, 2, 1, 'OVULATION', '2024-02-20', '')""",
                    """
                    insert into entry (change, table_name, row_id, before_image)
                    values (1, 'sign_seen', 9, '{}')""");

    /// A clutch of three eggs and a look at each; the ninth candling was removed since.
    private static final List<String> FOURTH_VERSION =
            List.of(
                    """
                    insert into clutch (id, version, season, running, dam, sire, without_sire,
                        laid_on, species, notes)
                    values (1, 1, 2024, 1, 1, 2, 0, '2024-04-01', 'python-regius', '')""",
                    """
                    insert into egg (id, version, clutch, running, fate, finding)
                    values (1, 1, 1, 1, 'INCUBATING', ''), (2, 1, 1, 2, 'INCUBATING', ''),
                        (3, 1, 1, 3, 'SLUG', '')""",
                    """
                    insert into candling (id, version, egg, seen_on, finding, notes)
                    values (1, 1, 1, '2024-04-06', 'GOOD', 'veins all round'),
                        (2, 1, 2, '2024-04-06', 'DOUBTFUL', ''),
                        (3, 1, 3, '2024-04-06', 'SLUG', '')""",
                    """
                    insert into entry (change, table_name, row_id, before_image)
                    values (1, 'candling', 9, '{}')""");

    @Test
    void looks_at_eggs_of_the_fourth_version_stay_and_others_join_them(@TempDir Path folder)
            throws SQLException {
        var source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:" + folder.resolve("clutchwright.db"));
        written(source, Dialect.SQLITE, "4", concat(FIRST_VERSION, FOURTH_VERSION));

        try (var notebook = new Notebook(Database.open(folder, Notebook.CLOCK))) {
            holdsLooks(notebook);
        }
    }

    @Test
    void so_do_looks_at_eggs_on_postgresql(@TempDir Path folder) throws IOException, SQLException {
        try (var server = EmbeddedPostgres.builder().start()) {
            written(
                    server.getPostgresDatabase(),
                    Dialect.POSTGRESQL,
                    "4",
                    concat(FIRST_VERSION, FOURTH_VERSION));
            var url = server.getJdbcUrl("postgres", "postgres");

            try (var notebook = new Notebook(Database.url(url, folder, Notebook.CLOCK))) {
                holdsLooks(notebook);
            }
        }
    }

    @Test
    void aims_join_what_the_fifth_version_holds(@TempDir Path folder) throws SQLException {
        var source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:" + folder.resolve("clutchwright.db"));
        written(source, Dialect.SQLITE, "5", concat(FIRST_VERSION, FOURTH_VERSION));

        try (var notebook = new Notebook(Database.open(folder, Notebook.CLOCK))) {
            holdsAims(notebook);
        }
    }

    @Test
    void so_do_aims_on_postgresql(@TempDir Path folder) throws IOException, SQLException {
        try (var server = EmbeddedPostgres.builder().start()) {
            written(
                    server.getPostgresDatabase(),
                    Dialect.POSTGRESQL,
                    "5",
                    concat(FIRST_VERSION, FOURTH_VERSION));
            var url = server.getJdbcUrl("postgres", "postgres");

            try (var notebook = new Notebook(Database.url(url, folder, Notebook.CLOCK))) {
                holdsAims(notebook);
            }
        }
    }

    private static void holdsAims(Notebook notebook) {
        assertThat(looks(notebook)).hasSize(3);
        var pair = new SavedPlan.Pair(new AnimalId(1), new AnimalId(2));
        var price =
                new Price(
                        Notebook.ROYAL,
                        "Clown",
                        Optional.of(Sex.FEMALE),
                        300,
                        Optional.of(new Price.Later(4, 250)));
        notebook.write(
                tx -> {
                    new Prices(tx).replace(Notebook.ROYAL, List.of(price));
                    new PlanWords(tx)
                            .say(2025, pair.dam(), pair.sire(), PlanWord.Word.PINNED, "settled");
                    return new Plans(tx).add(2025, "First", 900, 901.5, List.of(pair)).theSaved();
                });
        assertThat(notebook.list(tx -> new Prices(tx).of(Notebook.ROYAL))).containsExactly(price);
        assertThat(notebook.list(tx -> new PlanWords(tx).ofSeason(2025))).hasSize(1);
        assertThat(notebook.list(tx -> new Plans(tx).ofSeason(2025)))
                .extracting(SavedPlan::bound, SavedPlan::pairs)
                .containsExactly(tuple(901.5, List.of(pair)));
        var project =
                new Project(
                        new ProjectId(0),
                        1,
                        "Aim",
                        Notebook.ROYAL,
                        "Clown Piebald",
                        Project.Telling.BY_EYE,
                        Project.Means.USUAL,
                        20,
                        1,
                        Project.State.OPEN,
                        "",
                        List.of(new Project.Purchase("Clown", Sex.MALE, 200)));
        notebook.write(tx -> new Projects(tx).add(project).theSaved());
        assertThat(notebook.list(tx -> new Projects(tx).all()))
                .extracting(Project::means, Project::purchases)
                .containsExactly(tuple(project.means(), project.purchases()));
    }

    private static List<String> concat(List<String> some, List<String> others) {
        return Stream.concat(some.stream(), others.stream()).toList();
    }

    private static void holdsLooks(Notebook notebook) {
        assertThat(looks(notebook))
                .extracting(Candling::finding)
                .containsExactly(
                        Candling.Finding.GOOD, Candling.Finding.DOUBTFUL, Candling.Finding.SLUG);
        var egg =
                notebook.write(
                        tx -> {
                            var eggs = new Eggs(tx);
                            eggs.weigh(new EggId(1), Notebook.TODAY, 80).theSaved();
                            return eggs.candle(
                                            new EggId(1),
                                            Notebook.TODAY,
                                            Candling.Finding.COLLAPSED,
                                            "")
                                    .theSaved();
                        });
        assertThat(egg.lies()).isEmpty();
        assertThat(egg.weights()).hasSize(1);
        // The ninth was taken once: the journal still speaks of it.
        assertThat(egg.candlings().getLast().id()).isGreaterThan(9);
    }

    private static List<Candling> looks(Notebook notebook) {
        return notebook.list(
                tx ->
                        new Clutches(tx)
                                .all().stream()
                                        .flatMap(clutch -> clutch.eggs().stream())
                                        .flatMap(egg -> egg.candlings().stream())
                                        .toList());
    }

    @Test
    void signs_of_the_first_version_stay_and_building_joins_them(@TempDir Path folder)
            throws SQLException {
        var source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:" + folder.resolve("clutchwright.db"));
        written(source, Dialect.SQLITE, "1", FIRST_VERSION);

        try (var notebook = new Notebook(Database.open(folder, Notebook.CLOCK))) {
            holds(notebook);
        }
    }

    @Test
    void so_they_do_on_postgresql(@TempDir Path folder) throws IOException, SQLException {
        try (var server = EmbeddedPostgres.builder().start()) {
            written(server.getPostgresDatabase(), Dialect.POSTGRESQL, "1", FIRST_VERSION);
            var url = server.getJdbcUrl("postgres", "postgres");

            try (var notebook = new Notebook(Database.url(url, folder, Notebook.CLOCK))) {
                holds(notebook);
            }
        }
    }

    private static void written(
            DataSource source, Dialect dialect, String version, List<String> rows)
            throws SQLException {
        Migrations.run(source, dialect, version);
        try (var connection = source.getConnection();
                var statement = connection.createStatement()) {
            for (var each : rows) {
                statement.execute(each);
            }
        }
    }

    private static void holds(Notebook notebook) {
        var pairing = new PairingId(1);
        assertThat(notebook.list(tx -> new Pairings(tx).signs(pairing)))
                .containsExactly(
                        new SignSeen(
                                1,
                                1,
                                pairing,
                                SignSeen.Kind.LOCK,
                                LocalDate.of(2023, 12, 3),
                                "at night"),
                        new SignSeen(
                                4,
                                2,
                                pairing,
                                SignSeen.Kind.OVULATION,
                                LocalDate.of(2024, 2, 20),
                                ""));
        var building =
                notebook.write(
                        tx ->
                                new Pairings(tx)
                                        .see(pairing, SignSeen.Kind.BUILDING, Notebook.TODAY, "")
                                        .theSaved());
        // The ninth was taken once: the journal still speaks of it.
        assertThat(building.id()).isGreaterThan(9);
        assertThat(notebook.list(tx -> new Pairings(tx).signs(pairing))).contains(building);
        assertThat(notebook.database().house()).hasSize(32);
    }
}
