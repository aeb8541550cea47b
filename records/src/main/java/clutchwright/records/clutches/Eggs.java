package clutchwright.records.clutches;

import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Hatched;
import clutchwright.records.animals.Line;
import clutchwright.records.animals.Origin;
import clutchwright.records.animals.Particulars;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Findings;
import clutchwright.records.checks.Problem;
import clutchwright.records.checks.Questions;
import clutchwright.records.statements.Statements;
import clutchwright.records.statements.Witness;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/// What happens to single eggs.
public final class Eggs {

    private final Transaction tx;
    private final ClutchRows rows;
    private final Clutches clutches;

    public Eggs(Transaction tx) {
        this.tx = tx;
        this.rows = new ClutchRows(tx);
        this.clutches = new Clutches(tx);
    }

    public Optional<Egg> find(EggId id) {
        return rows.eggs("id = ?", id.value()).stream().findFirst();
    }

    /// @throws IllegalArgumentException if there is none
    public Egg theEgg(EggId id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("no egg " + id.value()));
    }

    /// The eggs of a box that are still waited for, clutch by clutch.
    public List<Egg> in(BoxId box) {
        return rows.eggs("box = ? and fate = 'INCUBATING'", box.value());
    }

    /// Writes down a look through the shell. An egg found to be a slug is a slug from then on.
    public Edit<Egg> candle(EggId id, LocalDate on, Candling.Finding finding, String notes) {
        var egg = theEgg(id);
        var findings =
                notBeforeLaying(egg, Field.CANDLED, on)
                        .addIf(!(egg.fate() instanceof Fate.Incubating), notIncubating(egg));
        return findings.<Egg>refusal()
                .orElseGet(
                        () -> {
                            tx.insert(
                                    "candling",
                                    Values.of()
                                            .set("egg", id.value())
                                            .set("seen_on", on)
                                            .set("finding", finding)
                                            .set("notes", notes.strip()));
                            if (finding == Candling.Finding.SLUG) {
                                tx.update("egg", id.value(), Values.of().set("fate", "SLUG"));
                            }
                            return new Edit.Saved<>(theEgg(id));
                        });
    }

    /// Writes down what an egg weighs.
    ///
    /// @param grams above zero
    public Edit<Egg> weigh(EggId id, LocalDate on, double grams) {
        var egg = theEgg(id);
        return notBeforeLaying(egg, Field.GRAMS, on)
                .addIf(
                        !(grams > 0) || Double.isInfinite(grams),
                        new Problem.NotPositive(Field.GRAMS, grams))
                .<Egg>refusal()
                .orElseGet(
                        () -> {
                            tx.insert(
                                    "egg_weighing",
                                    Values.of()
                                            .set("egg", id.value())
                                            .set("made_on", on)
                                            .set("grams", grams));
                            return new Edit.Saved<>(theEgg(id));
                        });
    }

    /// Writes down which way up an egg lies, over what was written before.
    ///
    /// @param version of the egg, as it was seen
    public Edit<Egg> lies(EggId id, long version, String how) {
        var egg = theEgg(id);
        return egg.version() == version
                ? fated(egg, Values.of().set("lies", how.strip()))
                : new Edit.Stale<>(egg);
    }

    /// Puts eggs into a box; all of them or none.
    ///
    /// @param eggs at least one
    public Edit<List<Egg>> putInto(BoxId box, List<EggId> eggs) {
        var findings = new Findings(tx.today());
        findings.addIf(eggs.isEmpty(), new Problem.NoEggs());
        findings.addIf(
                tx.row("box", box.value()).isEmpty(), new Problem.Missing(Field.BOX, box.value()));
        for (var id : eggs) {
            var egg = theEgg(id);
            findings.addIf(!(egg.fate() instanceof Fate.Incubating), notIncubating(egg));
        }
        return findings.<List<Egg>>refusal()
                .orElseGet(
                        () -> {
                            for (var id : eggs) {
                                tx.update("egg", id.value(), Values.of().set("box", box.value()));
                            }
                            return new Edit.Saved<>(eggs.stream().map(this::theEgg).toList());
                        });
    }

    /// An egg that died.
    ///
    /// @param version of the egg, as it was seen
    public Edit<Egg> lose(EggId id, long version, LocalDate noticed, String finding) {
        var egg = theEgg(id);
        if (egg.version() != version) {
            return new Edit.Stale<>(egg);
        }
        return notBeforeLaying(egg, Field.LOST, noticed)
                .addIf(egg.fate() instanceof Fate.Hatched, hatched(egg))
                .<Egg>refusal()
                .orElseGet(
                        () ->
                                fated(
                                        egg,
                                        Values.of()
                                                .set("fate", "LOST")
                                                .set("fated_on", noticed)
                                                .set("finding", finding.strip())));
    }

    /// An egg that turned out to be a slug.
    public Edit<Egg> callSlug(EggId id, long version) {
        var egg = theEgg(id);
        if (egg.version() != version) {
            return new Edit.Stale<>(egg);
        }
        return egg.fate() instanceof Fate.Hatched
                ? Edit.refused(hatched(egg))
                : fated(egg, Values.of().set("fate", "SLUG").clear("fated_on").set("finding", ""));
    }

    /// An egg that was given up and lives after all.
    public Edit<Egg> reopen(EggId id, long version) {
        var egg = theEgg(id);
        if (egg.version() != version) {
            return new Edit.Stale<>(egg);
        }
        return egg.fate() instanceof Fate.Hatched
                ? Edit.refused(hatched(egg))
                : fated(
                        egg,
                        Values.of().set("fate", "INCUBATING").clear("fated_on").set("finding", ""));
    }

    /// An egg that hatched without a hatchling to be kept on record.
    public Edit<Egg> pip(EggId id, long version, LocalDate pipped) {
        var egg = theEgg(id);
        if (egg.version() != version) {
            return new Edit.Stale<>(egg);
        }
        return notBeforeLaying(egg, Field.PIPPED, pipped)
                .addIf(!(egg.fate() instanceof Fate.Incubating), notIncubating(egg))
                .<Egg>refusal()
                .orElseGet(() -> pipped(egg, pipped));
    }

    /// A hatchling: the animal, its parents, its sex, what it shows and its weight are written
    /// down together.
    public Edit<Animal> hatch(EggId id, Hatching hatching, Questions questions) {
        var egg = theEgg(id);
        var findings =
                notBeforeLaying(egg, Field.PIPPED, hatching.pipped())
                        .addIf(!(egg.fate() instanceof Fate.Incubating), notIncubating(egg));
        return comeOut(egg, hatching, findings, questions);
    }

    /// A second hatchling of an egg that has hatched.
    public Edit<Animal> hatchTwin(EggId id, Hatching hatching, Questions questions) {
        var egg = theEgg(id);
        var findings =
                notBeforeLaying(egg, Field.PIPPED, hatching.pipped())
                        .addIf(!(egg.fate() instanceof Fate.Hatched), notHatched(egg));
        return comeOut(egg, hatching, findings, questions);
    }

    /// A hatchling of the next egg that is waited for.
    public Edit<Animal> hatchNext(ClutchId id, Hatching hatching, Questions questions) {
        var clutch = clutches.theClutch(id);
        var waiting = clutch.incubating();
        if (waiting.isEmpty()) {
            return Edit.refused(
                    new Problem.MoreHatchlingsThanEggs(
                            clutch.number().toString(),
                            clutch.goodEggs(),
                            clutch.hatchlings().size() + 1));
        }
        return hatch(waiting.getFirst().id(), hatching, questions);
    }

    private Edit<Animal> comeOut(
            Egg egg, Hatching hatching, Findings findings, Questions questions) {
        var clutch = clutches.theClutch(egg.clutch());
        var animals = new Animals(tx);
        var particulars = particulars(clutch, hatching);
        findings.addAll(animals.problemsOfAdding(particulars));
        hatching.grams()
                .ifPresent(
                        grams ->
                                findings.addIf(
                                        !(grams > 0), new Problem.NotPositive(Field.GRAMS, grams)));
        hatching.shows().ifPresent(genes -> findings.notBlank(Field.GENE_LINE, genes.written()));
        return findings.<Animal>refusal(questions)
                .orElseGet(
                        () -> {
                            var animal = animals.add(particulars, questions).theSaved();
                            if (egg.fate() instanceof Fate.Incubating) {
                                pipped(egg, hatching.pipped());
                            }
                            tx.insert(
                                    "hatchling",
                                    Values.of()
                                            .set("egg", egg.id().value())
                                            .set("animal", animal.id().value()));
                            writeWhatWasFound(animal, hatching);
                            return new Edit.Saved<>(animal);
                        });
    }

    private static Particulars particulars(Clutch clutch, Hatching hatching) {
        return new Particulars(
                hatching.tag(),
                hatching.name(),
                hatching.sex(),
                new Hatched.OnDay(hatching.pipped()),
                clutch.parentage(),
                Origin.hatchedHere(),
                Line.none(),
                hatching.status(),
                hatching.place(),
                clutch.species(),
                hatching.notes());
    }

    private void writeWhatWasFound(Animal animal, Hatching hatching) {
        hatching.shows()
                .ifPresent(
                        genes ->
                                new Statements(tx)
                                        .see(
                                                animal.id(),
                                                genes,
                                                Witness.on(hatching.pipped(), tx.author().name()),
                                                hatching.doubted())
                                        .theSaved());
        hatching.grams()
                .ifPresent(
                        grams ->
                                tx.insert(
                                        "weighing",
                                        Values.of()
                                                .set("animal", animal.id().value())
                                                .set("made_on", hatching.pipped())
                                                .set("grams", grams)
                                                .set("notes", "")));
    }

    private Edit<Egg> pipped(Egg egg, LocalDate day) {
        return fated(egg, Values.of().set("fate", "HATCHED").set("fated_on", day));
    }

    private Edit<Egg> fated(Egg egg, Values values) {
        tx.update("egg", egg.id().value(), values);
        return new Edit.Saved<>(theEgg(egg.id()));
    }

    private Findings notBeforeLaying(Egg egg, Field field, LocalDate day) {
        var laid = clutches.theClutch(egg.clutch()).laid();
        return new Findings(tx.today())
                .notInTheFuture(field, day)
                .inOrder(Field.LAID, laid, field, day);
    }

    private Problem notIncubating(Egg egg) {
        return new Problem.EggNotIncubating(numberOf(egg), egg.number(), fateOf(egg));
    }

    private Problem notHatched(Egg egg) {
        return new Problem.EggNotHatched(numberOf(egg), egg.number(), fateOf(egg));
    }

    private Problem hatched(Egg egg) {
        return new Problem.EggHatched(numberOf(egg), egg.number());
    }

    private String numberOf(Egg egg) {
        return clutches.theClutch(egg.clutch()).number().toString();
    }

    private static String fateOf(Egg egg) {
        return switch (egg.fate()) {
            case Fate.Incubating() -> "INCUBATING";
            case Fate.Slug() -> "SLUG";
            case Fate.Lost _ -> "LOST";
            case Fate.Hatched _ -> "HATCHED";
        };
    }
}
