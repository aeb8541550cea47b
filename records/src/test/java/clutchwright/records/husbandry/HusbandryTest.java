package clutchwright.records.husbandry;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.records.Notebook;
import clutchwright.records.animals.Animal;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import clutchwright.records.husbandry.Happening.Weighing;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HusbandryTest {

    private static final LocalDate APRIL = LocalDate.of(2024, 4, 1);

    @TempDir Path folder;
    private Notebook notebook;
    private Animal animal;

    @BeforeEach
    void open() {
        notebook = new Notebook(folder);
        animal = notebook.female("A1");
    }

    @AfterEach
    void close() {
        notebook.close();
    }

    @Test
    void what_happened_is_told_newest_first() {
        notebook.write(
                tx -> {
                    var husbandry = new Husbandry(tx);
                    husbandry.weigh(animal.id(), APRIL, 812.5, "").theSaved();
                    husbandry.feed(animal.id(), APRIL.plusDays(3), "rat", 45, true, "").theSaved();
                    husbandry.feed(animal.id(), APRIL.plusDays(9), "rat", false, "").theSaved();
                    husbandry.shed(animal.id(), APRIL.plusDays(12), true, "").theSaved();
                    return husbandry
                            .note(animal.id(), APRIL.plusDays(5), "wheezes; vet called")
                            .theSaved();
                });

        assertThat(notebook.list(tx -> new Husbandry(tx).of(animal.id())))
                .extracting(Happening::on)
                .containsExactly(
                        APRIL.plusDays(12),
                        APRIL.plusDays(9),
                        APRIL.plusDays(5),
                        APRIL.plusDays(3),
                        APRIL);
        assertThat(notebook.read(tx -> new Husbandry(tx).lastMealsTaken()).values())
                .extracting(Happening.Meal::on)
                .containsExactly(APRIL.plusDays(3));
    }

    @Test
    void the_last_weight_is_that_of_the_last_day_not_the_last_entered() {
        weigh(APRIL.plusDays(10), 900);
        weigh(APRIL, 812);

        assertThat(notebook.read(tx -> new Husbandry(tx).lastWeights()).values())
                .extracting(Weighing::grams)
                .containsExactly(900.0);
    }

    @Test
    void nothing_weighs_nothing_and_nothing_is_weighed_in_the_future() {
        Edit<Weighing> refused =
                notebook.write(
                        tx ->
                                new Husbandry(tx)
                                        .weigh(animal.id(), LocalDate.of(2025, 1, 1), -1, ""));

        assertThat(refused)
                .isEqualTo(
                        new Edit.Refused<>(
                                List.of(
                                        new Problem.InTheFuture(
                                                Field.WEIGHED,
                                                LocalDate.of(2025, 1, 1),
                                                Notebook.TODAY),
                                        new Problem.NotPositive(Field.GRAMS, -1))));
    }

    @Test
    void a_note_on_health_says_something() {
        Edit<Happening.HealthNote> refused =
                notebook.write(tx -> new Husbandry(tx).note(animal.id(), APRIL, "  "));

        assertThat(refused).isEqualTo(Edit.refused(new Problem.Blank(Field.NOTE)));
    }

    @Test
    void a_weight_edited_by_two_people_is_told_to_the_second() {
        var weighing = weigh(APRIL, 812);
        var first = update(grams(weighing, 821)).theSaved();

        assertThat(update(grams(weighing, 218))).isEqualTo(new Edit.Stale<>(first));
    }

    private Weighing weigh(LocalDate on, double grams) {
        return notebook.write(tx -> new Husbandry(tx).weigh(animal.id(), on, grams, "").theSaved());
    }

    private Edit<Happening> update(Happening changed) {
        return notebook.write(tx -> new Husbandry(tx).update(changed));
    }

    private static Weighing grams(Weighing weighing, double grams) {
        return new Weighing(
                weighing.id(),
                weighing.version(),
                weighing.animal(),
                weighing.on(),
                grams,
                weighing.notes());
    }
}
