package clutchwright.records.plans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import clutchwright.engine.genetics.Sex;
import clutchwright.records.Notebook;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import clutchwright.records.journal.Journal;
import clutchwright.records.journal.Undo;
import clutchwright.records.plans.PlanWord.Word;
import clutchwright.records.store.Values;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlansTest {

    private static final int SEASON = 2025;

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
    void a_price_list_is_replaced_as_a_whole_and_only_what_changed_is_written() {
        var clown = price("Clown", Optional.empty(), 300, Optional.of(new Price.Later(6, 200)));
        var females = price("Clown", Optional.of(Sex.FEMALE), 400, Optional.empty());
        var pastel = price("Pastel", Optional.empty(), 80, Optional.empty());
        replace(clown, females, pastel);

        var dearer = price("Pastel", Optional.empty(), 90, Optional.empty());
        replace(clown, females, dearer);

        assertThat(prices()).containsExactly(clown, females, dearer);
        var last = notebook.list(tx -> new Journal(tx).latest(1)).getFirst();
        assertThat(notebook.list(tx -> new Journal(tx).entriesOf(last.id()))).hasSize(1);
        Undo undone = notebook.write(tx -> new Journal(tx).undo(last.id()));
        assertThat(undone).isInstanceOf(Undo.Undone.class);
        assertThat(prices()).containsExactly(clown, females, pastel);
        assertThatThrownBy(() -> replace(clown, clown))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(prices()).containsExactly(clown, females, pastel);
    }

    @Test
    void the_database_takes_no_later_price_above_the_first() {
        assertThatThrownBy(
                        () ->
                                notebook.write(
                                        tx ->
                                                tx.insert(
                                                        "price",
                                                        Values.of()
                                                                .set("species", Notebook.ROYAL)
                                                                .set("genes", "Clown")
                                                                .set("genes_key", "clown")
                                                                .set("sex", "ANY")
                                                                .set("amount", 10.0)
                                                                .set("sells", 3)
                                                                .set("later", 20.0))))
                .isInstanceOf(RuntimeException.class);
        assertThat(prices()).isEmpty();
    }

    @Test
    void what_is_pinned_is_no_longer_forbidden_and_a_female_has_one_pinned_male() {
        var other = notebook.male("S2");
        say(sire, Word.FORBIDDEN, "");
        say(sire, Word.PINNED, "his last season");
        say(other, Word.PINNED, "");
        say(sire, Word.OVERRULED, "seen by the vet, and fit");

        assertThat(words())
                .extracting(PlanWord::sire, PlanWord::word, PlanWord::reason)
                .containsExactly(
                        tuple(other.id(), Word.PINNED, ""),
                        tuple(sire.id(), Word.OVERRULED, "seen by the vet, and fit"));
        assertThatThrownBy(() -> say(other, Word.OVERRULED, " "))
                .isInstanceOf(IllegalArgumentException.class);
        boolean taken =
                notebook.write(
                        tx ->
                                new PlanWords(tx)
                                        .takeBack(SEASON, dam.id(), other.id(), Word.PINNED));
        assertThat(taken).isTrue();
        assertThat(words()).hasSize(1);
    }

    @Test
    void plans_have_names_of_their_own_within_a_season_and_go_without_their_pairs() {
        var plan = add("Careful").theSaved();

        assertThat(plan.pairs()).containsExactly(new SavedPlan.Pair(dam.id(), sire.id()));
        assertThat(plan.madeOn()).isEqualTo(Notebook.TODAY);
        assertThat(add(" careful"))
                .isEqualTo(Edit.refused(new Problem.NameTaken(Field.NAME, "careful")));
        assertThat(add(" ")).isEqualTo(Edit.refused(new Problem.Blank(Field.NAME)));
        var renamed =
                notebook.write(tx -> new Plans(tx).rename(plan.id(), plan.version(), "Bold"))
                        .theSaved();
        assertThat(renamed.name()).isEqualTo("Bold");
        Edit<SavedPlan> stale =
                notebook.write(tx -> new Plans(tx).rename(plan.id(), plan.version(), "Late"));
        assertThat(stale).isInstanceOf(Edit.Stale.class);

        notebook.write(tx -> new Plans(tx).remove(plan.id()));

        assertThat(notebook.list(tx -> new Plans(tx).ofSeason(SEASON))).isEmpty();
    }

    @Test
    void an_animal_takes_what_was_only_thought_of_with_it() {
        say(sire, Word.FORBIDDEN, "");
        add("Careful").theSaved();

        notebook.write(tx -> new Animals(tx).remove(sire.id(), sire.version())).theSaved();

        assertThat(words()).isEmpty();
        assertThat(notebook.list(tx -> new Plans(tx).ofSeason(SEASON)))
                .flatExtracting(SavedPlan::pairs)
                .isEmpty();
    }

    private Edit<SavedPlan> add(String name) {
        return notebook.write(
                tx ->
                        new Plans(tx)
                                .add(
                                        SEASON,
                                        name,
                                        1200,
                                        1210,
                                        List.of(new SavedPlan.Pair(dam.id(), sire.id()))));
    }

    private void say(Animal with, Word word, String reason) {
        notebook.write(
                tx -> {
                    new PlanWords(tx).say(SEASON, dam.id(), with.id(), word, reason);
                    return word;
                });
    }

    private List<PlanWord> words() {
        return notebook.list(tx -> new PlanWords(tx).ofSeason(SEASON));
    }

    private void replace(Price... prices) {
        notebook.write(
                tx -> {
                    new Prices(tx).replace(Notebook.ROYAL, List.of(prices));
                    return prices;
                });
    }

    private List<Price> prices() {
        return notebook.list(tx -> new Prices(tx).of(Notebook.ROYAL));
    }

    private static Price price(
            String genes, Optional<Sex> sex, double amount, Optional<Price.Later> later) {
        return new Price(Notebook.ROYAL, genes, sex, amount, later);
    }
}
