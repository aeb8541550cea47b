package clutchwright.records.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/// Reads and writes that belong together: all of them happen or none does.
///
/// Whatever is written through it is written in the journal too, as it was and as it became; a
/// transaction that wrote nothing leaves no change behind.
public final class Transaction {

    private final Connection connection;
    private final Path folder;
    private final Clock clock;
    private final Instant now;
    private final Prepared prepared;
    private final Pointers pointers;
    private final Ledger ledger;
    private boolean abandoned;

    Transaction(
            Connection connection,
            Prepared prepared,
            Path folder,
            Clock clock,
            @Nullable Author author,
            String what) {
        this.connection = connection;
        this.prepared = prepared;
        this.folder = folder;
        this.clock = clock;
        this.now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
        this.pointers = new Pointers(connection, prepared);
        this.ledger = new Ledger(prepared, author, what, now);
    }

    /// Every row of an answer; the parameters fill the question marks in order. Not for writing.
    public <T> List<T> list(Function<Row, T> each, String sql, Object... parameters) {
        return prepared.list(each, sql, List.of(parameters));
    }

    /// The first row of an answer, if it has one.
    public <T> Optional<T> first(Function<Row, T> each, String sql, Object... parameters) {
        return list(each, sql, parameters).stream().findFirst();
    }

    /// A single number, such as a count.
    public long number(String sql, Object... parameters) {
        return list(Row::onlyNumber, sql, parameters).getFirst();
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
        return ledger.author();
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

    /// Adds many rows of what instruments said, which is no deed of a person: in no journal.
    ///
    /// @param rows the parameters of each
    public void log(String sql, List<List<Object>> rows) {
        author();
        prepared.all(sql, rows);
    }

    /// Changes a row if it still is of that version. Where every column already holds its value,
    /// nothing is written.
    ///
    /// @return whether the row is there and was of that version
    public boolean update(String table, long id, long version, Values values) {
        var before = row(table, id).orElse(null);
        if (before == null
                || !(before.get("version") instanceof Number found)
                || found.longValue() != version) {
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
        write(table, id, theRow(table, id), Map.of());
    }

    /// Takes a row away.
    ///
    /// @throws IllegalStateException if there is no such row
    public void delete(String table, long id) {
        author();
        var before = theRow(table, id);
        prepared.update("delete from " + table + " where id = ?", List.of(id));
        ledger.note(table, id, before, null);
    }

    /// Takes away every row whose column holds that value.
    public void deleteWhere(String table, String column, long value) {
        list(
                        row -> row.number("id"),
                        "select id from " + table + " where " + column + " = ? order by id",
                        value)
                .forEach(id -> delete(table, id));
    }

    /// Every column of a row.
    public Optional<Map<String, @Nullable Object>> row(String table, long id) {
        return prepared.first("select * from " + table + " where id = ?", List.of(id));
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

    /// The change that this transaction makes, once it has written something.
    public Optional<ChangeId> change() {
        return ledger.change();
    }

    /// The change that this transaction makes, opened now if it was not.
    public ChangeId openedChange() {
        return ledger.openedChange();
    }

    /// Notes in the journal that a change was taken back by another. Taking back a change that
    /// itself took something back lets that stand again.
    public void markUndone(ChangeId undone, ChangeId by, Optional<ChangeId> standsAgain) {
        ledger.noteUndone(undone, by, standsAgain);
    }

    /// Does something that a constraint may forbid, or that may find itself that it cannot stand,
    /// and takes it back if so.
    ///
    /// @param something gives nothing where it cannot stand
    /// @return nothing if it was taken back
    public <R> Optional<R> attempt(Supplier<Optional<R>> something) {
        var changeBefore = ledger.change();
        try {
            var here = connection.setSavepoint();
            try {
                var done = something.get();
                if (done.isPresent()) {
                    connection.releaseSavepoint(here);
                    return done;
                }
            } catch (StoreFailure e) {
                // What the constraint said is in the way is for the caller to find out.
            }
            connection.rollback(here);
            ledger.forgetSince(changeBefore);
            return Optional.empty();
        } catch (SQLException e) {
            throw new StoreFailure("the database could not mark a place to come back to", e);
        }
    }

    /// The rows that point at this one.
    public List<Pointing> pointingAt(String table, long id) {
        return pointers.at(table, id);
    }

    /// @param rows their ids in that table, at least one
    public record Pointing(String table, String column, List<Long> rows) {

        public Pointing {
            rows = List.copyOf(rows);
        }
    }

    /// What was entered under which key.
    EntryKeys entryKeys() {
        return new EntryKeys(prepared);
    }

    boolean isAbandoned() {
        return abandoned;
    }

    /// Brings up to date what follows from the rows that were written.
    void settle() {
        ledger.settle();
    }

    private long insert(String table, List<String> columns, List<@Nullable Object> parameters) {
        author();
        var after =
                prepared.first(
                                "insert into "
                                        + table
                                        + " ("
                                        + String.join(", ", columns)
                                        + ") values ("
                                        + "?, ".repeat(columns.size() - 1)
                                        + "?) returning *",
                                parameters)
                        .orElseThrow();
        if (!(after.get("id") instanceof Number id)) {
            throw new StoreFailure("a row of " + table + " came back without its id");
        }
        ledger.note(table, id.longValue(), null, after);
        return id.longValue();
    }

    private void write(
            String table,
            long id,
            Map<String, @Nullable Object> before,
            Map<String, @Nullable Object> columns) {
        author();
        var set = columns.keySet().stream().map(column -> column + " = ?, ").toList();
        var parameters = new ArrayList<@Nullable Object>(columns.values());
        parameters.add(id);
        var after =
                prepared.first(
                                "update "
                                        + table
                                        + " set "
                                        + String.join("", set)
                                        + "version = version + 1 where id = ? returning *",
                                parameters)
                        .orElseThrow();
        ledger.note(table, id, before, after);
    }

    private Map<String, @Nullable Object> theRow(String table, long id) {
        return row(table, id)
                .orElseThrow(() -> new IllegalStateException("no row " + id + " in " + table));
    }
}
