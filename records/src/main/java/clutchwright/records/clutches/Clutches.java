package clutchwright.records.clutches;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Biparental;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Parentage.SireQuestion;
import clutchwright.records.animals.ParentageRows;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import clutchwright.records.checks.Questions;
import clutchwright.records.pairings.PairingId;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/// Clutches, from laying to the last egg. What happens to single eggs is in [Eggs].
public final class Clutches {

    private final Transaction tx;
    private final ParentageRows parents;
    private final ClutchRows rows;

    public Clutches(Transaction tx) {
        this.tx = tx;
        this.parents = new ParentageRows(tx, "clutch");
        this.rows = new ClutchRows(tx);
    }

    /// Writes down a clutch and counts its eggs: the good ones first, then the slugs.
    public Edit<Clutch> lay(Laying laying, Questions questions) {
        var number = laying.number().orElseGet(() -> nextNumber(laying.season()));
        return new ClutchChecks(tx)
                .ofLaying(laying, number)
                .<Clutch>refusal(questions)
                .orElseGet(() -> new Edit.Saved<>(insert(laying, number)));
    }

    /// Changes number, parents, day, species or notes; not the eggs. Hatchlings on record keep the
    /// parents they were given.
    public Edit<Clutch> update(Clutch changed, Questions questions) {
        var current = find(changed.id());
        if (current.isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.CLUTCH_NUMBER, changed.id().value()));
        }
        if (current.get().version() != changed.version()) {
            return new Edit.Stale<>(current.get());
        }
        return new ClutchChecks(tx)
                .ofChanged(changed)
                .<Clutch>refusal(questions)
                .orElseGet(
                        () -> {
                            var parentage = asking(changed.parentage(), changed.id());
                            var values =
                                    Values.of()
                                            .set("season", changed.number().season())
                                            .set("running", changed.number().running())
                                            .setIfAny(
                                                    "pairing",
                                                    changed.pairing().map(of -> of.value()))
                                            .set("laid_on", changed.laid())
                                            .set("species", changed.species())
                                            .set("notes", changed.notes());
                            parents.write(parentage, values);
                            tx.update("clutch", changed.id().value(), changed.version(), values);
                            if (parents.writeCandidates(changed.id().value(), parentage)) {
                                tx.touch("clutch", changed.id().value());
                            }
                            return new Edit.Saved<>(theClutch(changed.id()));
                        });
    }

    /// More eggs than were counted at first.
    ///
    /// @param good  0 or more
    /// @param slugs 0 or more
    public Edit<Clutch> addEggs(ClutchId clutch, int good, int slugs) {
        var current = theClutch(clutch);
        if (good < 0 || slugs < 0 || good + slugs == 0) {
            return Edit.refused(new Problem.NotPositive(Field.EGGS, good + slugs));
        }
        int last = current.eggs().stream().mapToInt(Egg::number).max().orElse(0);
        insertEggs(clutch, last, good, slugs);
        return new Edit.Saved<>(theClutch(clutch));
    }

    /// Takes a clutch off the record with its eggs; not if one of them has hatched.
    ///
    /// @return the clutch that was removed
    public Edit<Clutch> remove(ClutchId id, long version) {
        var current = find(id);
        if (current.isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.CLUTCH_NUMBER, id.value()));
        }
        if (current.get().version() != version) {
            return new Edit.Stale<>(current.get());
        }
        int hatchlings = current.get().hatchlings().size();
        if (hatchlings > 0) {
            var uses = new LinkedHashMap<String, Integer>();
            uses.put("hatchling", hatchlings);
            return Edit.refused(new Problem.StillUsed(uses));
        }
        for (var egg : current.get().eggs()) {
            tx.deleteWhere("candling", "egg", egg.id().value());
            tx.deleteWhere("egg_weighing", "egg", egg.id().value());
            tx.deleteWhere("egg_photo", "egg", egg.id().value());
            tx.delete("egg", egg.id().value());
        }
        tx.deleteWhere("sire_candidate", "clutch", id.value());
        tx.delete("clutch", id.value());
        return new Edit.Saved<>(current.get());
    }

    /// The number after the highest of the season.
    public ClutchNumber nextNumber(int season) {
        long highest =
                tx.number("select coalesce(max(running), 0) from clutch where season = ?", season);
        return new ClutchNumber(season, Math.toIntExact(highest) + 1);
    }

    public Optional<Clutch> find(ClutchId id) {
        return rows.read("id = ?", id.value()).stream().findFirst();
    }

    public Optional<Clutch> find(ClutchNumber number) {
        return rows.read("season = ? and running = ?", number.season(), number.running()).stream()
                .findFirst();
    }

    /// @throws IllegalArgumentException if there is none
    public Clutch theClutch(ClutchId id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("no clutch " + id.value()));
    }

    /// In the order of their numbers.
    public List<Clutch> ofSeason(int season) {
        return rows.read("season = ?", season);
    }

    /// Those that came of the pairings of a season, in the order of their numbers.
    public List<Clutch> ofPairingsIn(int season) {
        return rows.read("pairing in (select id from pairing where season = ?)", season);
    }

    /// As dam or sire, also where that is in doubt, in the order of their numbers.
    public List<Clutch> of(AnimalId parent) {
        return rows.read(
                "dam = ? or sire = ? or id in"
                        + " (select clutch from sire_candidate where candidate = ?)",
                parent.value(),
                parent.value(),
                parent.value());
    }

    /// The clutch that an animal hatched from.
    public Optional<Clutch> from(AnimalId hatchling) {
        return rows
                .read(
                        "id in (select e.clutch from egg e join hatchling h on h.egg = e.id"
                                + " where h.animal = ?)",
                        hatchling.value())
                .stream()
                .findFirst();
    }

    /// Those with an egg that is still waited for, in the order in which they were laid.
    public List<Clutch> incubating() {
        return rows.read("id in (select clutch from egg where fate = 'INCUBATING')").stream()
                .sorted(java.util.Comparator.comparing(Clutch::laid))
                .toList();
    }

    /// All of them, in the order of their numbers.
    public List<Clutch> all() {
        return rows.read("1 = 1");
    }

    /// Who laid when: all clutches, in the order of their days, without their eggs.
    public List<LaidOn> days() {
        return tx.list(
                row ->
                        new LaidOn(
                                new AnimalId(row.number("dam")),
                                row.findNumber("pairing").map(PairingId::new),
                                row.day("laid_on")),
                "select dam, pairing, laid_on from clutch order by laid_on, id");
    }

    private Clutch insert(Laying laying, ClutchNumber number) {
        var values =
                Values.of()
                        .set("season", number.season())
                        .set("running", number.running())
                        .setIfAny("pairing", laying.pairing().map(of -> of.value()))
                        .set("laid_on", laying.laid())
                        .set("species", laying.species())
                        .set("notes", laying.notes().strip());
        parents.write(laying.parentage(), values);
        var id = new ClutchId(tx.insert("clutch", values));
        var parentage = asking(laying.parentage(), id);
        if (!parentage.equals(laying.parentage())) {
            var asked = Values.of();
            parents.write(parentage, asked);
            tx.update("clutch", id.value(), asked);
        }
        parents.writeCandidates(id.value(), parentage);
        insertEggs(id, 0, laying.good(), laying.slugs());
        return theClutch(id);
    }

    private void insertEggs(ClutchId clutch, int last, int good, int slugs) {
        for (int i = 1; i <= good + slugs; i++) {
            tx.insert(
                    "egg",
                    Values.of()
                            .set("clutch", clutch.value())
                            .set("running", last + i)
                            .set("fate", i <= good ? "INCUBATING" : "SLUG")
                            .set("finding", ""));
        }
    }

    /// Who fathered a clutch is a question of its own: no two clutches share it.
    private static Parentage asking(Parentage parentage, ClutchId id) {
        return parentage instanceof Biparental(var dam, Sire.InDoubt(var question))
                ? new Biparental(
                        dam,
                        new Sire.InDoubt(
                                new SireQuestion("clutch " + id.value(), question.candidates())))
                : parentage;
    }
}
