package clutchwright.app.demo;

import clutchwright.app.demo.Matchmaking.Couple;
import clutchwright.app.holding.LineEntry;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Parentage.SireQuestion;
import clutchwright.engine.probability.Distribution;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Status;
import clutchwright.records.animals.Tag;
import clutchwright.records.checks.Questions;
import clutchwright.records.clutches.Boxes;
import clutchwright.records.clutches.Candling;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.clutches.Egg;
import clutchwright.records.clutches.Eggs;
import clutchwright.records.clutches.Hatching;
import clutchwright.records.clutches.Laying;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.pairings.SignSeen;
import clutchwright.records.statements.GeneText;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;

/// One season at Millrace, told to the store: who went together, what was laid, what hatched.
final class SeasonStory {

    private static final int INCUBATION_DAYS = 57;

    private final Transaction tx;
    private final GeneLine lines;
    private final RandomGenerator random;
    private final LocalDate today;
    private final int season;
    private final boolean isLast;

    SeasonStory(
            Transaction tx,
            GeneLine lines,
            RandomGenerator random,
            LocalDate today,
            int season,
            boolean isLast) {
        this.tx = tx;
        this.lines = lines;
        this.random = random;
        this.today = today;
        this.season = season;
        this.isLast = isLast;
    }

    /// A pairing that led to eggs, and what became of them by today.
    ///
    /// @param rival another male that may have fathered the clutch
    /// @return the hatchlings that were kept on record
    List<Resident> clutch(Couple couple, LocalDate laid, Optional<Resident> rival) {
        var counting = seasonOf(laid);
        var pairing = pairing(couple, laid.minusDays(118 + random.nextInt(14)), counting);
        signs(pairing, laid);
        var pairings = new Pairings(tx);
        pairings.update(
                        pairings.thePairing(pairing.id()).done(laid.minusDays(30)),
                        Questions.ALL_THE_SAME)
                .theSaved();
        var good = 4 + random.nextInt(5);
        var slugs = random.nextInt(6) == 0 ? 1 + random.nextInt(2) : 0;
        var laying =
                new Laying(
                        Optional.empty(),
                        counting,
                        parentage(couple, rival),
                        Optional.of(pairing.id()),
                        laid,
                        lines.catalogue().species().id(),
                        "",
                        good,
                        slugs);
        var clutch = new Clutches(tx).lay(laying, Questions.ALL_THE_SAME).theSaved();
        box(clutch);
        candle(clutch, laid);
        var hatches = laid.plusDays(INCUBATION_DAYS - 2 + random.nextInt(5));
        if (hatches.isAfter(today.minusDays(3))) {
            return List.of();
        }
        return hatch(clutch, couple, hatches);
    }

    /// A pairing that has not led to eggs yet.
    ///
    /// @param days how long they have been together; none for a plan
    void openPairing(Couple couple, int days) {
        if (days == 0) {
            new Pairings(tx)
                    .plan(
                            seasonOf(today),
                            couple.dam().id(),
                            couple.sire().id(),
                            "",
                            Questions.ALL_THE_SAME)
                    .theSaved();
            return;
        }
        var began = today.minusDays(days);
        var pairing = pairing(couple, began, seasonOf(today));
        var pairings = new Pairings(tx);
        for (int after = 6; after < days; after += 17) {
            see(pairings, pairing, SignSeen.Kind.LOCK, began.plusDays(after));
        }
        if (days > 80) {
            see(pairings, pairing, SignSeen.Kind.OVULATION, today.minusDays(days - 80));
        }
        if (days > 100) {
            see(pairings, pairing, SignSeen.Kind.PRE_LAY_SHED, today.minusDays(days - 98));
        }
    }

    /// From the autumn on a pairing or a clutch counts for the next year: common practice.
    private static int seasonOf(LocalDate day) {
        return day.getMonthValue() >= 9 ? day.getYear() + 1 : day.getYear();
    }

    private Pairing pairing(Couple couple, LocalDate began, int counting) {
        var pairings = new Pairings(tx);
        var planned =
                pairings.plan(
                                counting,
                                couple.dam().id(),
                                couple.sire().id(),
                                "",
                                Questions.ALL_THE_SAME)
                        .theSaved();
        return pairings.update(planned.begun(began), Questions.ALL_THE_SAME).theSaved();
    }

    private void signs(Pairing pairing, LocalDate laid) {
        var pairings = new Pairings(tx);
        see(pairings, pairing, SignSeen.Kind.LOCK, laid.minusDays(104));
        see(pairings, pairing, SignSeen.Kind.LOCK, laid.minusDays(81));
        see(pairings, pairing, SignSeen.Kind.OVULATION, laid.minusDays(45 + random.nextInt(5)));
        see(pairings, pairing, SignSeen.Kind.PRE_LAY_SHED, laid.minusDays(27 + random.nextInt(5)));
    }

    private static void see(Pairings pairings, Pairing pairing, SignSeen.Kind kind, LocalDate day) {
        pairings.see(pairing.id(), kind, day, "").theSaved();
    }

    private static Parentage parentage(Couple couple, Optional<Resident> rival) {
        var sire =
                rival.<Sire>map(
                                other ->
                                        new Sire.InDoubt(
                                                new SireQuestion(
                                                        "clutch",
                                                        Distribution.uniform(
                                                                List.of(
                                                                        couple.sire().id(),
                                                                        other.id())))))
                        .orElseGet(() -> new Sire.Known(couple.sire().id()));
        return Parentage.of(new Dam.Known(couple.dam().id()), sire);
    }

    private void box(Clutch clutch) {
        var letter = (char) ('A' + (clutch.number().running() - 1) % 6);
        var shelf = 1 + (clutch.number().running() - 1) / 6;
        var label = "%c%d".formatted(letter, shelf);
        var box = new Boxes(tx).labelled(label);
        var waiting = clutch.incubating().stream().map(Egg::id).toList();
        if (!waiting.isEmpty()) {
            new Eggs(tx).putInto(box.id(), waiting).theSaved();
        }
    }

    private void candle(Clutch clutch, LocalDate laid) {
        var day = laid.plusDays(5);
        if (day.isAfter(today)) {
            return;
        }
        for (var egg : clutch.incubating()) {
            var finding =
                    random.nextInt(12) == 0 ? Candling.Finding.DOUBTFUL : Candling.Finding.GOOD;
            new Eggs(tx).candle(egg.id(), day, finding, "").theSaved();
        }
    }

    private List<Resident> hatch(Clutch clutch, Couple couple, LocalDate hatches) {
        var kept = new ArrayList<Resident>();
        var eggs = new Eggs(tx);
        int running = 0;
        for (var egg : new Clutches(tx).theClutch(clutch.id()).incubating()) {
            var lost = random.nextInt(17) == 0;
            var embryo =
                    Truth.embryo(
                            lines.catalogue().model(),
                            couple.dam().truth(),
                            couple.sire().truth(),
                            random);
            if (lost || embryo.isEmpty()) {
                var noticed = hatches.minusDays(10 + random.nextInt(20));
                eggs.lose(egg.id(), egg.version(), noticed, "went off").saved();
                continue;
            }
            var pipped = hatches.plusDays(random.nextInt(2));
            running++;
            // Plain ones of earlier seasons went to the wholesaler without a record of their own.
            var plain = embryo.get().shows(lines.catalogue().model()).isEmpty();
            if (season < today.getYear() - 1 && plain && random.nextInt(3) > 0) {
                eggs.pip(egg.id(), egg.version(), pipped).saved();
                continue;
            }
            kept.add(hatchling(egg, clutch, couple, embryo.get(), pipped, running));
        }
        return kept;
    }

    private Resident hatchling(
            Egg egg, Clutch clutch, Couple couple, Truth truth, LocalDate pipped, int running) {
        var tag = clutch.number() + "-" + running;
        var hatching =
                Hatching.of(pipped, new Tag(tag))
                        .showing(seen(truth), false)
                        .weighing(52 + random.nextInt(24));
        if (!isLast || random.nextInt(4) > 0) {
            hatching = hatching.withSex(truth.sex());
        }
        var animal = new Eggs(tx).hatch(egg.id(), hatching, Questions.ALL_THE_SAME).theSaved();
        var parents = List.of(couple.dam().id(), couple.sire().id());
        return new Resident(animal.id(), tag, truth, pipped, parents);
    }

    /// What a keeper who knows the trade sees and writes down.
    private GeneText seen(Truth truth) {
        var model = lines.catalogue().model();
        var statements = truth.shows(model).stream().<Genes.Statement>map(lines::seeing).toList();
        return LineEntry.of(lines, new Genes(statements, Optional.empty(), List.of()));
    }

    /// Who stays, who is for sale, who has gone.
    void decide(List<Resident> hatchlings, Matchmaking taste, int stay) {
        var byAppeal =
                hatchlings.stream()
                        .sorted(Comparator.comparingInt((Resident r) -> -taste.appeal(r)))
                        .toList();
        for (int i = 0; i < byAppeal.size(); i++) {
            var resident = byAppeal.get(i);
            if (i < stay) {
                become(resident.id(), isLast ? Status.HOLD_BACK : Status.KEPT, name(resident));
            } else if (isLast) {
                become(resident.id(), random.nextInt(3) == 0 ? Status.SOLD : Status.FOR_SALE, "");
            } else {
                become(resident.id(), Status.SOLD, "");
            }
        }
    }

    private void become(AnimalId id, Status status, String name) {
        var animals = new Animals(tx);
        Animal animal = animals.theAnimal(id);
        animals.update(
                        animal.with(animal.particulars().withStatus(status).withName(name)),
                        Questions.ALL_THE_SAME)
                .theSaved();
    }

    private String name(Resident resident) {
        var names = resident.truth().sex() == Sex.FEMALE ? Names.FEMALES : Names.MALES;
        return names.get((int) (resident.id().value() % names.size()));
    }
}
