package clutchwright.app.settings;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.Clutchwright;
import clutchwright.app.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// Import and export as another program calls them.
class ImportAndExportCommandTest {

    @TempDir Path folder;

    @Test
    void a_dry_run_counts_and_changes_nothing_then_the_import_does_it() throws IOException {
        var file = folder.resolve("animals.csv");
        Files.writeString(file, "tag,sex,sire,genes\nA,f,B,Pastel\nB,m,,het Clown\n");

        var dry = json("import", file.toString(), "--dry-run", "--json");
        var done = json("import", file.toString(), "--json");
        var again = json("import", file.toString(), "--json");

        assertThat(dry.status).isZero();
        assertThat(dry.document.path("added").asInt()).isEqualTo(2);
        assertThat(dry.document.path("applied").asBoolean()).isFalse();
        assertThat(done.document.path("applied").asBoolean()).isTrue();
        assertThat(again.status).isEqualTo(2);
        assertThat(again.document.path("stops").asInt()).isEqualTo(2);
        assertThat(again.document.path("problems").get(0).path("remedies").get(0).asString())
                .isEqualTo("skip-identical");
    }

    @Test
    void every_problem_names_row_column_and_what_was_expected() throws IOException {
        var file = folder.resolve("bad.csv");
        Files.writeString(file, "tag,sex,hatched\nA,purple,2021\nB,f,2040-01-01\n");

        var run = json("import", file.toString(), "--json");

        assertThat(run.status).isEqualTo(2);
        var first = run.document.path("problems").get(0);
        assertThat(first.path("row").asInt()).isEqualTo(2);
        assertThat(first.path("column").asString()).isEqualTo("sex");
        assertThat(first.path("kind").asString()).isEqualTo("UnknownSex");
        assertThat(first.path("text").asString()).contains("purple").contains("female");
        assertThat(run.document.path("problems").get(1).path("row").asInt()).isEqualTo(3);
    }

    @Test
    void an_export_is_imported_into_another_collection() throws IOException {
        var file = folder.resolve("animals.csv");
        Files.writeString(file, "tag,sex,sire,genes\nA,f,B,Pastel\nB,m,,het Clown\n");
        json("import", file.toString(), "--json");
        var zip = folder.resolve("all.zip");

        var out = json("export", zip.toString(), "--json");
        var in = run(folder.resolve("other"), "import", zip.toString(), "--json");

        assertThat(out.document.path("animals").asInt()).isEqualTo(2);
        assertThat(in.status).isZero();
        assertThat(in.document.path("added").asInt()).isEqualTo(2);
        assertThat(run(folder.resolve("other"), "export", zip.toString(), "--json").status)
                .as("what is there is not written over")
                .isEqualTo(2);
    }

    @Test
    void a_file_that_is_not_there_or_no_table_is_refused() throws IOException {
        var picture = Files.write(folder.resolve("p.png"), new byte[] {(byte) 0x89, 'P', 'N', 'G'});

        assertThat(json("import", folder.resolve("nowhere.csv").toString()).status).isEqualTo(2);
        var run = json("import", picture.toString(), "--json");
        assertThat(run.status).isEqualTo(2);
        assertThat(run.document.path("problems").get(0).path("text").asString())
                .contains("picture");
    }

    @Test
    void a_backup_brings_the_collection_back_and_no_other_file_does() throws IOException {
        var file = folder.resolve("animals.csv");
        Files.writeString(file, "tag,sex\nA,f\nB,m\n");
        json("import", file.toString(), "--json");
        var zip = folder.resolve("backup.zip");

        assertThat(json("backup", zip.toString(), "--json").status).isZero();
        assertThat(json("backup", zip.toString()).status)
                .as("no file is written over")
                .isEqualTo(2);
        var elsewhere = folder.resolve("elsewhere");
        assertThat(run(elsewhere, "restore", zip.toString(), "--json").status).isZero();
        var out = folder.resolve("out");
        var exported = run(elsewhere, "export", out.toString(), "--json");
        assertThat(exported.document.path("animals").asInt()).isEqualTo(2);
        assertThat(run(elsewhere, "restore", file.toString()).status).isEqualTo(2);
        assertThat(run(folder.resolve("nobody"), "backup", folder + "/no.zip").status).isEqualTo(2);
    }

    private record Run(int status, JsonNode document) {}

    private Run json(String... arguments) {
        return run(folder.resolve("data"), arguments);
    }

    private static Run run(Path data, String... arguments) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        var all = new java.util.ArrayList<>(List.of(arguments));
        all.add("--data");
        all.add(data.toString());
        int status =
                Clutchwright.run(
                        Terminal.to(new PrintStream(out), new PrintStream(err)),
                        all.toArray(String[]::new));
        var text = out.toString(StandardCharsets.UTF_8);
        return new Run(status, JsonMapper.shared().readTree(text.isBlank() ? "{}" : text));
    }
}
