package clutchwright.records.animals;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member.Span;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Findings;
import clutchwright.records.checks.Parent;
import clutchwright.records.checks.Problem;
import clutchwright.records.store.Transaction;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// What stands against an animal being so.
final class AnimalChecks {

    private static final int LONGEST_TEXT = 20_000;

    private final Transaction tx;
    private final Animals animals;
    private final Findings findings;

    AnimalChecks(Transaction tx, Animals animals) {
        this.tx = tx;
        this.animals = animals;
        this.findings = new Findings(tx.today());
    }

    /// Of an animal that is not on record yet.
    Findings ofNew(Particulars animal) {
        checkAlone(animal);
        checkTag(animal, Optional.empty());
        checkParents(animal, Optional.empty());
        return findings;
    }

    /// Of an animal that is on record, and may have young.
    Findings ofChanged(AnimalId id, Particulars animal) {
        checkAlone(animal);
        checkTag(animal, Optional.of(id));
        checkParents(animal, Optional.of(id));
        animal.sex().ifPresent(sex -> checkUse(id, sex));
        animal.hatched().span().ifPresent(span -> checkYoung(id, animal, span));
        return findings;
    }

    private void checkAlone(Particulars animal) {
        animal.hatched()
                .span()
                .map(Span::earliest)
                .ifPresent(day -> findings.notInTheFuture(Field.HATCHED, day));
        animal.origin().acquired().ifPresent(day -> findings.notInTheFuture(Field.ACQUIRED, day));
        if (animal.hatched().span().isPresent() && animal.origin().acquired().isPresent()) {
            findings.inOrder(
                    Field.HATCHED,
                    animal.hatched().span().get().earliest(),
                    Field.ACQUIRED,
                    animal.origin().acquired().get());
        }
        findings.addIf(
                animal.name().length() > Tag.LONGEST * 2,
                new Problem.TooLong(Field.NAME, animal.name().length(), Tag.LONGEST * 2));
        findings.addIf(
                animal.notes().length() > LONGEST_TEXT,
                new Problem.TooLong(Field.NOTE, animal.notes().length(), LONGEST_TEXT));
        animal.place()
                .filter(tub -> tx.row("tub", tub.value()).isEmpty())
                .ifPresent(tub -> findings.add(new Problem.Missing(Field.TUB, tub.value())));
    }

    private void checkTag(Particulars animal, Optional<AnimalId> self) {
        tx.first(
                        row -> row.number("id"),
                        "select id from animal where tag_key = ?",
                        animal.tag().key())
                .map(AnimalId::new)
                .filter(id -> !self.equals(Optional.of(id)))
                .ifPresent(id -> findings.add(new Problem.TagTaken(animal.tag().value(), id)));
    }

    private void checkParents(Particulars animal, Optional<AnimalId> self) {
        var dams = animal.parentage().dams();
        var sires = animal.parentage().sires();
        dams.forEach(dam -> checkParent(animal, dam, Parent.DAM));
        sires.forEach(sire -> checkParent(animal, sire, Parent.SIRE));
        dams.stream()
                .filter(sires::contains)
                .forEach(both -> findings.add(new Problem.DamIsSire(both)));
        self.ifPresent(
                id -> {
                    var parents = new ArrayList<>(dams);
                    parents.addAll(sires);
                    circleThrough(id, parents)
                            .ifPresent(path -> findings.add(new Problem.OwnAncestor(path)));
                });
    }

    private void checkParent(Particulars animal, AnimalId id, Parent as) {
        var found = animals.find(id);
        if (found.isEmpty()) {
            findings.add(
                    new Problem.Missing(
                            switch (as) {
                                case DAM -> Field.DAM;
                                case SIRE -> Field.SIRE;
                            },
                            id.value()));
            return;
        }
        var parent = found.get();
        findings.addAll(ofParent(parent, as));
        if (animal.hatched().span().isPresent() && parent.hatched().span().isPresent()) {
            checkAges(
                    animal.hatched(),
                    animal.hatched().span().get(),
                    parent,
                    parent.hatched().span().get(),
                    as);
        }
    }

    private void checkAges(Hatched young, Span youngSpan, Animal parent, Span span, Parent as) {
        findings.addIf(
                !span.earliest().isBefore(youngSpan.latest()),
                new Problem.HatchedBeforeParent(
                        parent.id(), as, young.iso(), parent.hatched().iso()));
    }

    /// Whether an animal can be a parent in that part.
    static List<Problem> ofParent(Animal parent, Parent as) {
        var wrong =
                switch (as) {
                    case DAM -> Sex.MALE;
                    case SIRE -> Sex.FEMALE;
                };
        if (parent.sex().isEmpty()) {
            return List.of(new Problem.UnsexedParent(parent.id(), as));
        }
        return parent.sex().get() == wrong
                ? List.of(new Problem.WrongSex(parent.id(), as, wrong))
                : List.of();
    }

    private void checkUse(AnimalId id, Sex sex) {
        var as =
                switch (sex) {
                    case MALE -> Parent.DAM;
                    case FEMALE -> Parent.SIRE;
                };
        var column =
                switch (as) {
                    case DAM -> "dam";
                    case SIRE -> "sire";
                };
        long uses =
                tx.number(
                        "select (select count(*) from animal where "
                                + column
                                + " = ?) + (select count(*) from pairing where "
                                + column
                                + " = ?) + (select count(*) from clutch where "
                                + column
                                + " = ?)"
                                + (as == Parent.SIRE
                                        ? " + (select count(*) from sire_candidate"
                                                + " where candidate = "
                                                + id
                                                + ")"
                                        : ""),
                        id.value(),
                        id.value(),
                        id.value());
        findings.addIf(uses > 0, new Problem.UsedAs(id, as));
    }

    private void checkYoung(AnimalId id, Particulars animal, Span span) {
        for (var young : animals.offspringOf(id)) {
            young.hatched()
                    .span()
                    .ifPresent(
                            youngSpan ->
                                    checkAges(
                                            young.hatched(),
                                            youngSpan,
                                            new Animal(id, 0, animal),
                                            span,
                                            young.parentage().dams().contains(id)
                                                    ? Parent.DAM
                                                    : Parent.SIRE));
        }
    }

    /// Walks up from the parents; a way that comes back to the animal is a circle.
    private Optional<List<AnimalId>> circleThrough(AnimalId self, List<AnimalId> parents) {
        Map<AnimalId, AnimalId> cameFrom = new HashMap<>();
        var open = new ArrayDeque<AnimalId>();
        for (var parent : parents) {
            if (cameFrom.putIfAbsent(parent, self) == null) {
                open.add(parent);
            }
        }
        while (!open.isEmpty()) {
            var at = open.remove();
            if (at.equals(self)) {
                return Optional.of(wayTo(self, cameFrom));
            }
            for (var parent : parentsOf(at)) {
                if (cameFrom.putIfAbsent(parent, at) == null) {
                    open.add(parent);
                }
            }
        }
        return Optional.empty();
    }

    private List<AnimalId> parentsOf(AnimalId id) {
        return tx.list(
                row -> new AnimalId(row.number("parent")),
                "select dam as parent from animal where id = ? and dam is not null"
                        + " union select sire from animal where id = ? and sire is not null"
                        + " union select candidate from sire_candidate where animal = ?",
                id.value(),
                id.value(),
                id.value());
    }

    private static List<AnimalId> wayTo(AnimalId self, Map<AnimalId, AnimalId> cameFrom) {
        var path = new ArrayList<AnimalId>();
        path.add(self);
        var at = Optional.ofNullable(cameFrom.get(self)).orElseThrow();
        while (!at.equals(self)) {
            path.addFirst(at);
            at = Optional.ofNullable(cameFrom.get(at)).orElseThrow();
        }
        path.addFirst(self);
        return path;
    }
}
