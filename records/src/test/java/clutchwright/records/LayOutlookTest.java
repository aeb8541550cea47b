package clutchwright.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.season.CollectionMean;
import clutchwright.engine.season.LayForecast.Basis;
import clutchwright.engine.season.LayPriors;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Hatched;
import clutchwright.records.checks.Questions;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.clutches.Laying;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.pairings.SignSeen;
import clutchwright.records.settings.Settings;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.SequencedMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// What a collection's records say of when its females will lay. It is 10 May 2024.
class LayOutlookTest {

    @TempDir Path folder;
    private Notebook notebook;
    private Animal male;

    @BeforeEach
    void open() {
        notebook = new Notebook(folder);
        male = notebook.male("M1");
    }

    @AfterEach
    void close() {
        notebook.close();
    }

    @Test
    void a_female_whose_pairing_is_only_planned_is_expected_by_the_collections_day() {
        var ada = notebook.female("Ada");
        pair(ada, Optional.empty());

        var found = outlook().get(ada.id());

        assertThat(found.forecast().basis().getFirst())
                .isEqualTo(new Basis.Collection(110, new CollectionMean.Origin.Assumed()));
        // Planned on 10 May and 105 days to go: the next season is nearer than this one's April.
        assertThat(found.year().year()).isEqualTo(2024);
    }

    @Test
    void her_shed_says_when_to_the_week() {
        var ada = notebook.female("Ada");
        var pairing = pair(ada, Optional.of(LocalDate.of(2024, 1, 10)));
        see(pairing, SignSeen.Kind.OVULATION, LocalDate.of(2024, 4, 4));
        see(pairing, SignSeen.Kind.PRE_LAY_SHED, LocalDate.of(2024, 4, 22));

        var found = outlook().get(ada.id());

        // 22 April and 29 days, less a little: ovulation was seen 18.5 days before.
        assertThat(found.about()).isEqualTo(LocalDate.of(2024, 5, 21));
        assertThat(found.by(0.05)).isAfter(LocalDate.of(2024, 5, 13));
        assertThat(found.forecast().skips()).isZero();
    }

    @Test
    void her_own_years_and_the_others_season_count() {
        var ada = notebook.female("Ada");
        var bea = notebook.female("Bea");
        for (int year = 2021; year <= 2023; year++) {
            lay(ada, LocalDate.of(year, 6, 1), year);
            lay(bea, LocalDate.of(year, 4, 1), year);
        }
        pair(ada, Optional.of(LocalDate.of(2024, 1, 20)));
        var alone = outlook().get(ada.id());

        lay(bea, LocalDate.of(2024, 4, 11), 2024);
        var shifted = outlook().get(ada.id());

        assertThat(alone.forecast().basis())
                .anyMatch(
                        each ->
                                each instanceof Basis.OwnClutches(var clutches, var day)
                                        && clutches == 3
                                        && Math.abs(day - 152) < 1e-9)
                .noneMatch(Basis.SeasonShift.class::isInstance);
        assertThat(alone.about()).isBetween(LocalDate.of(2024, 5, 26), LocalDate.of(2024, 6, 3));
        // Bea is some ten days late, which is a shift of 25/(25 + 49 + her own variance) of that.
        var shift =
                shifted.forecast().basis().stream()
                        .filter(Basis.SeasonShift.class::isInstance)
                        .map(Basis.SeasonShift.class::cast)
                        .findFirst()
                        .orElseThrow();
        assertThat(shift.others()).isEqualTo(1);
        assertThat(shift.laterDays()).isCloseTo(2.5, within(0.5));
        assertThat(shifted.forecast().laid().mean())
                .isGreaterThan(alone.forecast().laid().mean() + 1);
    }

    @Test
    void who_has_laid_is_not_expected_any_more() {
        var ada = notebook.female("Ada");
        pair(ada, Optional.of(LocalDate.of(2024, 1, 20)));
        lay(ada, LocalDate.of(2024, 5, 2), 2024);

        assertThat(outlook()).isEmpty();
    }

    @Test
    void who_was_never_put_together_on_record_has_laid_once_eggs_follow_a_sign() {
        var ada = notebook.female("Ada");
        see(pair(ada, Optional.empty()), SignSeen.Kind.PRE_LAY_SHED, LocalDate.of(2024, 4, 2));
        assertThat(outlook()).containsKey(ada.id());

        lay(ada, LocalDate.of(2024, 5, 2), 2024);

        assertThat(outlook()).isEmpty();
    }

    /// Her likely days ended in April; what nobody wrote down is not waited for in May two years
    // on.
    @Test
    void a_season_that_is_long_over_is_not_waited_for() {
        var ada = notebook.female("Ada");
        lay(ada, LocalDate.of(2021, 2, 1), 2021);
        pair(ada, Optional.of(LocalDate.of(2023, 10, 1)));

        assertThat(outlook()).isEmpty();
    }

    @Test
    void a_young_female_lays_her_first_clutch_and_an_old_one_may_have_laid_elsewhere() {
        var young =
                notebook.add(
                        Notebook.animal("Y")
                                .withSex(Sex.FEMALE)
                                .withHatched(new Hatched.InYear(2021)));
        var old =
                notebook.add(
                        Notebook.animal("O")
                                .withSex(Sex.FEMALE)
                                .withHatched(new Hatched.InYear(2015)));
        pair(young, Optional.of(LocalDate.of(2024, 1, 20)));
        pair(old, Optional.of(LocalDate.of(2024, 1, 20)));

        var found = outlook();

        assertThat(found.get(young.id()).forecast().basis()).contains(new Basis.FirstTime(10));
        assertThat(found.get(old.id()).forecast().basis())
                .noneMatch(Basis.FirstTime.class::isInstance);
    }

    @Test
    void seasons_without_a_clutch_count_against_the_next() {
        var ada = notebook.female("Ada");
        lay(ada, LocalDate.of(2022, 6, 1), 2022);
        for (int year = 2021; year <= 2023; year++) {
            done(ada, year);
        }
        pair(ada, Optional.empty());

        // Three seasons in which she was paired, one clutch: (3 + 2) / (10 + 3), and today is
        // before her days.
        assertThat(outlook().get(ada.id()).forecast().skips()).isBetween(5.0 / 13, 0.45);
    }

    @Test
    void what_is_assumed_can_be_set_and_nonsense_is_not_believed() {
        var ada = notebook.female("Ada");
        pair(ada, Optional.empty());
        var first = LayPriors.STANDARD;
        notebook.write(
                tx -> {
                    new Settings(tx).put("lay/mean-day", "152.0");
                    return true;
                });
        assertThat(assumed().meanDay()).isEqualTo(152);

        notebook.write(
                tx -> {
                    new Settings(tx).put("lay/female-sd", "-1");
                    return true;
                });
        assertThat(assumed()).isEqualTo(first);

        notebook.write(
                tx -> {
                    LayAssumed.put(new Settings(tx), first);
                    return true;
                });
        assertThat(assumed()).isEqualTo(first);
    }

    private LayPriors assumed() {
        return notebook.database().read(tx -> LayAssumed.read(new Settings(tx)));
    }

    private SequencedMap<AnimalId, LayOutlook.Expected> outlook() {
        return notebook.database().read(tx -> LayOutlook.of(tx, 2024));
    }

    private Pairing pair(Animal dam, Optional<LocalDate> together) {
        return notebook.write(
                tx -> {
                    var pairings = new Pairings(tx);
                    var planned =
                            pairings.plan(2024, dam.id(), male.id(), "", Questions.ALL_THE_SAME)
                                    .theSaved();
                    return together.map(
                                    day ->
                                            pairings.update(
                                                            planned.begun(day),
                                                            Questions.ALL_THE_SAME)
                                                    .theSaved())
                            .orElse(planned);
                });
    }

    private void done(Animal dam, int season) {
        notebook.write(
                tx -> {
                    var pairings = new Pairings(tx);
                    var planned =
                            pairings.plan(season, dam.id(), male.id(), "", Questions.ALL_THE_SAME)
                                    .theSaved();
                    var begun =
                            pairings.update(
                                            planned.begun(LocalDate.of(season, 1, 5)),
                                            Questions.ALL_THE_SAME)
                                    .theSaved();
                    return pairings.update(
                                    begun.done(LocalDate.of(season, 3, 5)), Questions.ALL_THE_SAME)
                            .theSaved();
                });
    }

    private void see(Pairing pairing, SignSeen.Kind kind, LocalDate day) {
        notebook.write(tx -> new Pairings(tx).see(pairing.id(), kind, day, "").theSaved());
    }

    private void lay(Animal dam, LocalDate day, int season) {
        notebook.write(
                tx ->
                        new Clutches(tx)
                                .lay(
                                        new Laying(
                                                Optional.empty(),
                                                season,
                                                Parentage.of(
                                                        new Dam.Known(dam.id()),
                                                        new Sire.Known(male.id())),
                                                Optional.empty(),
                                                day,
                                                Notebook.ROYAL,
                                                "",
                                                6,
                                                0),
                                        Questions.ALL_THE_SAME)
                                .theSaved());
    }
}
