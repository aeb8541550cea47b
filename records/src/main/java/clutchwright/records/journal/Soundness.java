package clutchwright.records.journal;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Member.Span;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Parentage.SireQuestion;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.pedigree.PedigreeFault;
import clutchwright.engine.probability.Distribution;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/// Whether the records are still sound after rows were put back: the rules that no constraint of
/// one row can hold. Whoever edits is told in detail; here a yes or no is enough.
final class Soundness {

    private static final String WRONG_SEX =
            "select d.id as animal from pairing p join animal d on d.id = p.dam"
                    + " where d.sex = 'MALE'"
                    + " union select s.id from pairing p join animal s on s.id = p.sire"
                    + " where s.sex = 'FEMALE'"
                    + " union select d.id from clutch c join animal d on d.id = c.dam"
                    + " where d.sex = 'MALE'"
                    + " union select s.id from clutch c join animal s on s.id = c.sire"
                    + " where s.sex = 'FEMALE'";

    private final Transaction tx;

    Soundness(Transaction tx) {
        this.tx = tx;
    }

    boolean holds(Set<AnimalId> restored) {
        if (restored.isEmpty()) {
            return true;
        }
        var wrong = tx.list(row -> new AnimalId(row.number("animal")), WRONG_SEX);
        return wrong.stream().noneMatch(restored::contains)
                && switch (Pedigree.of(members())) {
                    case Pedigree.Result.Sound _ -> true;
                    case Pedigree.Result.Faulty(var faults) ->
                            faults.stream()
                                    .flatMap(fault -> concerned(fault).stream())
                                    .noneMatch(restored::contains);
                };
    }

    private List<Member> members() {
        record Candidate(long animal, AnimalId sire) {}
        var candidates =
                tx
                        .list(
                                row ->
                                        new Candidate(
                                                row.number("animal"),
                                                new AnimalId(row.number("candidate"))),
                                "select animal, candidate from sire_candidate"
                                        + " where animal is not null")
                        .stream()
                        .collect(
                                Collectors.groupingBy(
                                        Candidate::animal,
                                        Collectors.mapping(Candidate::sire, Collectors.toList())));
        return tx.list(
                row -> member(row, candidates), "select id, sex, hatched, dam, sire from animal");
    }

    private static Member member(Row row, Map<Long, List<AnimalId>> candidates) {
        long id = row.number("id");
        return new Member(
                new AnimalId(id),
                row.findText("sex").map(Sex::valueOf),
                row.findText("hatched").map(Soundness::span),
                Parentage.of(
                        row.findNumber("dam")
                                .<Dam>map(dam -> new Dam.Known(new AnimalId(dam)))
                                .orElseGet(Dam.Unknown::new),
                        sire(id, row, candidates)));
    }

    private static Sire sire(long id, Row row, Map<Long, List<AnimalId>> candidates) {
        var several = Optional.ofNullable(candidates.get(id));
        if (several.isPresent() && several.get().size() > 1) {
            return new Sire.InDoubt(
                    new SireQuestion(Long.toString(id), Distribution.uniform(several.get())));
        }
        return row.findNumber("sire")
                .<Sire>map(sire -> new Sire.Known(new AnimalId(sire)))
                .orElseGet(Sire.Unknown::new);
    }

    private static Span span(String hatched) {
        return hatched.length() == 4
                ? Span.year(Integer.parseInt(hatched))
                : Span.day(LocalDate.parse(hatched));
    }

    private static Set<AnimalId> concerned(PedigreeFault fault) {
        var found = new HashSet<AnimalId>();
        found.add(fault.animal());
        switch (fault) {
            case PedigreeFault.ListedTwice _ -> {}
            case PedigreeFault.UnknownParent(_, var parent) -> found.add(parent);
            case PedigreeFault.OwnAncestor(_, var circle) -> found.addAll(circle);
            case PedigreeFault.WrongSex(_, var parent, _) -> found.add(parent);
            case PedigreeFault.DamIsSire(_, var parent) -> found.add(parent);
            case PedigreeFault.HatchedBeforeParent(_, var parent) -> found.add(parent);
        }
        return found;
    }
}
