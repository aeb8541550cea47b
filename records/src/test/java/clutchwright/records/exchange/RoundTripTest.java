package clutchwright.records.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.records.store.Author;
import clutchwright.records.store.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Reading a package into empty records gives the collection it was written from.
class RoundTripTest {

    private static final Clock CLOCK =
            Clock.fixed(Instant.parse("2026-06-01T12:00:00Z"), ZoneOffset.UTC);
    private static final Author KEEPER = new Author("keeper");

    @TempDir Path folder;

    @Test
    void any_collection_comes_back_as_it_was_from_a_folder_and_from_a_packed_file()
            throws IOException {
        long seed = 20_260_601L;
        System.out.println("RoundTripTest seed " + seed);
        for (int round = 0; round < 12; round++) {
            var here = folder.resolve("round" + round);
            try (var first = Database.open(here.resolve("first"), CLOCK);
                    var second = Database.open(here.resolve("second"), CLOCK)) {
                first.write(KEEPER, "filled", RandomCollection.seeded(seed + round)::fill);
                var target = here.resolve(round % 2 == 0 ? "package" : "package.zip");
                first.read(tx -> OpenPackage.write(tx, target));

                var result = read(second, target);

                assertThat(result.outcome())
                        .as("round %d: %s", round, result.problems())
                        .isInstanceOf(ImportOutcome.Applied.class);
                var before = first.read(Dump::of);
                var after = second.read(Dump::of);
                assertThat(before).hasSizeGreaterThan(200);
                assertThat(without(before, after)).as("lost in round %d", round).isEmpty();
                assertThat(without(after, before)).as("came in round %d", round).isEmpty();
            }
        }
    }

    @Test
    void reading_the_same_package_again_changes_nothing() throws IOException {
        try (var database = Database.open(folder.resolve("store"), CLOCK)) {
            database.write(KEEPER, "filled", RandomCollection.seeded(77)::fill);
            database.read(tx -> OpenPackage.write(tx, folder.resolve("package")));
            var before = database.read(Dump::of);

            var refused = read(database, folder.resolve("package"));
            var skipping =
                    OpenPackage.read(
                            database,
                            KEEPER,
                            "again",
                            folder.resolve("package"),
                            Choices.usual("python-regius")
                                    .withOnRecord(Choices.OnRecordAlready.SKIP_IDENTICAL),
                            Situations.LINES,
                            true,
                            Progress.unheard());

            assertThat(refused.outcome()).isInstanceOf(ImportOutcome.Refused.class);
            assertThat(skipping.outcome())
                    .as("%s", skipping.problems())
                    .isInstanceOf(ImportOutcome.Applied.class);
            assertThat(database.read(Dump::of)).isEqualTo(before);
        }
    }

    @Test
    void a_dry_run_changes_nothing() throws IOException {
        try (var first = Database.open(folder.resolve("first"), CLOCK);
                var second = Database.open(folder.resolve("second"), CLOCK)) {
            first.write(KEEPER, "filled", RandomCollection.seeded(78)::fill);
            first.read(tx -> OpenPackage.write(tx, folder.resolve("package.zip")));

            var result =
                    OpenPackage.read(
                            second,
                            KEEPER,
                            "tried",
                            folder.resolve("package.zip"),
                            Choices.usual("python-regius"),
                            Situations.LINES,
                            false,
                            Progress.unheard());

            assertThat(result.outcome()).isInstanceOf(ImportOutcome.Applied.class);
            assertThat(second.read(Dump::of)).isEmpty();
        }
    }

    /// OWASP, "CSV Injection": cells that begin with =, +, -, @, tab or carriage return.
    @Test
    void no_cell_of_an_export_begins_like_a_formula() throws IOException {
        try (var first = Database.open(folder.resolve("first"), CLOCK)) {
            first.write(KEEPER, "filled", RandomCollection.seeded(79)::fill);
            first.read(tx -> OpenPackage.write(tx, folder.resolve("package")));
        }
        int cells = 0;
        for (var file : List.of("animals.csv", "statements.csv", "weighings.csv", "places.csv")) {
            try (var csv =
                    de.siegmar.fastcsv.reader.CsvReader.builder()
                            .ofCsvRecord(folder.resolve("package").resolve(file))) {
                for (var row : csv) {
                    for (var cell : row.getFields()) {
                        assertThat(cell).doesNotMatch("(?s)[=+\\-@\\t\\r].*");
                        cells++;
                    }
                }
            }
        }
        assertThat(cells).isGreaterThan(100);
    }

    @Test
    void a_package_of_animals_alone_is_enough_and_needs_no_description() throws IOException {
        Files.createDirectories(folder.resolve("bare"));
        Files.writeString(
                folder.resolve("bare/animals.csv"),
                """
                tag,name,sex,hatched,sire,dam,stated,shows,status
                C1,,female,2024-05-01,M1:0.7|M2:0.3,F1,Pastel,Normal,hold back
                M1,Otto,male,2019,,,het Clown,,kept
                M2,,male,2020-06-01,,,,,loaned
                F1,,female,2018,,,66% het Clown,,
                """);
        try (var database = Database.open(folder.resolve("store"), CLOCK)) {
            var result = read(database, folder.resolve("bare"));

            assertThat(result.outcome()).isEqualTo(new ImportOutcome.Applied(4, 0, 0));
            assertThat(database.read(Dump::of))
                    .anyMatch(line -> line.contains("sire_candidate") && line.contains("7/10"));
        }
    }

    @Test
    void a_package_with_faults_says_file_and_row_and_changes_nothing() throws IOException {
        Files.createDirectories(folder.resolve("bad"));
        Files.writeString(folder.resolve("bad/animals.csv"), "tag,sex\nA,female\nB,male\n");
        Files.writeString(
                folder.resolve("bad/weighings.csv"),
                "animal,date,grams,notes\nA,2025-01-01,-5,\nZ,2025-02-30,100,\n");
        Files.writeString(
                folder.resolve("bad/clutches.csv"),
                "clutch,season,number,dam,sire,sire question,without sire,pairing,laid,species,"
                        + "notes\n25-01,2025,1,B,,,no,,2025-04-01,python-regius,\n");
        try (var database = Database.open(folder.resolve("store"), CLOCK)) {
            var result = read(database, folder.resolve("bad"));

            assertThat(result.outcome()).isInstanceOf(ImportOutcome.Refused.class);
            assertThat(result.problems().stream().filter(Problem::stops))
                    .extracting(Problem::where)
                    .containsExactly(
                            new Problem.Where.OtherFile("weighings.csv", 2),
                            new Problem.Where.OtherFile("weighings.csv", 3),
                            new Problem.Where.OtherFile("weighings.csv", 3),
                            new Problem.Where.OtherFile("clutches.csv", 2));
            assertThat(database.read(Dump::of)).isEmpty();
        }
    }

    @Test
    void a_packed_file_cannot_write_outside_its_folder() throws IOException {
        var zip = folder.resolve("sly.zip");
        try (var out = new java.util.zip.ZipOutputStream(Files.newOutputStream(zip))) {
            for (var name : List.of("animals.csv", "../sly.txt", "photos/../../sly.txt")) {
                out.putNextEntry(new java.util.zip.ZipEntry(name));
                out.write("tag\nA\n".getBytes(java.nio.charset.StandardCharsets.UTF_8));
            }
        }
        try (var database = Database.open(folder.resolve("store"), CLOCK)) {
            assertThat(read(database, zip).outcome()).isEqualTo(new ImportOutcome.Applied(1, 0, 0));
        }
        try (var all = Files.walk(folder)) {
            assertThat(all).noneMatch(path -> path.endsWith("sly.txt"));
        }
    }

    private static List<String> without(List<String> lines, List<String> others) {
        var rest = new java.util.ArrayList<>(lines);
        others.forEach(rest::remove);
        return rest;
    }

    private static OpenPackage.Result read(Database database, Path path) {
        return OpenPackage.read(
                database,
                KEEPER,
                "read",
                path,
                Choices.usual("python-regius"),
                Situations.LINES,
                true,
                Progress.unheard());
    }
}
