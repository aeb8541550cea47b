package clutchwright.records.clutches;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Parentage.SireQuestion;
import clutchwright.engine.probability.Distribution;
import clutchwright.records.Notebook;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Origin;
import clutchwright.records.animals.Tag;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Parent;
import clutchwright.records.checks.Problem;
import clutchwright.records.checks.Questions;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.journal.Journal;
import clutchwright.records.journal.Undo;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.statements.Statements;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// A female lays on the first of March 2024; the eggs hatch at the end of April.
class ClutchTest {

    private static final LocalDate LAID = LocalDate.of(2024, 3, 1);
    private static final LocalDate PIPPED = LocalDate.of(2024, 4, 28);

    @TempDir Path folder;
    private Notebook notebook;
    private Animal dam;
    private Animal sire;

    @BeforeEach
    void open() {
        notebook = new Notebook(folder);
        dam = notebook.female("D1");
        sire = notebook.male("S1");
    }

    @AfterEach
    void close() {
        notebook.close();
    }

    @Test
    void a_clutch_gets_the_next_number_and_its_eggs_are_counted() {
        var first = lay(6, 1);
        var second = lay(4, 0);

        assertThat(first.number()).hasToString("24-01");
        assertThat(second.number()).hasToString("24-02");
        assertThat(first.goodEggs()).isEqualTo(6);
        assertThat(first.slugs()).isEqualTo(1);
        assertThat(first.eggs()).extracting(Egg::number).containsExactly(1, 2, 3, 4, 5, 6, 7);
        assertThat(first.eggs().getLast().fate()).isEqualTo(new Fate.Slug());
        assertThat(first.dam()).isEqualTo(dam.id());
        assertThat(clutch(first)).isEqualTo(first);
    }

    @Test
    void a_hatchling_is_an_animal_with_parents_date_tag_sex_look_and_weight_in_one_step() {
        var clutch = lay(2, 0);
        var hatching =
                Hatching.of(PIPPED, new Tag("24-01A"))
                        .withSex(Sex.MALE)
                        .showing(Notebook.clownHetPiebald(), false)
                        .weighing(58);

        var young = hatch(clutch.eggs().getFirst(), hatching).theSaved();

        assertThat(young.parentage()).isEqualTo(clutch.parentage());
        assertThat(young.hatched()).isEqualTo(Notebook.on(2024, 4, 28));
        assertThat(young.origin().how()).isEqualTo(Origin.How.HATCHED_HERE);
        assertThat(young.species()).isEqualTo(Notebook.ROYAL);
        assertThat(clutch(clutch).eggs().getFirst().fate())
                .isEqualTo(new Fate.Hatched(PIPPED, List.of(young.id())));
        var latest = notebook.read(tx -> new Statements(tx).latest(young.id()));
        assertThat(latest.sighting().orElseThrow().genes().canonical())
                .isEqualTo("Clown het Piebald");
        assertThat(latest.claim()).isEmpty();
        assertThat(notebook.list(tx -> new Husbandry(tx).weights(young.id())))
                .extracting(weighing -> weighing.grams())
                .containsExactly(58.0);
        var from = notebook.read(tx -> new Clutches(tx).from(young.id())).orElseThrow();
        assertThat(from.id()).isEqualTo(clutch.id());
        var changes = notebook.read(tx -> new Journal(tx).latest(1));
        assertThat(changes.getFirst().what()).isEqualTo("hatch");
    }

    @Test
    void a_hatchling_taken_back_leaves_the_egg_waiting_and_no_animal() {
        var clutch = lay(2, 0);
        var young = hatch(clutch.eggs().getFirst(), named("24-01A").weighing(58)).theSaved();
        var change = notebook.read(tx -> new Journal(tx).latest(1)).getFirst().id();

        var undo = notebook.write(tx -> new Journal(tx).undo(change));

        assertThat(undo).isInstanceOf(Undo.Undone.class);
        assertThat(clutch(clutch).incubating()).hasSize(2);
        assertThat(find(young)).isEmpty();
    }

    @Test
    void a_refused_hatchling_leaves_the_egg_waiting() {
        var clutch = lay(2, 0);

        var refused = hatch(clutch.eggs().getFirst(), named("d1").weighing(0));

        assertRefused(
                refused,
                new Problem.TagTaken("d1", dam.id()),
                new Problem.NotPositive(Field.GRAMS, 0));
        assertThat(clutch(clutch)).isEqualTo(clutch);
    }

    @Test
    void an_egg_hatches_once_unless_they_are_twins() {
        var clutch = lay(1, 0);
        var egg = clutch.eggs().getFirst();
        var first = hatch(egg, named("24-01A")).theSaved();

        assertRefused(
                hatch(egg, named("24-01B")), new Problem.EggNotIncubating("24-01", 1, "HATCHED"));
        var twin =
                notebook.write(
                        tx ->
                                new Eggs(tx)
                                        .hatchTwin(egg.id(), named("24-01B"), Questions.ASK)
                                        .theSaved());
        assertThat(clutch(clutch).hatchlings()).containsExactly(first.id(), twin.id());
    }

    @Test
    void a_twin_needs_a_first() {
        var egg = lay(1, 0).eggs().getFirst();

        assertRefused(
                notebook.write(tx -> new Eggs(tx).hatchTwin(egg.id(), named("A"), Questions.ASK)),
                new Problem.EggNotHatched("24-01", 1, "INCUBATING"));
    }

    @Test
    void there_are_no_more_hatchlings_than_eggs() {
        var clutch = lay(2, 1);
        hatchNext(clutch, "A").theSaved();
        hatchNext(clutch, "B").theSaved();

        assertRefused(hatchNext(clutch, "C"), new Problem.MoreHatchlingsThanEggs("24-01", 2, 3));
        assertThat(clutch(clutch).isComplete()).isTrue();
    }

    @Test
    void a_male_lays_no_eggs() {
        assertRefused(lay(sire, 4, 0, LAID), new Problem.LaidByMale(sire.id()));
    }

    @Test
    void a_female_whose_sex_is_not_on_record_is_asked_about() {
        var unsexed = notebook.add(Notebook.animal("U1"));

        assertRefused(
                lay(unsexed, 4, 0, LAID), new Problem.UnsexedParent(unsexed.id(), Parent.DAM));
    }

    @Test
    void every_problem_of_a_clutch_is_told_at_once() {
        var young =
                notebook.add(
                        Notebook.animal("D2")
                                .withSex(Sex.FEMALE)
                                .withHatched(Notebook.on(2024, 5, 1)));

        assertRefused(
                lay(young, 0, 0, LAID),
                new Problem.NoEggs(),
                new Problem.BeforeHatching(Field.LAID, LAID, young.id(), "2024-05-01"));
        assertRefused(
                lay(dam, 1, 0, LocalDate.of(2026, 1, 1)),
                new Problem.InTheFuture(Field.LAID, LocalDate.of(2026, 1, 1), Notebook.TODAY));
    }

    @Test
    void a_number_is_given_once_a_season() {
        var first = lay(1, 0);
        var again =
                new Laying(
                        Optional.of(first.number()),
                        2024,
                        parents(),
                        Optional.empty(),
                        LAID,
                        Notebook.ROYAL,
                        "",
                        1,
                        0);

        assertRefused(
                notebook.write(tx -> new Clutches(tx).lay(again, Questions.ASK)),
                new Problem.NameTaken(Field.CLUTCH_NUMBER, "24-01"));
    }

    @Test
    void an_egg_is_candled_boxed_and_found_to_be_a_slug() {
        var clutch = lay(2, 0);
        var one = clutch.eggs().getFirst();
        var box = notebook.write(tx -> new Boxes(tx).add("B7", "Big one", "").theSaved());
        notebook.write(
                tx -> {
                    var eggs = new Eggs(tx);
                    eggs.putInto(box.id(), clutch.eggs().stream().map(Egg::id).toList()).theSaved();
                    eggs.candle(one.id(), LAID.plusDays(5), Candling.Finding.DOUBTFUL, "")
                            .theSaved();
                    return eggs.candle(one.id(), LAID.plusDays(20), Candling.Finding.SLUG, "dry")
                            .theSaved();
                });

        var egg = clutch(clutch).eggs().getFirst();
        assertThat(egg.fate()).isEqualTo(new Fate.Slug());
        assertThat(egg.candlings())
                .extracting(Candling::finding)
                .containsExactly(Candling.Finding.DOUBTFUL, Candling.Finding.SLUG);
        assertThat(egg.box()).contains(box.id());
        assertThat(notebook.list(tx -> new Eggs(tx).in(box.id())))
                .extracting(Egg::number)
                .containsExactly(2);
    }

    @Test
    void an_egg_is_followed_by_what_the_light_shows_its_weight_and_how_it_lies() {
        var one = lay(2, 0).eggs().getFirst();
        notebook.write(
                tx -> {
                    var eggs = new Eggs(tx);
                    eggs.candle(one.id(), LAID.plusDays(2), Candling.Finding.NO_VEINS, "")
                            .theSaved();
                    eggs.weigh(one.id(), LAID.plusDays(30), 79.5).theSaved();
                    eggs.weigh(one.id(), LAID, 84).theSaved();
                    return eggs.candle(one.id(), LAID.plusDays(50), Candling.Finding.COLLAPSED, "")
                            .theSaved();
                });
        var seen = egg(one);
        notebook.write(tx -> new Eggs(tx).lies(seen.id(), seen.version(), " mark up ").theSaved());

        // Neither says that it is dead: a late egg may cave in and hatch.
        assertThat(egg(one).fate()).isEqualTo(new Fate.Incubating());
        assertThat(egg(one).candlings())
                .extracting(Candling::finding)
                .containsExactly(Candling.Finding.NO_VEINS, Candling.Finding.COLLAPSED);
        assertThat(egg(one).weights())
                .extracting(EggWeighing::on, EggWeighing::grams)
                .containsExactly(tuple(LAID, 84.0), tuple(LAID.plusDays(30), 79.5));
        assertThat(egg(one).lies()).isEqualTo("mark up");

        Edit<Egg> stale = notebook.write(tx -> new Eggs(tx).lies(one.id(), one.version(), "else"));
        assertThat(stale).isInstanceOf(Edit.Stale.class);
        assertRefused(
                notebook.write(tx -> new Eggs(tx).weigh(one.id(), LAID, 0)),
                new Problem.NotPositive(Field.GRAMS, 0));
        assertRefused(
                notebook.write(tx -> new Eggs(tx).weigh(one.id(), LAID.minusDays(1), 80)),
                new Problem.WrongOrder(Field.LAID, LAID, Field.GRAMS, LAID.minusDays(1)));
    }

    private Egg egg(Egg of) {
        return notebook.database().read(tx -> new Eggs(tx).theEgg(of.id()));
    }

    @Test
    void nothing_happens_to_an_egg_before_it_is_laid() {
        var egg = lay(1, 0).eggs().getFirst();
        var before = LAID.minusDays(1);

        assertRefused(
                notebook.write(
                        tx -> new Eggs(tx).candle(egg.id(), before, Candling.Finding.GOOD, "")),
                new Problem.WrongOrder(Field.LAID, LAID, Field.CANDLED, before));
        assertRefused(
                notebook.write(tx -> new Eggs(tx).lose(egg.id(), egg.version(), before, "")),
                new Problem.WrongOrder(Field.LAID, LAID, Field.LOST, before));
        assertRefused(
                hatch(egg, Hatching.of(before, new Tag("A"))),
                new Problem.WrongOrder(Field.LAID, LAID, Field.PIPPED, before));
    }

    @Test
    void a_lost_egg_can_be_found_alive_but_a_hatched_one_is_not_lost() {
        var clutch = lay(2, 0);
        var one = clutch.eggs().getFirst();
        var lost =
                notebook.write(
                        tx ->
                                new Eggs(tx)
                                        .lose(one.id(), one.version(), LAID.plusDays(30), "mould")
                                        .theSaved());
        assertThat(lost.fate()).isEqualTo(new Fate.Lost(LAID.plusDays(30), "mould"));

        var stale = notebook.write(tx -> new Eggs(tx).reopen(one.id(), one.version()));
        assertThat(stale).isEqualTo(new Edit.Stale<>(lost));
        notebook.write(tx -> new Eggs(tx).reopen(one.id(), lost.version()).theSaved());
        hatch(one, named("A")).theSaved();

        var hatched = clutch(clutch).eggs().getFirst();
        assertRefused(
                notebook.write(tx -> new Eggs(tx).lose(one.id(), hatched.version(), PIPPED, "")),
                new Problem.EggHatched("24-01", 1));
    }

    @Test
    void clutch_mates_of_a_sire_in_doubt_share_one_question() {
        var other = notebook.male("S2");
        var either =
                Parentage.of(
                        new Dam.Known(dam.id()),
                        new Sire.InDoubt(
                                new SireQuestion(
                                        "whatever",
                                        Distribution.uniform(List.of(sire.id(), other.id())))));
        var clutch = lay(either, 2, 0, LAID).theSaved();
        var next = lay(either, 1, 0, LAID).theSaved();

        var one = hatchNext(clutch, "A").theSaved();
        var two = hatchNext(clutch, "B").theSaved();
        var three = hatchNext(next, "C").theSaved();

        assertThat(one.parentage()).isEqualTo(two.parentage()).isEqualTo(clutch.parentage());
        assertThat(three.parentage()).isNotEqualTo(one.parentage());
        assertThat(notebook.list(tx -> new Clutches(tx).of(other.id()))).hasSize(2);
    }

    @Test
    void a_clutch_with_hatchlings_stays_on_record_and_so_do_they() {
        var clutch = lay(1, 0);
        var young = hatchNext(clutch, "A").theSaved();
        var uses = new LinkedHashMap<String, Integer>();
        uses.put("hatchling", 1);

        assertRefused(
                notebook.write(tx -> new Clutches(tx).remove(clutch.id(), clutch.version())),
                new Problem.StillUsed(uses));
        assertRefused(
                notebook.write(tx -> new Animals(tx).remove(young.id(), young.version())),
                new Problem.StillUsed(uses));
    }

    @Test
    void a_clutch_without_hatchlings_can_go_and_come_back() {
        var clutch = lay(3, 1);
        notebook.write(tx -> new Clutches(tx).remove(clutch.id(), clutch.version()).theSaved());
        var change = notebook.read(tx -> new Journal(tx).latest(1)).getFirst().id();
        assertThat(notebook.list(tx -> new Clutches(tx).all())).isEmpty();

        notebook.write(tx -> new Journal(tx).undo(change));

        assertThat(clutch(clutch).eggs())
                .extracting(Egg::fate)
                .isEqualTo(clutch.eggs().stream().map(Egg::fate).toList());
    }

    @Test
    void a_pairing_with_a_clutch_stays_on_record() {
        var pairing =
                notebook.write(
                        tx ->
                                new Pairings(tx)
                                        .plan(2024, dam.id(), sire.id(), "", Questions.ASK)
                                        .theSaved());
        var laying =
                new Laying(
                        Optional.empty(),
                        2024,
                        parents(),
                        Optional.of(pairing.id()),
                        LAID,
                        Notebook.ROYAL,
                        "",
                        5,
                        0);
        notebook.write(tx -> new Clutches(tx).lay(laying, Questions.ASK).theSaved());
        var uses = new LinkedHashMap<String, Integer>();
        uses.put("clutch", 1);

        assertRefused(
                notebook.write(tx -> new Pairings(tx).remove(pairing.id(), pairing.version())),
                new Problem.StillUsed(uses));
    }

    @Test
    void numbers_are_read_as_they_are_written() {
        assertThat(ClutchNumber.find("24-07")).contains(new ClutchNumber(2024, 7));
        assertThat(ClutchNumber.find(" 2019-112 ")).contains(new ClutchNumber(2019, 112));
        assertThat(ClutchNumber.find("24-0")).isEmpty();
        assertThat(ClutchNumber.find("spring")).isEmpty();
    }

    private Parentage parents() {
        return Parentage.of(new Dam.Known(dam.id()), new Sire.Known(sire.id()));
    }

    private Clutch lay(int good, int slugs) {
        return lay(parents(), good, slugs, LAID).theSaved();
    }

    private Edit<Clutch> lay(Animal by, int good, int slugs, LocalDate on) {
        var other = by.equals(sire) ? new Sire.Unknown() : new Sire.Known(sire.id());
        return lay(Parentage.of(new Dam.Known(by.id()), other), good, slugs, on);
    }

    private Edit<Clutch> lay(Parentage parentage, int good, int slugs, LocalDate on) {
        var laying =
                new Laying(
                        Optional.empty(),
                        2024,
                        parentage,
                        Optional.empty(),
                        on,
                        Notebook.ROYAL,
                        "",
                        good,
                        slugs);
        return notebook.write("lay", tx -> new Clutches(tx).lay(laying, Questions.ASK));
    }

    private Edit<Animal> hatch(Egg egg, Hatching hatching) {
        return notebook.write("hatch", tx -> new Eggs(tx).hatch(egg.id(), hatching, Questions.ASK));
    }

    private Edit<Animal> hatchNext(Clutch clutch, String tag) {
        return notebook.write(
                "hatch", tx -> new Eggs(tx).hatchNext(clutch.id(), named(tag), Questions.ASK));
    }

    private Clutch clutch(Clutch clutch) {
        return notebook.read(tx -> new Clutches(tx).theClutch(clutch.id()));
    }

    private Optional<Animal> find(Animal animal) {
        AnimalId id = animal.id();
        return notebook.read(tx -> new Animals(tx).find(id));
    }

    private static Hatching named(String tag) {
        return Hatching.of(PIPPED, new Tag(tag));
    }

    private static void assertRefused(Edit<?> edit, Problem... expected) {
        assertThat(edit).isInstanceOf(Edit.Refused.class);
        assertThat(((Edit.Refused<?>) edit).problems()).containsExactlyInAnyOrder(expected);
    }
}
