package clutchwright.app.collection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.app.Clutchwright;
import clutchwright.app.cli.Terminal;
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

/// `infer`, as another program calls it. Chances are written as the algebra.
class InferCommandTest {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir Path folder;

    @Test
    void a_plain_hatchling_of_two_hets_carries_at_two_in_three() throws IOException {
        var document =
                inferred(
                        """
                        tag,sex,dam,sire,stated,shows
                        Ada,female,,,het Clown,
                        Bo,male,,,het Clown,
                        Cy,,Ada,Bo,,Normal
                        """,
                        "--misread",
                        "0");

        assertThat(document.at("/method").asString()).isEqualTo("exact");
        assertThat(document.at("/animals").size()).isEqualTo(3);
        assertThat(document.at("/animals/2/tag").asString()).isEqualTo("Cy");
        assertThat(document.at("/animals/2/loci/0/locus").asString()).isEqualTo("clown");
        var pairs = document.at("/animals/2/loci/0/genotypes");
        assertThat(pairs.size()).isEqualTo(2);
        assertThat(chance(pairs, "+", "+")).isEqualTo(1.0 / 3, within(1e-12));
        assertThat(chance(pairs, "+", "Clown")).isEqualTo(2.0 / 3, within(1e-12));
        // One plain one of two hets: three in four.
        assertThat(document.at("/logLikelihood/0/locus").asString()).isEqualTo("clown");
        assertThat(document.at("/logLikelihood/0/value").asDouble())
                .isEqualTo(Math.log(3.0 / 4), within(1e-12));
        assertThat(document.at("/contradictions").size()).isZero();
    }

    @Test
    void a_possible_het_at_sixty_six_percent_is_two_in_three() throws IOException {
        var document = inferred("tag,stated\nAda,66% het Clown\n");

        assertThat(chance(document.at("/animals/0/loci/0/genotypes"), "+", "Clown"))
                .isEqualTo(2.0 / 3, within(1e-12));
    }

    @Test
    void a_stated_look_of_a_founder_is_a_sighting_over_the_background() throws IOException {
        var document =
                inferred(
                        "tag,stated\nAda,Desert Ghost\n",
                        "--background",
                        "0.1",
                        "--misread",
                        "0.02");

        var pairs = document.at("/animals/0/loci/0/genotypes");
        var visual = 0.1 * 0.1 * 0.98;
        var others = (1 - 0.1 * 0.1) * 0.02;
        assertThat(chance(pairs, "Desert Ghost", "Desert Ghost"))
                .isEqualTo(visual / (visual + others), within(1e-12));
    }

    @Test
    void which_sex_chromosome_carries_it_is_said_beside_the_pair() throws IOException {
        var document = inferred("tag,sex,stated\nMax,male,Banana\n", "--misread", "0");

        var pair = document.at("/animals/0/loci/0/genotypes");
        assertThat(document.at("/animals/0/loci/0/locus").asString()).isEqualTo("banana");
        assertThat(pair.findValuesAsString("shared")).containsExactlyInAnyOrder("+", "Banana");
    }

    @Test
    void one_locus_is_named_and_the_others_are_left_out() throws IOException {
        var document = inferred("tag,stated\nAda,Pastel het Clown\n", "--locus", "clown");

        assertThat(document.at("/animals/0/loci").size()).isEqualTo(1);
        assertThat(document.at("/animals/0/loci/0/locus").asString()).isEqualTo("clown");
    }

    @Test
    void an_empty_collection_has_an_empty_answer() throws IOException {
        var document = inferred("tag,sex,stated\n");

        assertThat(document.at("/animals").size()).isZero();
        assertThat(document.at("/method").asString()).isEqualTo("exact");
    }

    @Test
    void figures_that_make_no_sense_are_refused() throws IOException {
        var file = file("tag,stated\nAda,BEL\n");

        assertThat(run("infer", file, "--misread", "1.5")).isEqualTo(2);
        assertThat(run("infer", file, "--background", "-0.1")).isEqualTo(2);
        assertThat(run("infer", file, "--background", "NaN")).isEqualTo(2);
        assertThat(run("infer", file, "--background", "0.5")).isEqualTo(2);
        assertThat(run("infer", file, "--locus", "unicorn")).isEqualTo(2);
        assertThat(run("infer", file, "--species", "unicorn")).isEqualTo(2);
        assertThat(run("infer", file, "--why", "Nobody")).isEqualTo(2);
        assertThat(run("infer", file + ".nowhere")).isEqualTo(2);
        assertThat(run("infer")).isEqualTo(2);
        assertThat(err())
                .contains("--misread: write a number from 0 to 1, not 1.5")
                .contains("--background: write a number from 0 to 1, not -0.1")
                .contains("not NaN")
                .contains("is more than 1 together; write")
                .contains("--locus: there is no locus “unicorn”")
                .contains("--species: no catalogue of “unicorn”")
                .contains("--why: there is no animal “Nobody”")
                .contains("There is no file or folder")
                .contains("PACKAGE");
        assertThat(out()).isEmpty();
    }

    @Test
    void records_of_descent_that_cannot_be_are_refused_with_their_place() throws IOException {
        assertThat(run("infer", file("tag,dam\nAda,Cy\nCy,Ada\n"), "--json")).isEqualTo(2);
        assertThat(run("infer", file("tag,dam\nAda,Nobody\n"), "--json")).isEqualTo(2);
        assertThat(run("infer", file("tag,sex,dam\nAda,male,\nCy,,Ada\n"), "--json")).isEqualTo(2);
        assertThat(run("infer", file("tag,stated\nAda,het Unicornish\n"), "--json")).isEqualTo(2);
        assertThat(err())
                .contains("would be its own ancestor")
                .contains("row 2, column “dam”: The dam “Nobody”")
                .contains("he cannot be the dam")
                .contains("Unicornish");
        assertThat(out()).isEmpty();
    }

    @Test
    void the_table_for_people_lists_what_is_not_surely_wild() throws IOException {
        assertThat(
                        run(
                                "infer",
                                file(
                                        """
                                        tag,dam,sire,stated,shows
                                        Ada,,,het Clown,
                                        Bo,,,het Clown,
                                        Cy,Ada,Bo,,Normal
                                        """),
                                "--misread",
                                "0"))
                .as(err())
                .isZero();
        assertThat(out()).contains("Animal", "Cy", "+/Clown", "66.7 %", "All chances are exact");
    }

    @Test
    void why_names_the_young_of_a_visual_mate_and_how_likely_they_were() throws IOException {
        var document =
                inferred(
                        """
                        tag,sex,dam,sire,stated,shows
                        Ada,female,,,66% het Desert Ghost,
                        Bo,male,,,Desert Ghost,
                        H1,,Ada,Bo,,Normal
                        H2,,Ada,Bo,,Normal
                        H3,,Ada,Bo,,Normal
                        H4,,Ada,Bo,,Normal
                        H5,,Ada,Bo,,Normal
                        H6,,Ada,Bo,,Normal
                        """,
                        "--misread", "0", "--why", "Ada:Desert Ghost");

        var why = document.at("/animals/0/loci/0/why/0");
        assertThat(why.get("allele").asString()).isEqualTo("Desert Ghost");
        assertThat(why.get("chance").asDouble()).isEqualTo(1.0 / 33, within(1e-12));
        assertThat(why.get("multiply").asBoolean()).isTrue();
        assertThat(why.get("reasons").findValuesAsString("text"))
                .anyMatch(
                        text ->
                                text.startsWith(
                                        "6 hatchlings with Bo: 6 Normal; likely at 1 in 64"
                                                + " if she carries it, at 100 % if she does not"));
        assertThat(document.at("/animals/1/loci/0/why").size()).isZero();
    }

    @Test
    void a_record_that_cannot_be_is_named_with_its_locus() throws IOException {
        var document =
                inferred(
                        """
                        tag,dam,sire,stated,shows
                        Ada,,,Desert Ghost,
                        Bo,,,Desert Ghost,
                        H7,Ada,Bo,,Normal
                        """);

        assertThat(document.at("/contradictions/0/locus").asString()).isEqualTo("desert-ghost");
        assertThat(document.at("/contradictions/0/text").asString())
                .contains("These cannot all be true", "H7 was seen to be Normal", "Likeliest");
    }

    @Test
    void where_nothing_can_be_misread_a_contradicted_locus_has_no_chances() throws IOException {
        var document =
                inferred(
                        """
                        tag,dam,sire,stated,shows
                        Ada,,,het Desert Ghost,
                        Bo,,,,Normal
                        H7,Ada,Bo,,Desert Ghost
                        """,
                        "--misread",
                        "0",
                        "--background",
                        "0");

        assertThat(document.at("/animals/0/loci").size()).isZero();
        assertThat(document.at("/logLikelihood").size()).isZero();
        assertThat(document.at("/contradictions/0/animal").asString()).isEqualTo("H7");
        assertThat(document.at("/contradictions/0/impossible").asBoolean()).isTrue();
    }

    @Test
    void sires_in_doubt_come_with_their_chances() throws IOException {
        var document =
                inferred(
                        """
                        tag,sex,dam,sire,stated,shows
                        Ada,female,,,het Clown,
                        Bo,male,,,Clown,
                        Max,male,,,Normal,
                        H1,,Ada,Bo|Max,,Clown
                        """);

        assertThat(document.at("/sires/0/young/0").asString()).isEqualTo("H1");
        assertThat(document.at("/sires/0/candidates").findValuesAsString("tag"))
                .containsExactly("Bo", "Max");
        assertThat(document.at("/sires/0/candidates/0/chance").asDouble()).isGreaterThan(0.5);
    }

    private static double chance(JsonNode pairs, String... alleles) {
        for (var pair : pairs) {
            var found = new ArrayList<String>();
            pair.get("alleles").forEach(allele -> found.add(allele.asString()));
            if (found.equals(List.of(alleles))) {
                return pair.get("chance").asDouble();
            }
        }
        return 0;
    }

    private JsonNode inferred(String table, String... options) throws IOException {
        var all = new ArrayList<>(List.of("infer", file(table), "--json"));
        all.addAll(List.of(options));
        assertThat(run(all.toArray(String[]::new))).as(err()).isZero();
        return JsonMapper.shared().readTree(out());
    }

    private String file(String table) throws IOException {
        var file = folder.resolve("animals.csv");
        Files.writeString(file, table);
        return file.toString();
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
