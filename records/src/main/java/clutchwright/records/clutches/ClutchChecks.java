package clutchwright.records.clutches;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.animals.Animals;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Findings;
import clutchwright.records.checks.Parent;
import clutchwright.records.checks.Problem;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.util.Optional;

/// What stands against a clutch being so.
final class ClutchChecks {

    private static final int MOST_EGGS = 200;

    private final Transaction tx;
    private final Animals animals;
    private final Findings findings;

    ClutchChecks(Transaction tx) {
        this.tx = tx;
        this.animals = new Animals(tx);
        this.findings = new Findings(tx.today());
    }

    Findings ofLaying(Laying laying, ClutchNumber number) {
        int eggs = laying.good() + laying.slugs();
        findings.addIf(eggs == 0, new Problem.NoEggs());
        findings.addIf(eggs > MOST_EGGS, new Problem.OutOfRange(Field.EGGS, eggs, 1, MOST_EGGS));
        findings.notBlank(Field.SPECIES, laying.species());
        laying.pairing()
                .filter(pairing -> tx.row("pairing", pairing.value()).isEmpty())
                .ifPresent(
                        pairing ->
                                findings.add(new Problem.Missing(Field.SEASON, pairing.value())));
        check(laying.parentage(), laying.laid());
        checkNumber(number, Optional.empty());
        return findings;
    }

    Findings ofChanged(Clutch clutch) {
        findings.notBlank(Field.SPECIES, clutch.species());
        check(clutch.parentage(), clutch.laid());
        checkNumber(clutch.number(), Optional.of(clutch.id()));
        for (var egg : clutch.eggs()) {
            if (egg.fate() instanceof Fate.Hatched(var pipped, _)) {
                findings.inOrder(Field.LAID, clutch.laid(), Field.PIPPED, pipped);
            }
        }
        return findings;
    }

    private void check(Parentage parentage, LocalDate laid) {
        findings.notInTheFuture(Field.LAID, laid);
        parentage.dams().forEach(dam -> checkDam(dam, laid));
        parentage
                .sires()
                .forEach(sire -> findings.addAll(animals.problemsAsParent(sire, Parent.SIRE)));
        parentage.dams().stream()
                .filter(parentage.sires()::contains)
                .forEach(both -> findings.add(new Problem.DamIsSire(both)));
    }

    private void checkDam(AnimalId id, LocalDate laid) {
        var dam = animals.find(id);
        if (dam.isPresent() && dam.get().sex().equals(Optional.of(Sex.MALE))) {
            findings.add(new Problem.LaidByMale(id));
        } else {
            findings.addAll(animals.problemsAsParent(id, Parent.DAM));
        }
        dam.flatMap(animal -> animal.hatched().span())
                .ifPresent(
                        span ->
                                findings.addIf(
                                        !span.earliest().isBefore(laid),
                                        new Problem.BeforeHatching(
                                                Field.LAID, laid, id, dam.get().hatched().iso())));
    }

    private void checkNumber(ClutchNumber number, Optional<ClutchId> self) {
        findings.addIf(
                tx.number(
                                "select count(*) from clutch"
                                        + " where season = ? and running = ? and id <> ?",
                                number.season(),
                                number.running(),
                                self.map(ClutchId::value).orElse(0L))
                        > 0,
                new Problem.NameTaken(Field.CLUTCH_NUMBER, number.toString()));
    }
}
