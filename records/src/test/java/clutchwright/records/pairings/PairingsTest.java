package clutchwright.records.pairings;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Sex;
import clutchwright.records.Notebook;
import clutchwright.records.animals.Animal;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Parent;
import clutchwright.records.checks.Problem;
import clutchwright.records.checks.Questions;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PairingsTest {

    private static final LocalDate NOVEMBER = LocalDate.of(2023, 11, 20);

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
    void a_pairing_is_planned_begun_watched_and_ended() {
        var planned = plan(dam, sire, 2024).theSaved();
        var begun = update(planned.begun(NOVEMBER)).theSaved();
        notebook.write(
                tx -> {
                    var pairings = new Pairings(tx);
                    pairings.see(planned.id(), SignSeen.Kind.OVULATION, NOVEMBER.plusDays(90), "")
                            .theSaved();
                    return pairings.see(planned.id(), SignSeen.Kind.LOCK, NOVEMBER.plusDays(2), "")
                            .theSaved();
                });
        var done = update(begun.done(NOVEMBER.plusDays(100))).theSaved();

        assertThat(done.state()).isEqualTo(Pairing.State.DONE);
        assertThat(done.putTogether()).contains(NOVEMBER);
        assertThat(notebook.list(tx -> new Pairings(tx).signs(planned.id())))
                .extracting(SignSeen::kind)
                .containsExactly(SignSeen.Kind.LOCK, SignSeen.Kind.OVULATION);
        assertThat(notebook.list(tx -> new Pairings(tx).ofSeason(2024))).containsExactly(done);
        assertThat(notebook.list(tx -> new Pairings(tx).of(sire.id()))).containsExactly(done);
        assertThat(notebook.list(tx -> new Pairings(tx).seasons())).containsExactly(2024);
    }

    @Test
    void every_problem_of_a_pairing_is_told_at_once() {
        assertThat(plan(sire, dam, 2031))
                .isEqualTo(
                        new Edit.Refused<>(
                                java.util.List.of(
                                        new Problem.WrongSex(sire.id(), Parent.DAM, Sex.MALE),
                                        new Problem.WrongSex(dam.id(), Parent.SIRE, Sex.FEMALE),
                                        new Problem.OutOfRange(Field.SEASON, 2031, 1900, 2026))));
    }

    @Test
    void the_same_two_are_one_pairing_a_season() {
        plan(dam, sire, 2024).theSaved();

        assertThat(plan(dam, sire, 2024))
                .isEqualTo(Edit.refused(new Problem.NameTaken(Field.SEASON, "2024")));
        assertThat(plan(dam, sire, 2025).saved()).isPresent();
    }

    @Test
    void nobody_is_separated_before_they_were_together() {
        var begun = update(plan(dam, sire, 2024).theSaved().begun(NOVEMBER)).theSaved();

        assertThat(update(begun.done(NOVEMBER.minusDays(1))))
                .isEqualTo(
                        Edit.refused(
                                new Problem.WrongOrder(
                                        Field.PUT_TOGETHER,
                                        NOVEMBER,
                                        Field.SEPARATED,
                                        NOVEMBER.minusDays(1))));
    }

    @Test
    void a_pairing_edited_by_two_people_is_told_to_the_second() {
        var planned = plan(dam, sire, 2024).theSaved();
        var first = update(planned.withNotes("one")).theSaved();

        assertThat(update(planned.withNotes("two"))).isEqualTo(new Edit.Stale<>(first));
    }

    private Edit<Pairing> plan(Animal female, Animal male, int season) {
        return notebook.write(
                tx -> new Pairings(tx).plan(season, female.id(), male.id(), "", Questions.ASK));
    }

    private Edit<Pairing> update(Pairing changed) {
        return notebook.write(tx -> new Pairings(tx).update(changed, Questions.ASK));
    }
}
