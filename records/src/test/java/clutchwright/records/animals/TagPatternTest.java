package clutchwright.records.animals;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.records.Notebook;
import clutchwright.records.animals.TagPattern.Occasion;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TagPatternTest {

    @TempDir Path folder;

    @Test
    void a_tag_has_the_year_the_clutch_and_a_count() {
        assertThat(tag("{yy}-{clutch}{n}", 2024, 7, 3)).isEqualTo("24-073");
        assertThat(tag("{yyyy}/{clutch}{letter}", 2009, 12, 2)).isEqualTo("2009/12B");
        assertThat(tag("R{nnnn}", 2024, 0, 58)).isEqualTo("R0058");
        assertThat(tag("R{nn}", 2024, 0, 158)).isEqualTo("R158");
    }

    @Test
    void after_z_comes_aa() {
        assertThat(tag("{letter}", 2024, 1, 26)).isEqualTo("Z");
        assertThat(tag("{letter}", 2024, 1, 27)).isEqualTo("AA");
        assertThat(tag("{letter}", 2024, 1, 52)).isEqualTo("AZ");
        assertThat(tag("{letter}", 2024, 1, 53)).isEqualTo("BA");
        assertThat(tag("{letter}", 2024, 1, 702)).isEqualTo("ZZ");
        assertThat(tag("{letter}", 2024, 1, 703)).isEqualTo("AAA");
    }

    @Test
    void the_next_tag_is_the_first_that_no_animal_has() {
        try (var notebook = new Notebook(folder)) {
            notebook.female("24-07a");
            notebook.female("24-07C");
            notebook.female("24-08B");
            var pattern = pattern("{yy}-{clutch}{letter}");

            Tag next = notebook.read(tx -> new Animals(tx).nextTag(pattern, new Occasion(2024, 7)));
            assertThat(next.value()).isEqualTo("24-07B");

            notebook.female("24-07b");
            Tag after =
                    notebook.read(tx -> new Animals(tx).nextTag(pattern, new Occasion(2024, 7)));
            assertThat(after.value()).isEqualTo("24-07D");
        }
    }

    @Test
    void signs_that_search_patterns_use_stand_for_themselves() {
        try (var notebook = new Notebook(folder)) {
            notebook.female("100%_1");
            var pattern = pattern("100%_{n}");

            Tag next = notebook.read(tx -> new Animals(tx).nextTag(pattern, new Occasion(2024, 0)));
            assertThat(next.value()).isEqualTo("100%_2");
        }
    }

    @Test
    void every_fault_of_a_pattern_is_told() {
        assertThat(faults("{yy}-{clutch}"))
                .containsExactly(
                        new Problem.Unreadable(Field.TAG, "{yy}-{clutch}", "{n} {letter}"));
        assertThat(faults("{yy}{colour}{nummer}{n}"))
                .extracting(problem -> ((Problem.Unreadable) problem).found())
                .containsExactly("{colour}", "{nummer}");
        assertThat(faults("{yy-{n}"))
                .extracting(problem -> ((Problem.Unreadable) problem).found())
                .containsExactly("{yy-");
        assertThat(faults("")).isNotEmpty();
    }

    private static String tag(String pattern, int year, int clutch, int running) {
        return pattern(pattern).tag(new Occasion(year, clutch), running).value();
    }

    private static TagPattern pattern(String text) {
        return ((TagPattern.Result.Sound) TagPattern.read(text)).pattern();
    }

    private static List<Problem> faults(String text) {
        return ((TagPattern.Result.Faulty) TagPattern.read(text)).problems();
    }
}
