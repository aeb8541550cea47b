package clutchwright.records.journal;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.store.Author;
import clutchwright.records.store.ChangeId;
import clutchwright.records.store.Image;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.TreeSet;

/// What was done, by whom and when, and the way back.
public final class Journal {

    private final Transaction tx;

    public Journal(Transaction tx) {
        this.tx = tx;
    }

    /// The newest changes, newest first.
    public List<Change> latest(int most) {
        return tx.list(Journal::change, "select * from change order by id desc limit ?", most);
    }

    /// The newest changes that are older than that one, newest first.
    public List<Change> before(ChangeId newer, int most) {
        return tx.list(
                Journal::change,
                "select * from change where id < ? order by id desc limit ?",
                newer.value(),
                most);
    }

    /// How many rows each of these changes wrote.
    public Map<ChangeId, Integer> sizes(List<Change> changes) {
        var sizes = new LinkedHashMap<ChangeId, Integer>();
        if (!changes.isEmpty()) {
            var ids = changes.stream().map(Change::id).sorted().toList();
            tx.list(
                            row -> new Size(new ChangeId(row.number("id")), row.number("rows")),
                            "select change as id, count(*) as rows from entry"
                                    + " where change between ? and ? group by change",
                            ids.getFirst().value(),
                            ids.getLast().value())
                    .forEach(size -> sizes.put(size.id(), Math.toIntExact(size.rows())));
        }
        return sizes;
    }

    private record Size(ChangeId id, long rows) {}

    public Optional<Change> find(ChangeId id) {
        return tx.first(Journal::change, "select * from change where id = ?", id.value());
    }

    /// Everything that one change wrote, in the order in which it was written.
    public List<Entry> entriesOf(ChangeId change) {
        return entries("e.change = ? order by e.id", change.value());
    }

    /// A part of the same, for changes of very many rows.
    public List<Entry> entriesOf(ChangeId change, int skipped, int most) {
        return entries(
                "e.change = ? order by e.id limit ? offset ?", change.value(), most, skipped);
    }

    /// One row's history, newest first.
    public List<Entry> historyOf(String table, long row) {
        return entries("e.table_name = ? and e.row_id = ? order by e.id desc", table, row);
    }

    /// An animal's history, newest first: its own row and all that is written about it.
    public List<Entry> historyOf(AnimalId animal) {
        return entries("e.animal = ? order by e.id desc", animal.value());
    }

    /// Puts everything that a change wrote back to what it was before, if it all still is as the
    /// change left it and nothing written later needs it. That is a change of its own.
    ///
    /// @throws IllegalStateException in a transaction that only reads or has written something
    public Undo undo(ChangeId id) {
        if (tx.change().isPresent()) {
            throw new IllegalStateException("taking back " + id + " needs its own transaction");
        }
        tx.author();
        var change = find(id);
        if (change.isEmpty()) {
            return new Undo.NoSuchChange(id);
        }
        if (change.get().undoneBy().isPresent()) {
            return new Undo.AlreadyUndone(change.get().undoneBy().get());
        }
        return new Undoing(tx, this, change.get()).result();
    }

    private List<Entry> entries(String where, Object... parameters) {
        return tx.list(
                row -> {
                    var before = row.findText("before_image").map(Image::read);
                    var after = row.findText("after_image").map(Image::read);
                    return new Entry(
                            change(row),
                            row.text("table_name"),
                            row.number("row_id"),
                            row.findNumber("animal").map(AnimalId::new),
                            before.isEmpty()
                                    ? Entry.Kind.ADDED
                                    : after.isEmpty() ? Entry.Kind.REMOVED : Entry.Kind.CHANGED,
                            differing(before, after));
                },
                "select c.*, e.table_name, e.row_id, e.animal, e.before_image, e.after_image"
                        + " from entry e join change c on c.id = e.change where "
                        + where,
                parameters);
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private static SequencedMap<String, Entry.BeforeAfter> differing(
            Optional<Image> before, Optional<Image> after) {
        var columns = new TreeSet<String>();
        before.ifPresent(image -> columns.addAll(image.columns()));
        after.ifPresent(image -> columns.addAll(image.columns()));
        columns.remove("id");
        columns.remove("version");
        var found = new LinkedHashMap<String, Entry.BeforeAfter>();
        for (var column : columns) {
            var was = before.flatMap(image -> image.text(column));
            var is = after.flatMap(image -> image.text(column));
            if (!was.equals(is)) {
                found.put(column, new Entry.BeforeAfter(was, is));
            }
        }
        return found;
    }

    static Change change(Row row) {
        return new Change(
                new ChangeId(row.number("id")),
                Instant.parse(row.text("made_at")),
                new Author(row.text("made_by")),
                row.text("what"),
                row.findNumber("undoes").map(ChangeId::new),
                row.findNumber("undone_by").map(ChangeId::new));
    }

    /// The changes that stand and touched those rows after that change, newest first.
    List<Change> laterThan(ChangeId change, List<Touched> rows) {
        var found = new LinkedHashMap<ChangeId, Change>();
        for (var row : rows) {
            tx.list(
                            Journal::change,
                            "select distinct c.* from change c join entry e on e.change = c.id"
                                    + " where e.table_name = ? and e.row_id = ? and c.id > ?"
                                    + " and c.undone_by is null"
                                    // What was done later and taken back again is no obstacle.
                                    + " and (c.undoes is null or c.undoes < ?)",
                            row.table(),
                            row.row(),
                            change.value(),
                            change.value())
                    .forEach(later -> found.put(later.id(), later));
        }
        var all = new ArrayList<>(found.values());
        all.sort((a, b) -> b.id().compareTo(a.id()));
        return all;
    }

    record Touched(String table, long row) {}
}
