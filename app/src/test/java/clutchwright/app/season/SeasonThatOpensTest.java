package clutchwright.app.season;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.Preferences;
import clutchwright.engine.genetics.Sex;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Particulars;
import clutchwright.records.animals.Tag;
import clutchwright.records.checks.Questions;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.store.Database;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Which season a keeper sees who opens the screen. Pairings are made from autumn to spring,
/// and a season bears the year in which its clutches hatch: common practice, no source.
class SeasonThatOpensTest {

    private static final LocalDate AUTUMN = LocalDate.of(2026, 11, 25);

    @TempDir Path folder;
    private Holding holding;

    @AfterEach
    void close() {
        holding.close();
    }

    @Test
    void in_spring_it_is_the_season_of_this_year() {
        on(LocalDate.of(2026, 4, 1));
        assertThat(opened()).isEqualTo(2026);
    }

    @Test
    void in_autumn_it_is_the_season_of_the_next() {
        on(AUTUMN);
        assertThat(opened()).isEqualTo(2027);
    }

    @Test
    void while_the_next_is_empty_it_is_the_one_in_which_a_pair_is_still_together() {
        on(AUTUMN);
        pair(2026, true);
        assertThat(opened()).isEqualTo(2026);
    }

    @Test
    void a_season_whose_pairs_were_never_put_together_does_not_hold_it_back() {
        on(AUTUMN);
        pair(2026, false);
        assertThat(opened()).isEqualTo(2027);
    }

    @Test
    void once_the_next_has_a_pair_it_is_that() {
        on(AUTUMN);
        pair(2026, true);
        pair(2027, false);
        assertThat(opened()).isEqualTo(2027);
    }

    private int opened() {
        return new SeasonList(holding, new Formats(Preferences.FIRST)).current();
    }

    private void on(LocalDate day) {
        var noon = day.atTime(12, 0).toInstant(ZoneOffset.UTC);
        holding = new Holding(Database.open(folder, Clock.fixed(noon, ZoneOffset.UTC)));
    }

    private void pair(int season, boolean together) {
        holding.database()
                .write(
                        holding.author(),
                        "A pairing",
                        tx -> {
                            var animals = new Animals(tx);
                            var dam = animals.add(animal("D" + season, Sex.FEMALE)).theSaved();
                            var sire = animals.add(animal("S" + season, Sex.MALE)).theSaved();
                            var pairings = new Pairings(tx);
                            var planned =
                                    pairings.plan(season, dam.id(), sire.id(), "", Questions.ASK)
                                            .theSaved();
                            return together
                                    ? pairings.update(planned.begun(AUTUMN), Questions.ASK)
                                            .theSaved()
                                    : planned;
                        });
    }

    private static Particulars animal(String tag, Sex sex) {
        return Particulars.of(new Tag(tag), Holding.MAIN_SPECIES).withSex(sex);
    }
}
