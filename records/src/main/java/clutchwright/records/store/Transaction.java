package clutchwright.records.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedSet;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;

/// Reads and writes that belong together: all of them happen or none does.
///
/// Whatever is written through it is written in the journal too, as it was and as it became; a
/// transaction that wrote nothing leaves no change behind.
public final class Transaction {

    private final Connection connection;
    private final Path folder;
    private final JdbcClient client;
    private final Clock clock;
    private final @Nullable Author author;
    private final String what;
    private final SequencedSet<Long> touchedAnimals = new LinkedHashSet<>();
    private final Instant now;
    private final Map<String, List<Key>> keysTo = new HashMap<>();
    private @Nullable ChangeId change;
    private boolean abandoned;

    @SuppressWarnings("resource")
    Transaction(
            Connection connection, Path folder, Clock clock, @Nullable Author author, String what) {
        this.connection = connection;
        this.folder = folder;
        this.client = JdbcClient.create(new SingleConnectionDataSource(connection, true));
        this.clock = clock;
        this.author = author;
        this.what = what;
        this.now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    /// Every row of an answer; the parameters fill the question marks in order. Not for writing.
    public <T> List<T> list(Function<Row, T> each, String sql, Object... parameters) {
        return client.sql(sql)
                .params(List.of(parameters))
                .query((answer, _) -> each.apply(new Row(answer)))
                .list();
    }

    /// The first row of an answer, if it has one.
    public <T> Optional<T> first(Function<Row, T> each, String sql, Object... parameters) {
        return list(each, sql, parameters).stream().findFirst();
    }

    /// A single number, such as a count.
    public long number(String sql, Object... parameters) {
        return client.sql(sql).params(List.of(parameters)).query(Long.class).single();
    }

    /// Where what is kept as files lies, beside the database.
    public Path folder() {
        return folder;
    }

    /// The moment at which the transaction began.
    public Instant now() {
        return now;
    }

    /// That moment's day where the keeper lives.
    public LocalDate today() {
        return LocalDate.ofInstant(now, clock.getZone());
    }

    /// @throws IllegalStateException in a transaction that only reads
    public Author author() {
        if (author == null) {
            throw new IllegalStateException("this transaction only reads");
        }
        return author;
    }

    /// Nothing of this transaction will be kept, whatever else it does.
    public void abandon() {
        abandoned = true;
    }

    /// Adds a row.
    ///
    /// @return its id
    public long insert(String table, Values values) {
        var columns = new ArrayList<>(values.columns().keySet());
        columns.add("version");
        var parameters = new ArrayList<@Nullable Object>(values.columns().values());
        parameters.add(1L);
        return insert(table, columns, parameters);
    }

    /// Changes a row if it still is of that version. Where every column already holds its value,
    /// nothing is written.
    ///
    /// @return whether the row is there and was of that version
    public boolean update(String table, long id, long version, Values values) {
        var before = row(table, id).orElse(null);
        if (before == null || !(before.get("version") instanceof Number found)) {
            return false;
        }
        if (found.longValue() != version) {
            return false;
        }
        if (!Image.of(values.columns()).shows(before)) {
            write(table, id, before, values.columns());
        }
        return true;
    }

    /// Changes a row whatever its version, where no person has edited what they saw of it.
    ///
    /// @throws IllegalStateException if there is no such row
    public void update(String table, long id, Values values) {
        write(table, id, theRow(table, id), values.columns());
    }

    /// Gives a row a new version where something that is part of it was changed in other rows.
    public void touch(String table, long id) {
        var row = theRow(table, id);
        write(table, id, row, new TreeMap<>(Map.of("id", id)));
    }

    /// Takes a row away.
    ///
    /// @throws IllegalStateException if there is no such row
    public void delete(String table, long id) {
        author();
        var before = theRow(table, id);
        client.sql("delete from " + table + " where id = ?").param(id).update();
        journal(table, id, before, null);
    }

    /// Takes away every row whose column holds that value.
    public void deleteWhere(String table, String column, long value) {
        client.sql("select id from " + table + " where " + column + " = ? order by id")
                .param(value)
                .query(Long.class)
                .list()
                .forEach(id -> delete(table, id));
    }

    /// Every column of a row.
    public Optional<Map<String, @Nullable Object>> row(String table, long id) {
        return client
                .sql("select * from " + table + " where id = ?")
                .param(id)
                .query()
                .listOfRows()
                .stream()
                .findFirst();
    }

    /// The change that this transaction makes, once it has written something.
    public Optional<ChangeId> change() {
        return Optional.ofNullable(change);
    }

    /// The change that this transaction makes, opened now if it was not.
    public ChangeId openedChange() {
        var opened = change;
        if (opened == null) {
            long id =
                    client.sql(
                                    "insert into change (made_at, made_by, what)"
                                            + " values (?, ?, ?) returning id")
                            .params(List.of(now.toString(), author().name(), what))
                            .query(Long.class)
                            .single();
            opened = new ChangeId(id);
            change = opened;
        }
        return opened;
    }

    /// Whether a row is there and is what an image shows, its version aside.
    public boolean isAs(String table, long id, Image image) {
        return row(table, id).filter(image::shows).isPresent();
    }

    /// Puts a row back to what an image of the journal shows, in a version of its own.
    public void restore(String table, long id, Image image) {
        var current = row(table, id).orElse(null);
        if (current == null) {
            var columns = new ArrayList<>(image.values().keySet());
            var parameters = new ArrayList<@Nullable Object>(image.values().values());
            int version = columns.indexOf("version");
            if (version >= 0 && parameters.get(version) instanceof Number old) {
                // Whoever still has the row on a screen must notice that it was gone meanwhile.
                parameters.set(version, old.longValue() + 1);
            }
            insert(table, columns, parameters);
        } else {
            var values = new TreeMap<String, @Nullable Object>(image.values());
            values.remove("version");
            values.remove("id");
            write(table, id, current, values);
        }
    }

    /// Notes in the journal that a change was taken back by another. Taking back a change that
    /// itself took something back lets that stand again.
    public void markUndone(ChangeId undone, ChangeId by, Optional<ChangeId> standsAgain) {
        client.sql("update change set undone_by = ? where id = ?")
                .params(List.of(by.value(), undone.value()))
                .update();
        client.sql("update change set undoes = ? where id = ?")
                .params(List.of(undone.value(), by.value()))
                .update();
        standsAgain.ifPresent(
                change ->
                        client.sql("update change set undone_by = null where id = ?")
                                .param(change.value())
                                .update());
    }

    /// Does something that a constraint may forbid, or that may find itself that it cannot stand,
    /// and takes it back if so.
    ///
    /// @param something gives nothing where it cannot stand
    /// @return nothing if it was taken back
    public <R> Optional<R> attempt(Supplier<Optional<R>> something) {
        var changeBefore = change;
        try {
            var here = connection.setSavepoint();
            try {
                var done = something.get();
                if (done.isPresent()) {
                    connection.releaseSavepoint(here);
                    return done;
                }
            } catch (DataAccessException e) {
                // What the constraint said is in the way is for the caller to find out.
            }
            connection.rollback(here);
            change = changeBefore;
            return Optional.empty();
        } catch (SQLException e) {
            throw new StoreFailure("the database could not mark a place to come back to", e);
        }
    }

    /// The rows that point at this one: the table, the column and the rows' ids.
    public List<Pointing> pointingAt(String table, long id) {
        return keysTo.computeIfAbsent(table, this::keysTo).stream()
                .map(key -> new Pointing(key.table(), key.column(), rowsPointing(key, id)))
                .filter(pointing -> !pointing.rows().isEmpty())
                .toList();
    }

    private List<Key> keysTo(String table) {
        var found = new ArrayList<Key>();
        try (var keys = connection.getMetaData().getExportedKeys(null, null, table)) {
            while (keys.next()) {
                found.add(new Key(keys.getString("FKTABLE_NAME"), keys.getString("FKCOLUMN_NAME")));
            }
        } catch (SQLException e) {
            throw new StoreFailure("the database does not tell what points at " + table, e);
        }
        return found;
    }

    private List<Long> rowsPointing(Key key, long id) {
        return client.sql("select id from " + key.table() + " where " + key.column() + " = ?")
                .param(id)
                .query(Long.class)
                .list();
    }

    private record Key(String table, String column) {}

    /// @param rows ids, at least one where it was found
    public record Pointing(String table, String column, List<Long> rows) {

        public Pointing {
            rows = List.copyOf(rows);
        }
    }

    boolean isAbandoned() {
        return abandoned;
    }

    /// Brings up to date what follows from the rows that were written.
    void settle() {
        if (!touchedAnimals.isEmpty()) {
            new Derived(client).refresh(List.copyOf(touchedAnimals));
            touchedAnimals.clear();
        }
    }

    private long insert(String table, List<String> columns, List<@Nullable Object> parameters) {
        author();
        var after =
                client.sql(
                                "insert into "
                                        + table
                                        + " ("
                                        + String.join(", ", columns)
                                        + ") values ("
                                        + String.join(", ", columns.stream().map(_ -> "?").toList())
                                        + ") returning *")
                        .params(parameters)
                        .query()
                        .singleRow();
        long id = idOf(table, after);
        journal(table, id, null, after);
        return id;
    }

    private void write(
            String table,
            long id,
            Map<String, @Nullable Object> before,
            Map<String, @Nullable Object> columns) {
        author();
        var parameters = new ArrayList<@Nullable Object>(columns.values());
        parameters.add(id);
        var after =
                client.sql(
                                "update "
                                        + table
                                        + " set "
                                        + String.join(
                                                ", ",
                                                columns.keySet().stream()
                                                        .map(column -> column + " = ?")
                                                        .toList())
                                        + ", version = version + 1 where id = ? returning *")
                        .params(parameters)
                        .query()
                        .singleRow();
        journal(table, id, before, after);
    }

    private void journal(
            String table,
            long id,
            @Nullable Map<String, @Nullable Object> before,
            @Nullable Map<String, @Nullable Object> after) {
        var animals = new LinkedHashSet<Long>();
        animalOf(table, id, before).ifPresent(animals::add);
        animalOf(table, id, after).ifPresent(animals::add);
        touchedAnimals.addAll(animals);
        touchPlace(table, id);
        var parameters = new ArrayList<@Nullable Object>();
        parameters.add(openedChange().value());
        parameters.add(table);
        parameters.add(id);
        parameters.add(animals.isEmpty() ? null : animals.getLast());
        parameters.add(before == null ? null : Image.of(before).toString());
        parameters.add(after == null ? null : Image.of(after).toString());
        client.sql(
                        "insert into entry"
                                + " (change, table_name, row_id, animal, before_image, after_image)"
                                + " values (?, ?, ?, ?, ?, ?)")
                .params(parameters)
                .update();
    }

    /// An animal is found by the name of the place it is in.
    private void touchPlace(String table, long id) {
        var whose =
                switch (table) {
                    case "tub" -> "t.id";
                    case "rack" -> "t.rack";
                    case "room" -> "r.room";
                    default -> "";
                };
        if (!whose.isEmpty()) {
            touchedAnimals.addAll(
                    client.sql(
                                    "select a.id from animal a join tub t on t.id = a.place"
                                            + " join rack r on r.id = t.rack where "
                                            + whose
                                            + " = ?")
                            .param(id)
                            .query(Long.class)
                            .list());
        }
    }

    private Map<String, @Nullable Object> theRow(String table, long id) {
        return row(table, id)
                .orElseThrow(() -> new IllegalStateException("no row " + id + " in " + table));
    }

    private static Optional<Long> animalOf(
            String table, long id, @Nullable Map<String, @Nullable Object> row) {
        if (table.equals("animal")) {
            return Optional.of(id);
        }
        return row != null && row.get("animal") instanceof Number animal
                ? Optional.of(animal.longValue())
                : Optional.empty();
    }

    private static long idOf(String table, Map<String, @Nullable Object> row) {
        if (row.get("id") instanceof Number id) {
            return id.longValue();
        }
        throw new StoreFailure("a row of " + table + " came back without its id");
    }
}
