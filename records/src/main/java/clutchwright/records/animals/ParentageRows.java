package clutchwright.records.animals;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Parentage.SireQuestion;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;

/// How parents are written: of an animal, or of a clutch.
///
/// The row has `dam`, `sire`, `sire_question` and `without_sire`; where the sire is in doubt the
/// candidates have rows of their own.
public final class ParentageRows {

    private final Transaction tx;
    private final String owner;

    /// @param owner `animal` or `clutch`
    public ParentageRows(Transaction tx, String owner) {
        this.tx = tx;
        this.owner = owner;
    }

    public void write(Parentage parentage, Values values) {
        values.clear("dam").clear("sire").clear("sire_question").set("without_sire", false);
        parentage.dams().forEach(dam -> values.set("dam", dam.value()));
        switch (parentage) {
            case Parentage.Founder() -> {}
            case Parentage.Parthenogenetic _ -> values.set("without_sire", true);
            case Parentage.Biparental(_, Sire.Known(var sire)) -> values.set("sire", sire.value());
            case Parentage.Biparental(_, Sire.Unknown()) -> {}
            case Parentage.Biparental(_, Sire.InDoubt(var question)) ->
                    values.set("sire_question", question.key());
        }
    }

    /// Brings the candidates' rows in line, leaving those that did not change.
    ///
    /// @return whether any was changed
    public boolean writeCandidates(long id, Parentage parentage) {
        var wanted = candidates(parentage);
        var kept = candidatesOf(List.of(id)).getOrDefault(id, new LinkedHashMap<>());
        if (List.copyOf(kept.entrySet()).equals(List.copyOf(wanted.entrySet()))) {
            return false;
        }
        tx.deleteWhere("sire_candidate", owner, id);
        int place = 0;
        for (var candidate : wanted.entrySet()) {
            tx.insert(
                    "sire_candidate",
                    Values.of()
                            .set(owner, id)
                            .set("place", place++)
                            .set("candidate", candidate.getKey().value())
                            .set("weight", candidate.getValue().toString()));
        }
        return true;
    }

    /// The candidates of several owners, in the order in which they were given.
    public Map<Long, SequencedMap<AnimalId, Fraction>> candidatesOf(List<Long> owners) {
        var found = new HashMap<Long, SequencedMap<AnimalId, Fraction>>();
        if (owners.isEmpty()) {
            return found;
        }
        var which =
                owners.size() > 500
                        ? owner + " is not null"
                        : owner + " in (" + "?, ".repeat(owners.size() - 1) + "?)";
        tx.list(
                row ->
                        found.computeIfAbsent(row.number(owner), _ -> new LinkedHashMap<>())
                                .put(
                                        new AnimalId(row.number("candidate")),
                                        Fraction.parse(row.text("weight"))),
                "select * from sire_candidate where " + which + " order by " + owner + ", place",
                owners.size() > 500 ? new Object[0] : owners.toArray());
        return found;
    }

    /// What a row says of its parents.
    public Written read(Row row) {
        return new Written(
                row.number("id"),
                row.findNumber("dam").map(AnimalId::new),
                row.findNumber("sire").map(AnimalId::new),
                row.findText("sire_question"),
                row.truth("without_sire"));
    }

    /// The parents as a row has them, before the candidates are known.
    public record Written(
            long owner,
            Optional<AnimalId> dam,
            Optional<AnimalId> sire,
            Optional<String> question,
            boolean withoutSire) {

        /// @param candidates as [ParentageRows#candidatesOf(List)] found them
        public Parentage parentage(Map<Long, SequencedMap<AnimalId, Fraction>> candidates) {
            if (withoutSire) {
                return new Parentage.Parthenogenetic(dam.orElseThrow());
            }
            return Parentage.of(
                    dam.<Dam>map(Dam.Known::new).orElseGet(Dam.Unknown::new),
                    question.<Sire>map(key -> inDoubt(key, candidates))
                            .or(() -> sire.map(Sire.Known::new))
                            .orElseGet(Sire.Unknown::new));
        }

        private Sire inDoubt(String key, Map<Long, SequencedMap<AnimalId, Fraction>> candidates) {
            var weights = Optional.ofNullable(candidates.get(owner)).orElseThrow();
            return new Sire.InDoubt(new SireQuestion(key, new Distribution<>(weights)));
        }
    }

    private static SequencedMap<AnimalId, Fraction> candidates(Parentage parentage) {
        if (parentage instanceof Parentage.Biparental(_, Sire.InDoubt(var question))) {
            var weights = new LinkedHashMap<AnimalId, Fraction>();
            question.candidates()
                    .outcomes()
                    .forEach(sire -> weights.put(sire, question.candidates().chanceOf(sire)));
            return weights;
        }
        return new LinkedHashMap<>();
    }
}
