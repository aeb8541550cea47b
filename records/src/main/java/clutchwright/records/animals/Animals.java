package clutchwright.records.animals;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Parent;
import clutchwright.records.checks.Problem;
import clutchwright.records.checks.Questions;
import clutchwright.records.places.RackId;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;

/// The animals on record.
public final class Animals {

    /// What is written of an animal alone, and goes with it.
    /// What was only thought of goes with the animal.
    private static final List<String> IN_PLANS = List.of("plan_word", "season_plan_pair");

    private static final List<String> ITS_OWN =
            List.of(
                    "statement",
                    "weighing",
                    "meal",
                    "shed",
                    "health_note",
                    "photo",
                    "sire_candidate");

    private final Transaction tx;
    private final AnimalRows rows;

    public Animals(Transaction tx) {
        this.tx = tx;
        this.rows = new AnimalRows(tx);
    }

    /// Adds an animal.
    public Edit<Animal> add(Particulars animal, Questions questions) {
        var refusal = new AnimalChecks(tx, this).ofNew(animal).<Animal>refusal(questions);
        return refusal.orElseGet(() -> new Edit.Saved<>(insert(animal)));
    }

    /// Adds an animal, or asks.
    public Edit<Animal> add(Particulars animal) {
        return add(animal, Questions.ASK);
    }

    /// Everything that stands against adding an animal, questions included.
    public List<Problem> problemsOfAdding(Particulars animal) {
        return new AnimalChecks(tx, this).ofNew(animal).all();
    }

    /// Changes an animal, if it still is of the version that was edited.
    public Edit<Animal> update(Animal changed, Questions questions) {
        var current = find(changed.id());
        if (current.isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.TAG, changed.id().value()));
        }
        if (current.get().version() != changed.version()) {
            return new Edit.Stale<>(current.get());
        }
        var refusal =
                new AnimalChecks(tx, this)
                        .ofChanged(changed.id(), changed.particulars())
                        .<Animal>refusal(questions);
        return refusal.orElseGet(
                () -> {
                    tx.update(
                            "animal",
                            changed.id().value(),
                            changed.version(),
                            rows.write(changed.particulars()));
                    if (rows.writeCandidates(changed.id(), changed.particulars())) {
                        tx.touch("animal", changed.id().value());
                    }
                    return new Edit.Saved<>(theAnimal(changed.id()));
                });
    }

    /// Changes an animal, or asks.
    public Edit<Animal> update(Animal changed) {
        return update(changed, Questions.ASK);
    }

    /// Takes an animal off the record together with what is written of it alone; not if it has
    /// young, a pairing, a clutch or an egg.
    ///
    /// @return the animal that was removed
    public Edit<Animal> remove(AnimalId id, long version) {
        var current = find(id);
        if (current.isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.TAG, id.value()));
        }
        if (current.get().version() != version) {
            return new Edit.Stale<>(current.get());
        }
        var uses = uses(id);
        if (!uses.isEmpty()) {
            return Edit.refused(new Problem.StillUsed(uses));
        }
        ITS_OWN.forEach(table -> tx.deleteWhere(table, "animal", id.value()));
        for (var table : IN_PLANS) {
            tx.deleteWhere(table, "dam", id.value());
            tx.deleteWhere(table, "sire", id.value());
        }
        tx.delete("animal", id.value());
        return new Edit.Saved<>(current.get());
    }

    public Optional<Animal> find(AnimalId id) {
        return rows.read("select * from animal where id = ?", id.value()).stream().findFirst();
    }

    /// @throws IllegalArgumentException if there is none
    public Animal theAnimal(AnimalId id) {
        return find(id).orElseThrow(
                        () -> new IllegalArgumentException("no animal " + id + " on record"));
    }

    /// Whatever the case of its letters.
    public Optional<Animal> byTag(String tag) {
        return Tag.isWellFormed(tag)
                ? rows.read("select * from animal where tag_key = ?", new Tag(tag).key()).stream()
                        .findFirst()
                : Optional.empty();
    }

    /// Those of the animals that are on record, by tag.
    public List<Animal> find(Collection<AnimalId> ids) {
        if (ids.isEmpty()) {
            return List.of();
        }
        var wanted = Set.copyOf(ids);
        if (wanted.size() > 500) {
            return all().stream().filter(animal -> wanted.contains(animal.id())).toList();
        }
        return rows.read(
                "select a.* from animal a join animal_search s on s.animal = a.id where a.id in ("
                        + "?, ".repeat(wanted.size() - 1)
                        + "?) order by s.tag_order, a.id",
                wanted.stream().map(AnimalId::value).toArray());
    }

    /// All of them, in the order in which they were entered.
    public List<Animal> all() {
        return rows.read("select * from animal order by id");
    }

    /// How many there are of each status that occurs.
    public Map<Status, Integer> counts() {
        var counts = new EnumMap<Status, Integer>(Status.class);
        tx.list(
                        row ->
                                Map.entry(
                                        Status.valueOf(row.text("status")),
                                        Math.toIntExact(row.number("animals"))),
                        "select status, count(*) as animals from animal group by status")
                .forEach(each -> counts.put(each.getKey(), each.getValue()));
        return counts;
    }

    /// How many that live here, hatched on that day or later, are not sexed.
    public int countUnsexed(LocalDate hatchedFrom) {
        return Math.toIntExact(
                tx.number(
                        "select count(*) from animal where sex is null and hatched >= ?"
                                + " and status in ('KEPT', 'HOLD_BACK', 'FOR_SALE')",
                        hatchedFrom.toString()));
    }

    /// How many there are.
    public int count() {
        return Math.toIntExact(tx.number("select count(*) from animal"));
    }

    /// A page of what a query finds.
    public Query.Page find(Query query) {
        return new Search(tx, rows).page(query);
    }

    /// All that a query finds, in its order, its page left aside.
    public List<AnimalId> ids(Query query) {
        return new Search(tx, rows).ids(query);
    }

    /// Who lives in a rack, tub by tub in the order in which the tubs were made.
    public List<AnimalId> livingIn(RackId rack) {
        return tx.list(
                row -> new AnimalId(row.number("id")),
                "select a.id from animal a join tub t on t.id = a.place where t.rack = ?"
                        + " and a.status in ('KEPT', 'HOLD_BACK', 'FOR_SALE')"
                        + " order by t.id, a.tag_key",
                rack.value());
    }

    /// Its young, also those of which it may be the sire, in the order in which they hatched.
    public List<Animal> offspringOf(AnimalId id) {
        return rows.read(
                "select * from animal where dam = ? or sire = ? or id in"
                        + " (select animal from sire_candidate where candidate = ?)"
                        + " order by coalesce(hatched, ''), id",
                id.value(),
                id.value(),
                id.value());
    }

    /// What stands against an animal being a dam or a sire: the wrong sex, or none on record.
    public List<Problem> problemsAsParent(AnimalId id, Parent as) {
        return find(id).map(parent -> AnimalChecks.ofParent(parent, as))
                .orElseGet(
                        () ->
                                List.of(
                                        new Problem.Missing(
                                                as == Parent.DAM ? Field.DAM : Field.SIRE,
                                                id.value())));
    }

    /// The next tag of a pattern that no animal has.
    public Tag nextTag(TagPattern pattern, TagPattern.Occasion occasion) {
        var taken =
                Set.copyOf(
                        tx.list(
                                row -> row.text("tag_key"),
                                "select tag_key from animal where tag_key like ? escape '\\'",
                                Search.escaped(pattern.prefix(occasion).key()) + "%"));
        return pattern.firstFree(occasion, tag -> !taken.contains(tag.key()));
    }

    private Animal insert(Particulars animal) {
        var id = new AnimalId(tx.insert("animal", rows.write(animal)));
        rows.writeCandidates(id, animal);
        return new Animal(id, 1, animal);
    }

    private SequencedMap<String, Integer> uses(AnimalId id) {
        var uses = new LinkedHashMap<String, Integer>();
        for (var pointing : tx.pointingAt("animal", id.value())) {
            var own = pointing.column().equals("animal") && ITS_OWN.contains(pointing.table());
            if (own || IN_PLANS.contains(pointing.table())) {
                continue;
            }
            var kind =
                    switch (pointing.table()) {
                        case "animal", "sire_candidate" -> "offspring";
                        default -> pointing.table();
                    };
            uses.merge(kind, pointing.rows().size(), Integer::sum);
        }
        return uses;
    }
}
