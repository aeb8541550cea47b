package clutchwright.records.clutches;

import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Findings;
import clutchwright.records.checks.Problem;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import clutchwright.records.store.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/// The boxes that eggs are kept in.
public final class Boxes {

    private final Transaction tx;

    public Boxes(Transaction tx) {
        this.tx = tx;
    }

    public Edit<Box> add(String label, String incubator, String notes) {
        var box = new Box(new BoxId(0), 1, label, incubator, notes);
        return problems(box)
                .<Box>refusal()
                .orElseGet(
                        () -> new Edit.Saved<>(theBox(new BoxId(tx.insert("box", values(box))))));
    }

    /// The box of that label, made if it is not there.
    ///
    /// @throws IllegalStateException if the label is blank
    public Box labelled(String label) {
        return tx.first(Boxes::read, "select * from box where label_key = ?", Words.key(label))
                .orElseGet(() -> add(label, "", "").theSaved());
    }

    public Edit<Box> update(Box changed) {
        var current = theBox(changed.id());
        return problems(changed)
                .<Box>refusal()
                .orElseGet(
                        () ->
                                tx.update(
                                                "box",
                                                changed.id().value(),
                                                changed.version(),
                                                values(changed))
                                        ? new Edit.Saved<>(theBox(changed.id()))
                                        : new Edit.Stale<>(current));
    }

    /// Not while an egg is or was in it.
    ///
    /// @return the box that was removed
    public Edit<Box> remove(Box box) {
        var current = theBox(box.id());
        if (current.version() != box.version()) {
            return new Edit.Stale<>(current);
        }
        long eggs = tx.number("select count(*) from egg where box = ?", box.id().value());
        if (eggs > 0) {
            var uses = new LinkedHashMap<String, Integer>();
            uses.put("egg", Math.toIntExact(eggs));
            return Edit.refused(new Problem.StillUsed(uses));
        }
        tx.delete("box", box.id().value());
        return new Edit.Saved<>(current);
    }

    public Optional<Box> find(BoxId id) {
        return tx.first(Boxes::read, "select * from box where id = ?", id.value());
    }

    /// @throws IllegalArgumentException if there is none
    public Box theBox(BoxId id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("no box " + id.value()));
    }

    /// By label.
    public List<Box> all() {
        return tx.list(Boxes::read, "select * from box order by label_key");
    }

    private Findings problems(Box box) {
        return new Findings(tx.today())
                .notBlank(Field.BOX, box.label())
                .addIf(
                        tx.number(
                                        "select count(*) from box where label_key = ? and id <> ?",
                                        Words.key(box.label()),
                                        box.id().value())
                                > 0,
                        new Problem.NameTaken(Field.BOX, box.label().strip()));
    }

    private static Values values(Box box) {
        return Values.of()
                .set("label", box.label().strip())
                .set("label_key", Words.key(box.label()))
                .set("incubator", box.incubator().strip())
                .set("notes", box.notes().strip());
    }

    private static Box read(Row row) {
        return new Box(
                new BoxId(row.number("id")),
                row.number("version"),
                row.text("label"),
                row.text("incubator"),
                row.text("notes"));
    }
}
