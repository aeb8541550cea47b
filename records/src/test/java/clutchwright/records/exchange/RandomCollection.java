package clutchwright.records.exchange;

import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Parentage.SireQuestion;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Hatched;
import clutchwright.records.animals.Line;
import clutchwright.records.animals.Origin;
import clutchwright.records.animals.Particulars;
import clutchwright.records.animals.Status;
import clutchwright.records.animals.Tag;
import clutchwright.records.checks.Questions;
import clutchwright.records.clutches.Boxes;
import clutchwright.records.clutches.Candling;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.clutches.Eggs;
import clutchwright.records.clutches.Hatching;
import clutchwright.records.clutches.Laying;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.incubators.Incubators;
import clutchwright.records.incubators.Sensor;
import clutchwright.records.incubators.SensorId;
import clutchwright.records.incubators.Sensors;
import clutchwright.records.overlay.Overlay;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.pairings.SignSeen;
import clutchwright.records.photos.EggPhotos;
import clutchwright.records.photos.Photos;
import clutchwright.records.places.Places;
import clutchwright.records.places.TubId;
import clutchwright.records.plans.PlanWord;
import clutchwright.records.plans.PlanWords;
import clutchwright.records.plans.Plans;
import clutchwright.records.plans.Price;
import clutchwright.records.plans.Prices;
import clutchwright.records.plans.SavedPlan;
import clutchwright.records.projects.Project;
import clutchwright.records.projects.ProjectId;
import clutchwright.records.projects.Projects;
import clutchwright.records.statements.Statements;
import clutchwright.records.statements.Witness;
import clutchwright.records.store.Transaction;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;

/// A collection with something of everything, awkward texts among it.
final class RandomCollection {

    private static final List<String> AWKWARD =
            List.of(
                    "",
                    "plain",
                    "=1+1",
                    "+49",
                    "-",
                    "@home",
                    "'=quoted",
                    "''twice",
                    "'tis",
                    "a,b;c|d",
                    "say \"hi\"",
                    "two\nlines",
                    "two\r\nlines",
                    "Zoë ♀ ✓",
                    "1.0",
                    "00123",
                    "2021-03-04",
                    "M1|M2",
                    "M1:0.5",
                    "back\\slash",
                    "\ttabbed",
                    "NULL",
                    "true",
                    "#REF!",
                    "３",
                    "＝full",
                    "none",
                    "?",
                    "x ".repeat(60).strip());
    private static final List<String> LINES =
            List.of(
                    "Pastel",
                    "Super Pastel het Clown",
                    "66% het Piebald",
                    "Normal",
                    "Mojave Lesser",
                    "Banana Enchi",
                    "het Homemade Pastel",
                    "no gene at all");
    private static final String OWN_GENE =
            """
            locus home-made
              title      Home made
              inherits   autosomal
              allele Homemade
                mode      recessive
                standing  unproven
            """;
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

    private final Random random;
    private final List<Animal> animals = new ArrayList<>();
    private final List<TubId> tubs = new ArrayList<>();
    private final GeneTexts genes = new GeneTexts(Situations.withOwn(OWN_GENE));
    private int tags;

    private RandomCollection(long seed) {
        this.random = new Random(seed);
    }

    static RandomCollection seeded(long seed) {
        return new RandomCollection(seed);
    }

    Integer fill(Transaction tx) {
        new Overlay(tx).add("python-regius", new LocusId("home-made"), OWN_GENE).theSaved();
        places(tx);
        for (int i = 0; i < 25; i++) {
            animal(tx);
        }
        lives(tx);
        aims(tx);
        breeding(tx);
        return animals.size();
    }

    private void places(Transaction tx) {
        var places = new Places(tx);
        for (var room : List.of("Back room", "=Room")) {
            var made = places.addRoom(room, text()).theSaved();
            for (var rack : List.of("A", "B / 2")) {
                var inside = places.addRack(made.id(), rack, text()).theSaved();
                for (var tub : List.of("1", "-2", "03")) {
                    tubs.add(places.addTub(inside.id(), tub, text()).theSaved().id());
                }
            }
        }
    }

    private void animal(Transaction tx) {
        var made =
                new Animals(tx)
                        .add(
                                new Particulars(
                                        tag(),
                                        shortText(),
                                        sex(),
                                        hatched(2010 + animals.size() / 2),
                                        parentage(),
                                        new Origin(
                                                one(List.of(Origin.How.values())),
                                                shortText(),
                                                maybe(TODAY.minusDays(random.nextInt(30)))),
                                        new Line(shortText(), shortText()),
                                        one(List.of(Status.values())),
                                        maybe(one(tubs)),
                                        "python-regius",
                                        text()),
                                Questions.ALL_THE_SAME)
                        .theSaved();
        animals.add(made);
        var statements = new Statements(tx);
        for (int i = random.nextInt(3); i > 0; i--) {
            statements
                    .claim(made.id(), genes.of("python-regius", one(LINES)), witness())
                    .theSaved();
        }
        for (int i = random.nextInt(3); i > 0; i--) {
            statements
                    .see(
                            made.id(),
                            genes.of("python-regius", one(LINES)),
                            witness(),
                            random.nextBoolean())
                    .theSaved();
        }
    }

    private Parentage parentage() {
        var dams = of(Sex.FEMALE);
        var sires = of(Sex.MALE);
        if (dams.isEmpty() || sires.size() < 3 || random.nextInt(4) == 0) {
            return new Parentage.Founder();
        }
        return switch (random.nextInt(5)) {
            case 0 -> new Parentage.Parthenogenetic(one(dams));
            case 1 -> Parentage.of(new Dam.Unknown(), new Sire.Known(one(sires)));
            case 2 -> Parentage.of(new Dam.Known(one(dams)), new Sire.Unknown());
            case 3 -> Parentage.of(new Dam.Known(one(dams)), doubt(sires));
            default -> Parentage.of(new Dam.Known(one(dams)), new Sire.Known(one(sires)));
        };
    }

    private Sire doubt(List<AnimalId> sires) {
        var weights = new LinkedHashMap<AnimalId, Fraction>();
        while (weights.size() < 2 + random.nextInt(2)) {
            weights.put(one(sires), Fraction.of(1 + random.nextInt(4), 1 + random.nextInt(3)));
        }
        return new Sire.InDoubt(
                new SireQuestion(
                        "question " + random.nextInt(5),
                        Distribution.proportionalTo(weights).orElseThrow()));
    }

    private void lives(Transaction tx) {
        var husbandry = new Husbandry(tx);
        for (int i = 0; i < 40; i++) {
            var animal = one(animals).id();
            var day = TODAY.minusDays(random.nextInt(10));
            husbandry.weigh(animal, day, 1 + random.nextInt(10000) / 7.0, text()).theSaved();
            husbandry.feed(animal, day, text(), random.nextBoolean(), text()).theSaved();
            husbandry.feed(animal, day, "rat", 12.5, random.nextBoolean(), text()).theSaved();
            husbandry.shed(animal, day, random.nextBoolean(), text()).theSaved();
            husbandry.note(animal, day, "note " + text()).theSaved();
        }
        var photos = new Photos(tx);
        for (int i = 0; i < 3; i++) {
            photos.add(one(animals).id(), picture(), text()).theSaved();
        }
    }

    private void breeding(Transaction tx) {
        var pairings = new Pairings(tx);
        var clutches = new Clutches(tx);
        var eggs = new Eggs(tx);
        var boxes = new Boxes(tx);
        var dams = of(Sex.FEMALE);
        var sires = of(Sex.MALE);
        for (int i = 0; i < Math.min(dams.size(), 5); i++) {
            var dam = dams.get(i);
            var sire = sires.get(i % sires.size());
            int season = 2022 + random.nextInt(4);
            var pairing =
                    pairings.plan(season, dam, sire, text(), Questions.ALL_THE_SAME).theSaved();
            if (random.nextBoolean()) {
                pairing =
                        pairings.update(
                                        pairing.begun(LocalDate.of(season, 1, 5)),
                                        Questions.ALL_THE_SAME)
                                .theSaved();
            }
            pairings.see(
                            pairing.id(),
                            one(List.of(SignSeen.Kind.values())),
                            LocalDate.of(season, 2, 3),
                            text())
                    .theSaved();
            var parentage =
                    random.nextBoolean() && sires.size() > 3
                            ? Parentage.of(new Dam.Known(dam), doubt(sires))
                            : Parentage.of(new Dam.Known(dam), new Sire.Known(sire));
            var clutch =
                    clutches.lay(
                                    new Laying(
                                            Optional.empty(),
                                            season,
                                            parentage,
                                            maybe(pairing.id()),
                                            LocalDate.of(2026, 3, 1),
                                            "python-regius",
                                            text(),
                                            4,
                                            1),
                                    Questions.ALL_THE_SAME)
                            .theSaved();
            var good = clutch.incubating();
            var box = boxes.labelled(i % 2 == 0 ? "=Box" : "Box 7");
            eggs.putInto(box.id(), good.stream().map(egg -> egg.id()).toList()).theSaved();
            for (var finding :
                    List.of(
                            Candling.Finding.GOOD,
                            Candling.Finding.NO_VEINS,
                            Candling.Finding.COLLAPSED)) {
                eggs.candle(good.get(0).id(), TODAY, finding, text()).theSaved();
            }
            eggs.weigh(good.get(0).id(), TODAY, 84.5).theSaved();
            eggs.weigh(good.get(0).id(), TODAY, 84.5).theSaved();
            var marked = eggs.theEgg(good.get(0).id());
            eggs.lies(marked.id(), marked.version(), text()).theSaved();
            new EggPhotos(tx).add(good.get(0).id(), picture(), text()).theSaved();
            var cabinet =
                    new Incubators(tx).add("Cabinet " + i, 31.5 + i / 10.0, text()).theSaved();
            new Sensors(tx)
                    .add(
                            new Sensor(
                                    new SensorId(0),
                                    1,
                                    "Shelf",
                                    cabinet.id(),
                                    maybe(box.id()),
                                    i == 0
                                            ? Sensor.Source.NONE
                                            : new Sensor.Source("house/" + i, "t"),
                                    one(List.of(Sensor.Scale.values())),
                                    0.4 * i - 0.2,
                                    Duration.ofMinutes(60 + i)))
                    .theSaved();
            var lost = eggs.theEgg(good.get(1).id());
            eggs.lose(lost.id(), lost.version(), TODAY, text()).theSaved();
            eggs.hatch(
                            good.get(2).id(),
                            Hatching.of(TODAY, tag())
                                    .weighing(61.5)
                                    .showing(genes.of("python-regius", "Pastel"), true),
                            Questions.ALL_THE_SAME)
                    .theSaved();
        }
    }

    /// Prices, a project, and a season's plan.
    private void aims(Transaction tx) {
        new Prices(tx)
                .replace(
                        "python-regius",
                        List.of(
                                new Price(
                                        "python-regius",
                                        "=Pastel",
                                        sex(),
                                        0,
                                        maybe(new Price.Later(3, 0))),
                                new Price(
                                        "python-regius",
                                        "het Clown",
                                        Optional.empty(),
                                        12.5,
                                        maybe(new Price.Later(12, 2.25)))));
        for (var i = 0; i < 2; i++) {
            new Projects(tx)
                    .add(
                            new Project(
                                    new ProjectId(0),
                                    1,
                                    "=Project " + i,
                                    "python-regius",
                                    "1.1 Clown Piebald",
                                    new Project.Telling(
                                            one(List.of(Project.Told.values())), text(), i * 2.5),
                                    new Project.Means(i, 6 + i, 0.875, 2, 3, 0.9, 15),
                                    i * 12.5,
                                    i,
                                    one(List.of(Project.State.values())),
                                    text(),
                                    List.of(
                                            new Project.Purchase("Clown", Sex.MALE, 0),
                                            new Project.Purchase("Clown", Sex.MALE, 250.5))))
                    .theSaved();
        }
        var dams = of(Sex.FEMALE);
        var sires = of(Sex.MALE);
        if (dams.isEmpty() || sires.isEmpty()) {
            return;
        }
        var words = new PlanWords(tx);
        words.say(2027, dams.getFirst(), sires.getFirst(), PlanWord.Word.PINNED, text());
        words.say(2027, dams.getFirst(), sires.getFirst(), PlanWord.Word.OVERRULED, "-1 of it");
        words.say(2027, dams.getLast(), sires.getLast(), PlanWord.Word.FORBIDDEN, text());
        new Plans(tx)
                .add(
                        2027,
                        "+ Plan",
                        -1.5,
                        12,
                        List.of(new SavedPlan.Pair(dams.getFirst(), sires.getFirst())))
                .theSaved();
        new Plans(tx).add(2028, "+ Plan", 0, 0, List.of()).theSaved();
    }

    private List<AnimalId> of(Sex sex) {
        return animals.stream()
                .filter(animal -> animal.sex().equals(Optional.of(sex)))
                .filter(
                        animal ->
                                animal.hatched()
                                        .span()
                                        .map(span -> span.latest().getYear() < 2016)
                                        .orElse(true))
                .map(Animal::id)
                .toList();
    }

    private Tag tag() {
        tags++;
        return new Tag(
                switch (random.nextInt(6)) {
                    case 0 -> "=T" + tags;
                    case 1 -> "a|b:" + tags;
                    case 2 -> "-" + tags;
                    case 3 -> "00" + tags;
                    case 4 -> "back\\" + tags;
                    default -> "T " + tags;
                });
    }

    private Optional<Sex> sex() {
        return switch (random.nextInt(5)) {
            case 0 -> Optional.empty();
            case 1, 2 -> Optional.of(Sex.FEMALE);
            default -> Optional.of(Sex.MALE);
        };
    }

    private Hatched hatched(int year) {
        return switch (random.nextInt(3)) {
            case 0 -> new Hatched.Unknown();
            case 1 -> new Hatched.InYear(year);
            default -> new Hatched.OnDay(LocalDate.of(year, 1 + random.nextInt(12), 9));
        };
    }

    private Witness witness() {
        return new Witness(maybe(TODAY.minusDays(random.nextInt(500))), shortText(), shortText());
    }

    private String text() {
        return one(AWKWARD);
    }

    private String shortText() {
        return one(AWKWARD.stream().filter(text -> text.length() < 60).toList());
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private <T> Optional<T> maybe(T value) {
        return random.nextBoolean() ? Optional.of(value) : Optional.empty();
    }

    private byte[] picture() {
        var image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 200; i++) {
            image.setRGB(random.nextInt(40), random.nextInt(30), random.nextInt(0xFFFFFF));
        }
        var out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
