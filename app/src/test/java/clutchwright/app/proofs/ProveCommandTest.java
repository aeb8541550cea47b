package clutchwright.app.proofs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.app.Clutchwright;
import clutchwright.app.cli.Terminal;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.LocusId;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// Proving out as another program asks for it, and as a person does.
class ProveCommandTest {

    private static final String FAMILY =
            """
            tag,sex,hatched,dam,sire,stated,shows,status
            Ada,female,2019,,,66% het Clown,Normal,kept
            Bo,male,2018,,,,Clown,kept
            Het,male,2018,,,het Clown,Normal,
            Gone,male,2018,,,,Clown,sold
            Eve,female,2018,,,,Clown,kept
            H1,,2024-08-01,Ada,Bo,,Normal,kept
            H2,,2024-08-01,Ada,Bo,,Normal,sold
            H3,,2024-08-02,Ada,Bo,,Normal,sold
            """;

    @TempDir Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void a_possible_het_with_three_plain_young_by_a_visual_is_het_at_one_in_five()
            throws IOException {
        var proved = json(FAMILY, "--animal", "ada", "--allele", "clown", "--misread", "0");

        assertThat(proved.path("animal").asString()).isEqualTo("Ada");
        assertThat(proved.path("allele").asString()).isEqualTo("Clown");
        assertThat(proved.path("locus").asString()).isEqualTo("clown");
        // 2/3 (1/2)^3 to 1/3
        assertThat(proved.path("chance").asDouble()).isEqualTo(1.0 / 5, within(1e-12));
        assertThat(proved.path("method").asString()).isEqualTo("exact");
        var clutch = proved.path("evidence").get(0);
        assertThat(clutch.path("clutch").asString()).isEqualTo("Ada x Bo, 2024-08-01/2024-08-02");
        assertThat(clutch.path("bayesFactor").asDouble()).isEqualTo(1.0 / 8, within(1e-12));
        assertThat(clutch.path("looks").path("Normal").asInt()).isEqualTo(3);
        assertThat(clutch.path("chanceWithout").asDouble()).isEqualTo(2.0 / 3, within(1e-12));
        var best = proved.path("bestMate");
        assertThat(best.path("tag").asString()).isEqualTo("Bo");
        // 1/4 (1/2)^n to 1: at most 1/19 at 3, 1/99 at 5, 1/999 at 8
        assertThat(best.path("needed").path("0.05").asInt()).isEqualTo(3);
        assertThat(best.path("needed").path("0.01").asInt()).isEqualTo(5);
        assertThat(best.path("needed").path("0.001").asInt()).isEqualTo(8);
        assertThat(best.path("neededToDetect").path("0.999").asInt()).isEqualTo(10);
        assertThat(best.path("detection").asDouble()).isEqualTo(63.0 / 64, within(1e-12));
        assertThat(best.path("atLeastOne").asDouble()).isEqualTo(63.0 / 64 / 5, within(1e-12));
        assertThat(names(proved.path("mates"), "tag")).containsExactly("Bo", "Het");
        assertThat(proved.path("why").isNull()).isTrue();
    }

    @Test
    void a_misread_rate_leaves_no_certainty() throws IOException {
        var proved = json(FAMILY, "--animal", "Ada", "--allele", "Clown", "--acquired", "1");

        // Bo was bought as the Clown he looks like. Half of a carrier's young are plain, and a
        // misread one may be any of the other forms of the locus.
        var others =
                Catalogue.shipped("python-regius")
                                .model()
                                .theLocus(new LocusId("clown"))
                                .phenotypes()
                                .size()
                        - 1;
        var plain = 0.995 / 2 + 0.005 / others / 2;
        var carries = 2.0 / 3 * Math.pow(plain, 3);
        var not = 1.0 / 3 * Math.pow(0.995, 3);
        assertThat(proved.path("chance").asDouble())
                .isEqualTo(carries / (carries + not), within(1e-12));
        assertThat(proved.path("bestMate").path("limit").asDouble()).isZero();
    }

    @Test
    void taken_at_its_word_a_visual_without_parents_may_be_misread_and_says_less()
            throws IOException {
        var word = json(FAMILY, "--animal", "Ada", "--allele", "Clown");
        var bought = json(FAMILY, "--animal", "Ada", "--allele", "Clown", "--acquired", "0.5");

        assertThat(word.path("chance").asDouble()).isGreaterThan(bought.path("chance").asDouble());
    }

    @Test
    void a_mate_that_may_not_carry_it_never_settles_it() throws IOException {
        var proved =
                json(
                        """
                        tag,sex,stated,shows,status
                        Ada,female,50% het Clown,Normal,kept
                        Bo,male,50% het Clown,Normal,hold back
                        """,
                        "--animal", "Ada", "--allele", "Clown", "--misread", "0");

        var best = proved.path("bestMate");
        assertThat(best.path("tag").asString()).isEqualTo("Bo");
        assertThat(best.path("needed").path("0.05").isNull()).isTrue();
        assertThat(best.path("limit").asDouble()).isEqualTo(1.0 / 3, within(1e-12));
    }

    @Test
    void one_visual_hatchling_settles_it_where_no_look_is_misread() throws IOException {
        var proved =
                json(
                        FAMILY + "H4,,2024-08-02,Ada,Bo,,Clown,kept\n",
                        "--animal",
                        "Ada",
                        "--allele",
                        "Clown",
                        "--misread",
                        "0");

        assertThat(proved.path("chance").asDouble()).isEqualTo(1);
        assertThat(proved.path("evidence").get(0).path("settles").asBoolean()).isTrue();
        assertThat(proved.path("evidence").get(0).path("bayesFactor").isNull()).isTrue();
        assertThat(proved.path("bestMate").isNull()).isTrue();
        assertThat(proved.path("why").asString()).isEqualTo("CERTAIN");
    }

    @Test
    void without_a_mate_there_is_none_and_why_is_said() throws IOException {
        var alone = "tag,sex,stated\nAda,female,66% het Clown\nUma,,66% het Clown\n";

        var nobody = json(alone, "--animal", "Ada", "--allele", "Clown");
        var unsexed = json(alone, "--animal", "Uma", "--allele", "Clown");
        var shown = json(alone, "--animal", "Ada", "--allele", "Pastel");

        assertThat(nobody.path("bestMate").isNull()).isTrue();
        assertThat(nobody.path("why").asString()).isEqualTo("NOBODY");
        assertThat(unsexed.path("why").asString()).isEqualTo("NO_SEX");
        assertThat(shown.path("why").asString()).isEqualTo("AT_SIGHT");
        assertThat(shown.path("atSight").asBoolean()).isTrue();
    }

    @Test
    void a_person_reads_a_table() throws IOException {
        var status = run(FAMILY, "--animal", "Ada", "--allele", "Clown", "--misread", "0");

        assertThat(status).isZero();
        assertThat(text(out))
                .contains("Ada carries Clown at a chance of 20 %.")
                .contains("Ada x Bo, 2024-08-01/2024-08-02", "3 Normal", "1/8")
                .contains("Bo", "To 5 %", "Before you pair them");
    }

    @Test
    void bad_input_is_refused_with_what_was_expected() throws IOException {
        assertThat(run(FAMILY, "--animal", "Adda", "--allele", "Clown")).isEqualTo(2);
        assertThat(text(err)).contains("no animal has the tag “Adda”", "Ada");
        assertThat(run(FAMILY, "--animal", "Ada", "--allele", "Clwon")).isEqualTo(2);
        assertThat(text(err)).contains("no gene is called “Clwon”", "Clown");
        assertThat(run(FAMILY, "--animal", "Ada", "--allele", "Super Pastel")).isEqualTo(2);
        assertThat(text(err)).contains("is not one gene");
        assertThat(run(FAMILY, "--animal", "Ada", "--allele", "Clown", "--misread", "1.5"))
                .isEqualTo(2);
        assertThat(text(err)).contains("--misread: write a number from 0 to 1");
        assertThat(run(FAMILY, "--animal", "Ada", "--allele", "Clown", "--background", "NaN"))
                .isEqualTo(2);
        assertThat(run(FAMILY, "--animal", "Ada", "--allele", "Clown", "--eggs", "0")).isEqualTo(2);
        assertThat(run(FAMILY, "--animal", "Ada")).isEqualTo(2);
        assertThat(text(out)).isEmpty();
    }

    @Test
    void records_that_cannot_be_true_are_no_chance() throws IOException {
        var status =
                run(
                        """
                        tag,sex,dam,sire,stated,shows
                        Ada,female,,,,Clown
                        Bo,male,,,,Clown
                        Kim,female,Ada,Bo,,Normal
                        """,
                        "--animal",
                        "Kim",
                        "--allele",
                        "Clown",
                        "--misread",
                        "0");

        assertThat(status).isEqualTo(2);
        assertThat(text(err)).contains("What is recorded of clown cannot all be true");
    }

    private JsonNode json(String animals, String... arguments) throws IOException {
        var more = new ArrayList<>(List.of(arguments));
        more.add("--json");
        out.reset();
        assertThat(run(animals, more.toArray(String[]::new))).as(text(err)).isZero();
        return JsonMapper.shared().readTree(text(out));
    }

    private int run(String animals, String... arguments) throws IOException {
        var file = folder.resolve("animals.csv");
        Files.writeString(file, animals);
        var all = new ArrayList<>(List.of("prove", file.toString()));
        all.addAll(List.of(arguments));
        return Clutchwright.run(
                Terminal.to(new PrintStream(out, true), new PrintStream(err, true)),
                all.toArray(String[]::new));
    }

    private static List<String> names(JsonNode rows, String field) {
        var names = new ArrayList<String>();
        rows.forEach(row -> names.add(row.path(field).asString()));
        return names;
    }

    private static String text(ByteArrayOutputStream stream) {
        return stream.toString(StandardCharsets.UTF_8);
    }
}
