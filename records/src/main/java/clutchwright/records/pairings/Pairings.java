package clutchwright.records.pairings;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animals;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Findings;
import clutchwright.records.checks.Parent;
import clutchwright.records.checks.Problem;
import clutchwright.records.checks.Questions;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/// Pairings and their signs.
public final class Pairings {

    private final Transaction tx;

    public Pairings(Transaction tx) {
        this.tx = tx;
    }

    /// Plans a pairing.
    public Edit<Pairing> plan(
            int season, AnimalId dam, AnimalId sire, String notes, Questions questions) {
        var planned =
                new Pairing(
                        new PairingId(0),
                        1,
                        season,
                        dam,
                        sire,
                        Pairing.State.PLANNED,
                        Optional.empty(),
                        Optional.empty(),
                        notes);
        return problems(planned)
                .<Pairing>refusal(questions)
                .orElseGet(
                        () ->
                                new Edit.Saved<>(
                                        thePairing(
                                                new PairingId(
                                                        tx.insert("pairing", values(planned))))));
    }

    /// Changes a pairing, if it still is of the version that was edited.
    public Edit<Pairing> update(Pairing changed, Questions questions) {
        var current = find(changed.id());
        if (current.isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.SEASON, changed.id().value()));
        }
        if (current.get().version() != changed.version()) {
            return new Edit.Stale<>(current.get());
        }
        return problems(changed)
                .<Pairing>refusal(questions)
                .orElseGet(
                        () -> {
                            tx.update(
                                    "pairing",
                                    changed.id().value(),
                                    changed.version(),
                                    values(changed));
                            return new Edit.Saved<>(thePairing(changed.id()));
                        });
    }

    /// Takes it off the record with its signs; not if it has a clutch.
    ///
    /// @return the pairing that was removed
    public Edit<Pairing> remove(PairingId id, long version) {
        var current = find(id);
        if (current.isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.SEASON, id.value()));
        }
        if (current.get().version() != version) {
            return new Edit.Stale<>(current.get());
        }
        var clutches = tx.number("select count(*) from clutch where pairing = ?", id.value());
        if (clutches > 0) {
            var uses = new LinkedHashMap<String, Integer>();
            uses.put("clutch", Math.toIntExact(clutches));
            return Edit.refused(new Problem.StillUsed(uses));
        }
        tx.deleteWhere("sign_seen", "pairing", id.value());
        tx.delete("pairing", id.value());
        return new Edit.Saved<>(current.get());
    }

    /// Writes down a sign.
    public Edit<SignSeen> see(PairingId pairing, SignSeen.Kind kind, LocalDate on, String notes) {
        return new Findings(tx.today())
                .notInTheFuture(Field.SIGN_SEEN_ON, on)
                .addIf(find(pairing).isEmpty(), new Problem.Missing(Field.SEASON, pairing.value()))
                .<SignSeen>refusal()
                .orElseGet(
                        () -> {
                            long id =
                                    tx.insert(
                                            "sign_seen",
                                            Values.of()
                                                    .set("pairing", pairing.value())
                                                    .set("kind", kind)
                                                    .set("seen_on", on)
                                                    .set("notes", notes.strip()));
                            return new Edit.Saved<>(
                                    new SignSeen(id, 1, pairing, kind, on, notes.strip()));
                        });
    }

    /// @return the sign that was removed
    public Edit<SignSeen> remove(SignSeen sign) {
        var current = tx.first(Pairings::sign, "select * from sign_seen where id = ?", sign.id());
        if (current.isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.SIGN_SEEN_ON, sign.id()));
        }
        if (current.get().version() != sign.version()) {
            return new Edit.Stale<>(current.get());
        }
        tx.delete("sign_seen", sign.id());
        return new Edit.Saved<>(current.get());
    }

    /// In the order in which they were seen.
    public List<SignSeen> signs(PairingId pairing) {
        return tx.list(
                Pairings::sign,
                "select * from sign_seen where pairing = ? order by seen_on, id",
                pairing.value());
    }

    /// The signs of all pairings of a season, in the order in which they were seen.
    public List<SignSeen> signsOfSeason(int season) {
        return tx.list(
                Pairings::sign,
                "select s.* from sign_seen s join pairing p on p.id = s.pairing"
                        + " where p.season = ? order by s.seen_on, s.id",
                season);
    }

    public Optional<Pairing> find(PairingId id) {
        return tx.first(Pairings::pairing, "select * from pairing where id = ?", id.value());
    }

    /// @throws IllegalArgumentException if there is none
    public Pairing thePairing(PairingId id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("no pairing " + id.value()));
    }

    /// By the day they were put together, those that were not yet at the end.
    public List<Pairing> ofSeason(int season) {
        return tx.list(
                Pairings::pairing,
                "select * from pairing where season = ?"
                        + " order by coalesce(put_together, '9999'), id",
                season);
    }

    /// As dam or sire, the last season first.
    public List<Pairing> of(AnimalId animal) {
        return tx.list(
                Pairings::pairing,
                "select * from pairing where dam = ? or sire = ? order by season desc, id",
                animal.value(),
                animal.value());
    }

    /// All of them, season by season.
    public List<Pairing> all() {
        return tx.list(Pairings::pairing, "select * from pairing order by season, id");
    }

    /// In how many seasons that are over each female was put to a male.
    public Map<AnimalId, Integer> seasonsTried() {
        record Tried(AnimalId dam, int seasons) {}
        return tx
                .list(
                        row ->
                                new Tried(
                                        new AnimalId(row.number("dam")),
                                        Math.toIntExact(row.number("seasons"))),
                        "select dam, count(distinct season) as seasons from pairing"
                                + " where state = 'DONE' and season < ? group by dam",
                        tx.today().getYear())
                .stream()
                .collect(Collectors.toMap(Tried::dam, Tried::seasons));
    }

    /// The seasons that have a pairing or a clutch, the last first.
    public List<Integer> seasons() {
        return tx.list(
                row -> Math.toIntExact(row.number("season")),
                "select season from pairing union select season from clutch"
                        + " order by season desc");
    }

    private Findings problems(Pairing pairing) {
        var animals = new Animals(tx);
        var findings = new Findings(tx.today());
        findings.addAll(animals.problemsAsParent(pairing.dam(), Parent.DAM));
        findings.addAll(animals.problemsAsParent(pairing.sire(), Parent.SIRE));
        findings.addIf(pairing.dam().equals(pairing.sire()), new Problem.DamIsSire(pairing.dam()));
        int latest = tx.today().getYear() + 2;
        findings.addIf(
                pairing.season() < 1900 || pairing.season() > latest,
                new Problem.OutOfRange(Field.SEASON, pairing.season(), 1900, latest));
        findings.addIf(
                tx.number(
                                "select count(*) from pairing"
                                        + " where season = ? and dam = ? and sire = ? and id <> ?",
                                pairing.season(),
                                pairing.dam().value(),
                                pairing.sire().value(),
                                pairing.id().value())
                        > 0,
                new Problem.NameTaken(Field.SEASON, Integer.toString(pairing.season())));
        pairing.putTogether().ifPresent(day -> findings.notInTheFuture(Field.PUT_TOGETHER, day));
        pairing.separated().ifPresent(day -> findings.notInTheFuture(Field.SEPARATED, day));
        if (pairing.putTogether().isPresent() && pairing.separated().isPresent()) {
            findings.inOrder(
                    Field.PUT_TOGETHER,
                    pairing.putTogether().get(),
                    Field.SEPARATED,
                    pairing.separated().get());
        }
        return findings;
    }

    private static Values values(Pairing pairing) {
        return Values.of()
                .set("season", pairing.season())
                .set("dam", pairing.dam().value())
                .set("sire", pairing.sire().value())
                .set("state", pairing.state())
                .setIfAny("put_together", pairing.putTogether())
                .setIfAny("separated", pairing.separated())
                .set("notes", pairing.notes());
    }

    private static Pairing pairing(Row row) {
        return new Pairing(
                new PairingId(row.number("id")),
                row.number("version"),
                Math.toIntExact(row.number("season")),
                new AnimalId(row.number("dam")),
                new AnimalId(row.number("sire")),
                Pairing.State.valueOf(row.text("state")),
                row.findDay("put_together"),
                row.findDay("separated"),
                row.text("notes"));
    }

    private static SignSeen sign(Row row) {
        return new SignSeen(
                row.number("id"),
                row.number("version"),
                new PairingId(row.number("pairing")),
                SignSeen.Kind.valueOf(row.text("kind")),
                row.day("seen_on"),
                row.text("notes"));
    }
}
