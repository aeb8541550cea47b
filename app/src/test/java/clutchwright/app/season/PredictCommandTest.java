package clutchwright.app.season;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.Clutchwright;
import clutchwright.app.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// `predict`, as another program calls it. Chances are Mendel's, written as the algebra.
class PredictCommandTest {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void
            two_hets_of_a_recessive_give_one_visual_in_four_and_plain_ones_that_carry_it_in_two_of_three() {
        var document = predicted("--dam", "het Clown", "--sire", "het Clown");

        assertThat(document.at("/outcomeCount").asInt()).isEqualTo(2);
        assertThat(document.at("/listed").asInt()).isEqualTo(2);
        assertThat(document.at("/dying/fraction").asString()).isEqualTo("0/1");
        assertThat(document.at("/cautions").isArray()).isTrue();

        var plain = document.at("/outcomes/0");
        assertThat(plain.at("/name").asString()).isEqualTo("Normal");
        assertThat(plain.at("/visible")).isEmpty();
        assertThat(plain.at("/chance/fraction").asString()).isEqualTo("3/4");
        assertThat(plain.at("/chance/value").asDouble()).isEqualTo(0.75);
        assertThat(plain.at("/carries/0/allele").asString()).isEqualTo("Clown");
        assertThat(plain.at("/carries/0/chance/fraction").asString()).isEqualTo("2/3");

        var visual = document.at("/outcomes/1");
        assertThat(visual.at("/name").asString()).isEqualTo("Clown");
        assertThat(visual.at("/chance/fraction").asString()).isEqualTo("1/4");
        assertThat(visual.at("/carries")).isEmpty();
    }

    @Test
    void at_least_one_is_for_six_eggs_unless_another_number_is_said() {
        var six = predicted("--dam", "het Clown", "--sire", "Clown");
        assertThat(six.at("/outcomes/0/atLeastOne").asDouble()).isEqualTo(1 - Math.pow(0.5, 6));

        out.reset();
        var two = predicted("--dam", "het Clown", "--sire", "Clown", "--eggs", "2");
        assertThat(two.at("/outcomes/0/atLeastOne").asDouble()).isEqualTo(1 - 0.5 * 0.5);
    }

    @Test
    void what_shows_is_sorted_by_code_point_though_the_name_is_not() {
        var document = predicted("--dam", "Pastel Clown", "--sire", "Pastel Clown");

        assertThat(document.at("/outcomes/0/name").asString()).isEqualTo("Pastel Clown");
        assertThat(document.at("/outcomes/0/visible/0").asString()).isEqualTo("Clown");
        assertThat(document.at("/outcomes/0/visible/1").asString()).isEqualTo("Pastel");
    }

    /// Table B10 of the crosses with r = 1/20: of a male maker's visible young 19 in 20 are males.
    @Test
    void a_male_maker_gives_visible_sons_and_plain_daughters() {
        assertThat(run("predict", "--dam", "Normal", "--sire", "Banana (male maker)")).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("Males")
                .containsPattern("Banana +1/2 .* 19/20")
                .containsPattern("Normal +1/2 .* 1/20");
    }

    @Test
    void a_limit_shortens_the_list_and_leaves_the_count() {
        var document = predicted("--dam", "Pastel", "--sire", "Pastel", "--limit", "1");

        assertThat(document.at("/outcomes")).hasSize(1);
        assertThat(document.at("/listed").asInt()).isEqualTo(1);
        assertThat(document.at("/outcomeCount").asInt()).isEqualTo(3);
        assertThat(document.at("/outcomes/0/chance/fraction").asString()).isEqualTo("1/2");
    }

    @Test
    void an_unknown_gene_is_pointed_at_in_either_line_and_nothing_is_printed() {
        assertThat(run("predict", "--json", "--dam", "Pastel Xyzzyq", "--sire", "Qqqzzz"))
                .isEqualTo(2);

        assertThat(out()).isEmpty();
        assertThat(err())
                .contains("--dam, character 8: “Xyzzyq” is not a gene of this catalogue.")
                .contains("  Pastel Xyzzyq\n         ^^^^^^\n")
                .contains("--sire, character 1: “Qqqzzz”");
    }

    @Test
    void a_male_is_no_dam() {
        assertThat(run("predict", "--dam", "1.0 Pastel", "--sire", "Clown")).isEqualTo(2);
        assertThat(err()).contains("--dam, character 1: The line speaks of a male");
    }

    @Test
    void numbers_out_of_bounds_and_unknown_species_are_refused_by_their_option() {
        assertThat(run("predict", "--dam", "Clown", "--sire", "Clown", "--eggs", "0")).isEqualTo(2);
        assertThat(run("predict", "--dam", "Clown", "--sire", "Clown", "--limit", "0"))
                .isEqualTo(2);
        assertThat(run("predict", "--dam", "Clown", "--sire", "Clown", "--species", "unicorn"))
                .isEqualTo(2);
        assertThat(run("predict", "--dam", "Clown")).isEqualTo(2);
        assertThat(err())
                .contains("--eggs: write a number from 1")
                .contains("--limit: write a number of at least 1")
                .contains("--species: no catalogue of “unicorn”; there are python-regius")
                .contains("--sire");
        assertThat(out()).isEmpty();
    }

    @Test
    void the_table_for_people_has_cautions_above_its_figures() {
        assertThat(run("predict", "--dam", "Spider", "--sire", "Normal")).isZero();
        assertThat(out()).contains("Care: ", "veterinarian", "What hatches", "1/2");
        assertThat(out().indexOf("Care: ")).isLessThan(out().indexOf("What hatches"));
    }

    private JsonNode predicted(String... arguments) {
        var all = new String[arguments.length + 2];
        all[0] = "predict";
        all[1] = "--json";
        System.arraycopy(arguments, 0, all, 2, arguments.length);
        assertThat(run(all)).as(err()).isZero();
        return JsonMapper.shared().readTree(out());
    }

    private int run(String... arguments) {
        return Clutchwright.run(
                Terminal.to(new PrintStream(out, true), new PrintStream(err, true)), arguments);
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }
}
