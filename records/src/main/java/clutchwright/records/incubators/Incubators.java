package clutchwright.records.incubators;

import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Findings;
import clutchwright.records.checks.Problem;
import clutchwright.records.clutches.Box;
import clutchwright.records.clutches.Boxes;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import clutchwright.records.store.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/// The incubators. A box stands in one by its name.
public final class Incubators {

    private final Transaction tx;

    public Incubators(Transaction tx) {
        this.tx = tx;
    }

    /// @param setPointCelsius 20 to 40
    public Edit<Incubator> add(String name, double setPointCelsius, String notes) {
        var incubator = new Incubator(new IncubatorId(0), 1, name, setPointCelsius, notes);
        return problems(incubator)
                .<Incubator>refusal()
                .orElseGet(
                        () ->
                                new Edit.Saved<>(
                                        theIncubator(
                                                new IncubatorId(
                                                        tx.insert(
                                                                "incubator", values(incubator))))));
    }

    /// Boxes that stand in it by its old name go with it.
    public Edit<Incubator> update(Incubator changed) {
        var current = theIncubator(changed.id());
        return problems(changed).<Incubator>refusal().orElseGet(() -> rewrite(changed, current));
    }

    private Edit<Incubator> rewrite(Incubator changed, Incubator current) {
        var boxes = boxes(current);
        if (!tx.update("incubator", changed.id().value(), changed.version(), values(changed))) {
            return new Edit.Stale<>(current);
        }
        if (!changed.name().strip().equals(current.name())) {
            boxes.forEach(
                    box ->
                            tx.update(
                                    "box",
                                    box.id().value(),
                                    Values.of().set("incubator", changed.name().strip())));
        }
        return new Edit.Saved<>(theIncubator(changed.id()));
    }

    /// Not while it has sensors or boxes.
    ///
    /// @return the incubator that was removed
    public Edit<Incubator> remove(Incubator incubator) {
        var current = theIncubator(incubator.id());
        if (current.version() != incubator.version()) {
            return new Edit.Stale<>(current);
        }
        var uses = new LinkedHashMap<String, Integer>();
        var sensors =
                tx.number("select count(*) from sensor where incubator = ?", current.id().value());
        if (sensors > 0) {
            uses.put("sensor", Math.toIntExact(sensors));
        }
        if (!boxes(current).isEmpty()) {
            uses.put("box", boxes(current).size());
        }
        if (!uses.isEmpty()) {
            return Edit.refused(new Problem.StillUsed(uses));
        }
        tx.delete("incubator", current.id().value());
        return new Edit.Saved<>(current);
    }

    public Optional<Incubator> find(IncubatorId id) {
        return tx.first(Incubators::read, "select * from incubator where id = ?", id.value());
    }

    public Optional<Incubator> named(String name) {
        return tx.first(
                Incubators::read, "select * from incubator where name_key = ?", Words.key(name));
    }

    /// @throws IllegalArgumentException if there is none
    public Incubator theIncubator(IncubatorId id) {
        return find(id).orElseThrow(
                        () -> new IllegalArgumentException("no incubator " + id.value()));
    }

    /// By name.
    public List<Incubator> all() {
        return tx.list(Incubators::read, "select * from incubator order by name_key");
    }

    /// The boxes that stand in it.
    public List<Box> boxes(Incubator incubator) {
        return new Boxes(tx)
                .all().stream()
                        .filter(
                                box ->
                                        Words.key(box.incubator())
                                                .equals(Words.key(incubator.name())))
                        .toList();
    }

    private Findings problems(Incubator incubator) {
        return new Findings(tx.today())
                .notBlank(Field.INCUBATOR, incubator.name())
                .addIf(
                        tx.number(
                                        "select count(*) from incubator"
                                                + " where name_key = ? and id <> ?",
                                        Words.key(incubator.name()),
                                        incubator.id().value())
                                > 0,
                        new Problem.NameTaken(Field.INCUBATOR, incubator.name().strip()));
    }

    private static Values values(Incubator incubator) {
        return Values.of()
                .set("name", incubator.name().strip())
                .set("name_key", Words.key(incubator.name()))
                .set("set_point_celsius", incubator.setPointCelsius())
                .set("notes", incubator.notes().strip());
    }

    private static Incubator read(Row row) {
        return new Incubator(
                new IncubatorId(row.number("id")),
                row.number("version"),
                row.text("name"),
                row.real("set_point_celsius"),
                row.text("notes"));
    }
}
