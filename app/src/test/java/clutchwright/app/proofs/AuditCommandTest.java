package clutchwright.app.proofs;

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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/// `audit`, as another program calls it.
class AuditCommandTest {

    private static final String SOUND =
            """
            tag,sex,dam,sire,stated,shows
            Ada,female,,,het Clown,
            Bo,male,,,Clown,
            Cy,,Ada,Bo,,Clown
            Di,,Ada,Bo,,Normal
            """;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir Path folder;

    @Test
    void records_that_can_all_be_true_end_with_status_0() throws IOException {
        assertThat(run("audit", file(SOUND), "--json")).as(err()).isZero();
        assertThat(JsonMapper.shared().readTree(out()).get("findings").size()).isZero();
    }

    @Test
    void a_record_that_cannot_be_ends_with_status_1_and_its_repairs_add_up() throws IOException {
        var file =
                file(
                        """
                        tag,sex,dam,sire,stated,shows
                        Ada,female,,,Desert Ghost,
                        Bo,male,,,Desert Ghost,
                        Max,male,,,,Normal
                        H1,,Ada,Bo,,Normal
                        """);

        assertThat(run("audit", file, "--json")).as(err()).isEqualTo(1);
        var finding = JsonMapper.shared().readTree(out()).at("/findings/0");
        assertThat(finding.get("locus").asString()).isEqualTo("desert-ghost");
        assertThat(finding.get("statements").findValuesAsString("kind"))
                .contains("Saw", "DamOf", "SireOf");
        var sum = 0.0;
        for (var repair : finding.get("repairs")) {
            sum += repair.get("chance").asDouble();
        }
        assertThat(sum).isEqualTo(1, within(0.02));
    }

    @Test
    void for_a_person_each_finding_has_its_statements_and_what_may_have_happened()
            throws IOException {
        var file =
                file(
                        """
                        tag,sex,dam,sire,stated,shows
                        Ada,female,,,het Desert Ghost,
                        Bo,male,,,Desert Ghost,
                        H1,,Ada,Bo,,Normal
                        H2,,Ada,Bo,,Normal
                        H3,,Ada,Bo,,Normal
                        H4,,Ada,Bo,,Normal
                        H5,,Ada,Bo,,Normal
                        H6,,Ada,Bo,,Normal
                        H7,,Ada,Bo,,Normal
                        H8,,Ada,Bo,,Normal
                        H9,,Ada,Bo,,Normal
                        H10,,Ada,Bo,,Normal
                        H11,,Ada,Bo,,Normal
                        H12,,Ada,Bo,,Normal
                        H13,,Ada,Bo,,Normal
                        H14,,Ada,Bo,,Normal
                        """);

        assertThat(run("audit", file)).as(err()).isEqualTo(1);
        assertThat(out())
                .contains("desert-ghost: together these are very unlikely")
                .contains("What is stated of Ada is wrong")
                .contains("Ask whoever stated it");
    }

    @Test
    void an_empty_collection_is_clean() throws IOException {
        assertThat(run("audit", file("tag,sex\n"))).as(err()).isZero();
        assertThat(out()).contains("Nothing was found");
    }

    @Test
    void the_collection_of_a_folder_is_audited_where_no_files_are_named() throws IOException {
        var data = folder.resolve("data").toString();
        assertThat(run("import", file(SOUND), "--data", data)).as(err()).isZero();

        assertThat(run("audit", "--data", data)).as(err()).isZero();
    }

    @Test
    void what_makes_no_sense_is_refused() throws IOException {
        var file = file("tag,dam\nAda,Cy\nCy,Ada\n");

        assertThat(run("audit", file)).isEqualTo(2);
        assertThat(run("audit", file, "--misread", "2")).isEqualTo(2);
        assertThat(run("audit", file, "--data", folder.toString())).isEqualTo(2);
        assertThat(run("audit", folder.resolve("nowhere").toString())).isEqualTo(2);
        assertThat(err())
                .contains("its own ancestor")
                .contains("--misread: write a number from 0 to 1, not 2.0")
                .contains("Name a package or --data, not both.")
                .contains("There is no file or folder");
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
