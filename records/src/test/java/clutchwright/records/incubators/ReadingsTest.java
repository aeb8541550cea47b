package clutchwright.records.incubators;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clutchwright.records.Notebook;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import clutchwright.records.clutches.Boxes;
import clutchwright.records.journal.Journal;
import clutchwright.records.journal.Undo;
import clutchwright.records.store.Database;
import clutchwright.records.store.StoreFailure;
import clutchwright.records.store.Values;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadingsTest {

    private static final Instant NOON = Instant.parse("2024-05-10T12:00:00Z");

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
    void a_reading_that_comes_twice_counts_once_and_opens_no_change() {
        var sensor = sensor(notebook, "Air", "");
        var revision = notebook.database().revision();

        took(sensor, at(0, 31.5), at(10, 31.7));
        took(sensor, at(10, 31.7), at(20, 31.9));

        assertThat(between(sensor, 0, 60)).containsExactly(at(0, 31.5), at(10, 31.7), at(20, 31.9));
        assertThat(latest(sensor)).isEqualTo(at(20, 31.9));
        assertThat(notebook.database().revision()).isEqualTo(revision);
    }

    @Test
    void a_file_is_taken_back_and_brought_again_by_undo() {
        var sensor = sensor(notebook, "Probe", "");
        took(sensor, at(0, 31.5));

        notebook.write(
                "Brought in box4.csv",
                tx ->
                        new Readings(tx)
                                .bring(sensor.id(), "box4.csv", List.of(at(5, 32), at(9, 32.2))));
        assertThat(between(sensor, 0, 60)).hasSize(3);

        undoLast();
        assertThat(between(sensor, 0, 60)).containsExactly(at(0, 31.5));
        assertThat(notebook.list(tx -> new Readings(tx).files(sensor.id()))).isEmpty();

        undoLast();
        assertThat(between(sensor, 0, 60)).hasSize(3);
    }

    @Test
    void a_course_sums_up_by_stretches_and_leaves_out_those_without_a_reading() {
        var sensor = sensor(notebook, "Air", "");
        took(sensor, at(0, 31), at(20, 32), at(59, 33), at(130, 30));

        var course =
                notebook.list(
                        tx ->
                                new Readings(tx)
                                        .course(
                                                sensor.id(),
                                                NOON,
                                                NOON.plus(Duration.ofHours(9)),
                                                Duration.ofHours(1)));

        assertThat(course)
                .containsExactly(
                        new Stretch(NOON, 31, 32, 33),
                        new Stretch(NOON.plus(Duration.ofHours(2)), 30, 30, 30));
    }

    @Test
    void a_sensor_that_is_removed_comes_back_with_all_it_said() {
        var sensor = sensor(notebook, "Air", "");
        took(sensor, at(0, 31.5));
        notebook.write(tx -> new Readings(tx).bring(sensor.id(), "a.csv", List.of(at(7, 31.6))));

        Edit<Sensor> gone = notebook.write(tx -> new Sensors(tx).remove(sensor));
        assertThat(gone).isInstanceOf(Edit.Saved.class);
        assertThat(notebook.list(tx -> new Sensors(tx).all())).isEmpty();

        undoLast();
        assertThat(notebook.list(tx -> new Sensors(tx).all())).hasSize(1);
        assertThat(between(sensor, 0, 60)).containsExactly(at(0, 31.5), at(7, 31.6));
    }

    @Test
    void two_sensors_cannot_have_one_topic_nor_two_incubators_one_name() {
        var sensor = sensor(notebook, "Air", "house/a");

        var again =
                notebook.write(
                        tx ->
                                new Sensors(tx)
                                        .add(
                                                asked(
                                                        sensor.incubator(),
                                                        "Other",
                                                        new Sensor.Source("house/a", ""))));
        var twin = notebook.write(tx -> new Incubators(tx).add("cabinet ", 31, ""));

        assertThat(again).isEqualTo(Edit.refused(new Problem.NameTaken(Field.TOPIC, "house/a")));
        assertThat(twin).isEqualTo(Edit.refused(new Problem.NameTaken(Field.INCUBATOR, "cabinet")));
    }

    @Test
    void boxes_go_with_the_name_of_their_incubator_and_keep_it_from_being_removed() {
        var cabinet = notebook.write(tx -> new Incubators(tx).add("Cabinet", 31.7, "").theSaved());
        notebook.write(tx -> new Boxes(tx).add("B1", "cabinet", "").theSaved());

        var moved =
                notebook.write(
                        tx ->
                                new Incubators(tx)
                                        .update(
                                                new Incubator(
                                                        cabinet.id(),
                                                        cabinet.version(),
                                                        "North",
                                                        31.5,
                                                        ""))
                                        .theSaved());

        assertThat(notebook.list(tx -> new Boxes(tx).all()))
                .singleElement()
                .satisfies(box -> assertThat(box.incubator()).isEqualTo("North"));
        Edit<Incubator> gone = notebook.write(tx -> new Incubators(tx).remove(moved));
        assertThat(gone)
                .isEqualTo(
                        Edit.refused(new Problem.StillUsed(new LinkedHashMap<>(Map.of("box", 1)))));
    }

    @Test
    void the_store_itself_refuses_a_set_point_that_cooks_eggs() {
        assertThatThrownBy(
                        () ->
                                notebook.write(
                                        tx ->
                                                tx.insert(
                                                        "incubator",
                                                        Values.of()
                                                                .set("name", "Oven")
                                                                .set("name_key", "oven")
                                                                .set("set_point_celsius", 180.0)
                                                                .set("notes", ""))))
                .isInstanceOf(StoreFailure.class);
    }

    /// Two sensors, one of them over two years once a minute: the pages' questions stay answerable
    /// from the index.
    @Test
    void a_million_readings_are_kept_and_summed_up() {
        var sensor = sensor(notebook, "Air", "");
        var batch = new ArrayList<Reading>();
        for (int minute = 0; minute < 1_000_000; minute++) {
            batch.add(
                    new Reading(
                            NOON.plus(Duration.ofMinutes(minute)),
                            31.7 + 0.3 * Math.sin(minute / 229.0)));
            if (batch.size() == 50_000) {
                took(sensor, batch.toArray(Reading[]::new));
                batch.clear();
            }
        }
        var end = NOON.plus(Duration.ofMinutes(999_999));

        long kept = notebook.read(tx -> tx.number("select count(*) from reading"));
        assertThat(kept).isEqualTo(1_000_000);
        assertThat(latest(sensor).at()).isEqualTo(end);
        var plan =
                notebook.list(
                        tx ->
                                tx.list(
                                        row -> row.text("detail"),
                                        "explain query plan select at, celsius from reading"
                                                + " where sensor = 1 order by at desc limit 1"));
        assertThat(plan).singleElement().asString().contains("SEARCH reading USING INDEX");
        var course =
                notebook.list(
                        tx ->
                                new Readings(tx)
                                        .course(
                                                sensor.id(),
                                                end.minus(Duration.ofDays(60)),
                                                end,
                                                Duration.ofHours(4)));
        assertThat(course).hasSizeBetween(360, 362);
        assertThat(course)
                .allSatisfy(
                        part -> {
                            assertThat(part.low()).isGreaterThanOrEqualTo(31.4 - 1e-9);
                            assertThat(part.mean()).isCloseTo(31.7, within(0.3));
                            assertThat(part.high()).isLessThanOrEqualTo(32 + 1e-9);
                        });
    }

    @Test
    void readings_are_kept_on_postgresql_too(@TempDir Path other) throws IOException {
        try (var server = EmbeddedPostgres.builder().start();
                var there =
                        new Notebook(
                                Database.url(
                                        server.getJdbcUrl("postgres", "postgres"),
                                        other,
                                        Notebook.CLOCK))) {
            var sensor = sensor(there, "Air", "house/a");
            there.write(
                    tx -> {
                        new Readings(tx).took(sensor.id(), List.of(at(0, 31), at(20, 33)));
                        new Readings(tx).took(sensor.id(), List.of(at(20, 33)));
                        return new Readings(tx)
                                .bring(sensor.id(), "a.csv", List.of(at(90, 30), at(95, 32)));
                    });

            assertThat(
                            there.list(
                                    tx ->
                                            new Readings(tx)
                                                    .course(
                                                            sensor.id(),
                                                            NOON,
                                                            NOON.plus(Duration.ofHours(9)),
                                                            Duration.ofHours(1))))
                    .containsExactly(
                            new Stretch(NOON, 31, 32, 33),
                            new Stretch(NOON.plus(Duration.ofHours(1)), 30, 31, 32));
        }
    }

    private static Sensor sensor(Notebook notebook, String name, String topic) {
        return notebook.write(
                tx -> {
                    var cabinet = new Incubators(tx).add("Cabinet", 31.7, "").theSaved();
                    return new Sensors(tx)
                            .add(asked(cabinet.id(), name, new Sensor.Source(topic, "")))
                            .theSaved();
                });
    }

    private static Sensor asked(IncubatorId incubator, String name, Sensor.Source source) {
        return new Sensor(
                new SensorId(0),
                1,
                name,
                incubator,
                Optional.empty(),
                source,
                Sensor.Scale.CELSIUS,
                0,
                Duration.ofMinutes(60));
    }

    private void took(Sensor sensor, Reading... readings) {
        notebook.write(
                tx -> {
                    new Readings(tx).took(sensor.id(), List.of(readings));
                    return "";
                });
    }

    private List<Reading> between(Sensor sensor, int fromMinute, int toMinute) {
        return notebook.list(
                tx ->
                        new Readings(tx)
                                .between(
                                        sensor.id(),
                                        NOON.plus(Duration.ofMinutes(fromMinute)),
                                        NOON.plus(Duration.ofMinutes(toMinute))));
    }

    private Reading latest(Sensor sensor) {
        return notebook.read(tx -> new Readings(tx).latest(sensor.id()).orElseThrow());
    }

    private void undoLast() {
        var last = notebook.read(tx -> new Journal(tx).latest(1).getFirst());
        Undo undone = notebook.write("Undo", tx -> new Journal(tx).undo(last.id()));
        assertThat(undone).isInstanceOf(Undo.Undone.class);
    }

    private static Reading at(int minute, double celsius) {
        return new Reading(NOON.plus(Duration.ofMinutes(minute)), celsius);
    }
}
