package clutchwright.app.demo;

import clutchwright.app.holding.LineEntry;
import clutchwright.app.steering.PlanRules;
import clutchwright.app.steering.PriceLines;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.notation.Reading;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Hatched;
import clutchwright.records.animals.Line;
import clutchwright.records.animals.Origin;
import clutchwright.records.animals.Particulars;
import clutchwright.records.animals.Status;
import clutchwright.records.animals.Tag;
import clutchwright.records.checks.Questions;
import clutchwright.records.plans.Price;
import clutchwright.records.plans.Prices;
import clutchwright.records.projects.Project;
import clutchwright.records.projects.ProjectId;
import clutchwright.records.projects.Projects;
import clutchwright.records.settings.Settings;
import clutchwright.records.statements.Statements;
import clutchwright.records.statements.Witness;
import clutchwright.records.store.Author;
import clutchwright.records.store.Database;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/// Millrace, an invented house: two dozen animals bought in, six seasons of clutches, some hets
/// that nobody knows of. The same on every machine; only its dates count back from today.
public final class DemoHouse {

    private static final String SPECIES = "python-regius";
    private static final long SEED = 20_260_117;
    private static final int SEASONS = 6;
    private static final int[] CLUTCHES = {6, 8, 10, 11, 12, 13};
    /// A female lays about the same day every year: so long before today's day of the year at most,
    /// and so long after it.
    private static final int EARLIEST_LAYING_DAYS = 66;

    private static final int LATEST_LAYING_DAYS = 52;
    private static final int PAIRED_BEFORE_LAYING_DAYS = 122;
    private static final int HATCHING_NOW_DAY = -57;
    private static final int STILL_OPEN = 10;
    private static final int ONLY_PLANNED = 3;
    private static final Author NARRATOR = new Author("the demo");

    private final Database database;
    private final GeneLine lines;
    private final LocalDate today;
    private final SplittableRandom random = new SplittableRandom(SEED);
    private final List<Resident> kept = new ArrayList<>();

    private DemoHouse(Database database, LocalDate today) {
        this.database = database;
        this.lines = GeneLine.of(Catalogue.shipped(SPECIES));
        this.today = today;
    }

    /// Tells the story to a store, unless animals are on record there already.
    public static void fill(Database database) {
        var empty = database.read(tx -> new Animals(tx).count() == 0);
        if (empty) {
            new DemoHouse(database, LocalDate.now(database.clock())).tell();
        }
    }

    private void tell() {
        var founders = Founders.read().all();
        database.write(
                NARRATOR,
                "Millrace: the first animals",
                tx -> founders.stream().map(founder -> found(tx, founder)).toList());
        for (int back = SEASONS - 1; back >= 0; back--) {
            season(back);
        }
        database.write(
                NARRATOR,
                "Millrace: tubs, meals and weights",
                tx -> new HouseKeeping(tx, random, today).of(kept));
        database.write(NARRATOR, "Millrace: prices, and how it plans", this::aims);
        database.write(NARRATOR, "Millrace: the incubator", tx -> new WarmCabinet(tx).fill());
    }

    private List<Price> aims(Transaction tx) {
        if (new PriceLines(lines, SPECIES).read(Founders.text("prices.txt"))
                instanceof PriceLines.Read.Understood(var prices)) {
            new Prices(tx).replace(SPECIES, prices);
            PlanRules.USUAL.within(30, 20, 220).write(new Settings(tx));
            new Projects(tx).add(fourInOne()).theSaved();
            return prices;
        }
        throw new IllegalStateException("the demo's prices cannot be read");
    }

    private static Project fourInOne() {
        return new Project(
                new ProjectId(0),
                1,
                "Four in one",
                SPECIES,
                "Clown Piebald Desert Ghost Albino",
                Project.Telling.BY_EYE,
                new Project.Means(8, 6, 0.93, 2, 3, 0.8, 20),
                150,
                1,
                Project.State.OPEN,
                "The long one: all four recessives in one animal.",
                List.of());
    }

    private Resident found(Transaction tx, Founders.Founder founder) {
        var hatched = today.minusYears(founder.years());
        var particulars =
                Particulars.of(new Tag(founder.tag()), SPECIES)
                        .withName(founder.name())
                        .withSex(founder.sex())
                        .withHatched(new Hatched.InYear(hatched.getYear()))
                        .withOrigin(
                                new Origin(
                                        Origin.How.BOUGHT,
                                        founder.from(),
                                        Optional.of(hatched.plusYears(2))))
                        .withLine(new Line("", founder.from()));
        var animal = new Animals(tx).add(particulars, Questions.ALL_THE_SAME).theSaved();
        var genes = understood(founder.stated());
        new Statements(tx)
                .claim(
                        animal.id(),
                        LineEntry.of(lines, genes),
                        Witness.on(hatched.plusYears(2), founder.from()))
                .theSaved();
        var truth = Truth.drawn(founder.sex(), stated(founder, genes), random);
        if (!founder.unknown().isBlank()) {
            truth = truth.and(stated(founder, understood(founder.unknown())), random);
        }
        var resident = new Resident(animal.id(), founder.tag(), truth, hatched, List.of());
        kept.add(resident);
        return resident;
    }

    private ParentGenotype stated(Founders.Founder founder, Genes genes) {
        return lines.asParent(genes, founder.sex()).parent();
    }

    private Genes understood(String line) {
        return switch (lines.read(line)) {
            case Reading.Understood(var genes, _, _) -> genes;
            case Reading.Unclear(var faults, _) ->
                    throw new IllegalStateException("the demo cannot be read: " + line + faults);
        };
    }

    private void season(int back) {
        var end = today.minusDays(365L * back);
        var season = end.getYear();
        database.write(
                NARRATOR,
                "Millrace: season " + season,
                tx -> {
                    var story = new SeasonStory(tx, lines, random, today, season, back == 0);
                    var taste = new Matchmaking(lines.catalogue(), random);
                    var wanted = CLUTCHES[SEASONS - 1 - back];
                    var open = back == 0 ? STILL_OPEN : 0;
                    var couples =
                            taste.couples(kept, end.minusDays(180), wanted + open).stream()
                                    .sorted(Comparator.comparingInt(DemoHouse::usualDay))
                                    .toList();
                    var laying =
                            back > 0
                                    ? couples
                                    : couples.stream().filter(c -> usualDay(c) < -8).toList();
                    var firstUnhatched =
                            Math.toIntExact(
                                    laying.stream()
                                            .filter(c -> usualDay(c) < HATCHING_NOW_DAY)
                                            .count());
                    for (int i = 0; i < laying.size(); i++) {
                        var usual = usualDay(laying.get(i)) + random.nextInt(9) - 4;
                        // One clutch is always about to hatch, for whoever looks around.
                        var day = back == 0 && i == firstUnhatched ? HATCHING_NOW_DAY : usual;
                        var rival = i == 3 ? rival(laying, i) : Optional.<Resident>empty();
                        var young = story.clutch(laying.get(i), end.plusDays(day), rival);
                        var stay = back == 0 ? 1 : random.nextInt(5) == 0 ? 2 : 1;
                        story.decide(young, taste, stay);
                        kept.addAll(young.stream().filter(r -> stays(tx, r)).toList());
                    }
                    var waiting = couples.subList(laying.size(), couples.size());
                    for (int i = 0; i < waiting.size(); i++) {
                        var planned = i >= waiting.size() - ONLY_PLANNED;
                        var couple = waiting.get(i);
                        var together = PAIRED_BEFORE_LAYING_DAYS - Math.max(6, usualDay(couple));
                        story.openPairing(couple, planned ? 0 : together);
                    }
                    return true;
                });
    }

    /// When she lays, in days from the day of the year on which the story is told.
    private static int usualDay(Matchmaking.Couple couple) {
        var draw = new SplittableRandom(SEED + couple.dam().tag().hashCode());
        return draw.nextInt(-EARLIEST_LAYING_DAYS, LATEST_LAYING_DAYS);
    }

    private static Optional<Resident> rival(List<Matchmaking.Couple> couples, int at) {
        return couples.stream()
                .map(Matchmaking.Couple::sire)
                .filter(sire -> !sire.equals(couples.get(at).sire()))
                .findFirst();
    }

    private static boolean stays(Transaction tx, Resident resident) {
        var status = new Animals(tx).theAnimal(resident.id()).status();
        return status == Status.KEPT || status == Status.HOLD_BACK || status == Status.FOR_SALE;
    }
}
