package clutchwright.records.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Sex;
import clutchwright.records.checks.Parent;
import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.exchange.sheets.SheetReading;
import clutchwright.records.exchange.sheets.SheetRemark;
import clutchwright.records.store.Author;
import clutchwright.records.store.Database;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The files under `examples/` do what their README says.
class ExampleFilesTest {

    private static final Path EXAMPLES = examples();
    private static final Clock CLOCK =
            Clock.fixed(Instant.parse("2026-06-01T12:00:00Z"), ZoneOffset.UTC);

    @TempDir Path folder;
    private Database database;

    @BeforeEach
    void open() {
        database = Database.open(folder, CLOCK);
    }

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void the_tidy_file_goes_in_as_it_is() throws IOException {
        var plan = plan("tidy.csv");

        assertThat(plan.stops()).isEmpty();
        assertThat(apply(plan)).isEqualTo(new ImportOutcome.Applied(11, 0, 0));
        assertThat(database.read(Dump::of))
                .anyMatch(line -> line.startsWith("sire_candidate [23-03] [NULL] [0] [M-01] [1/2]"))
                .anyMatch(line -> line.contains("Snake room>A>1"));
    }

    @Test
    void semicolons_windows_letters_and_days_before_months_are_understood() throws IOException {
        var plan = plan("semicolons-and-day-first.csv");

        assertThat(plan.stops()).isEmpty();
        assertThat(plan.rows()).extracting(row -> row.entry().name()).contains("Käthe", "Jürgen");
        assertThat(plan.rows().get(1).entry().hatched().iso()).isEqualTo("2019-04-03");
        assertThat(plan.rows().get(2).entry().weight().orElseThrow().grams()).isEqualTo(1600);
        assertThat(plan.notes())
                .extracting(Problem::finding)
                .contains(
                        new Finding.Peculiar(new SheetRemark.EncodingTaken("windows-1252")),
                        new Finding.DateOrderShown(DateOrder.DAY_FIRST, "13/08/2018", 2),
                        new Finding.ParentByName(Parent.SIRE, "Jürgen", "K2"));
        assertThat(apply(plan)).isEqualTo(new ImportOutcome.Applied(7, 0, 0));
    }

    @Test
    void genes_in_two_columns_are_joined() throws IOException {
        var plan = plan("two-gene-columns.xlsx");

        assertThat(plan.stops()).isEmpty();
        assertThat(plan.rows())
                .extracting(row -> row.entry().stated())
                .containsExactly(
                        "Pastel, het Clown",
                        "Clown",
                        "Mojave, het Piebald, het Ghost",
                        "Banana, 100% het Piebald, 66% het Ghost",
                        "het Clown, 66% het Piebald",
                        "Super Enchi");
        assertThat(plan.rows().getFirst().entry().place()).contains(new PlaceName("", "A", "1"));
        assertThat(apply(plan)).isEqualTo(new ImportOutcome.Applied(6, 0, 0));
    }

    @Test
    void title_rows_and_date_cells_of_a_workbook_are_understood() throws IOException {
        var plan = plan("with-title-rows.xlsx");

        assertThat(plan.stops()).isEmpty();
        assertThat(plan.sheet().headerRow()).isEqualTo(4);
        assertThat(plan.sheet().sheets()).containsExactly("Stock list", "Sold");
        assertThat(plan.rows())
                .extracting(row -> row.entry().hatched().iso())
                .containsExactly("2016-07-11", "2018-07-12", "2020-07-13");
        assertThat(plan.rows().getLast().entry().notes()).isEqualTo("Value: 100");
        assertThat(apply(plan)).isEqualTo(new ImportOutcome.Applied(3, 0, 0));
    }

    @Test
    void each_fault_of_the_faulty_file_is_named_and_nothing_goes_in() throws IOException {
        var plan = plan("problems.csv");

        assertThat(plan.stops())
                .extracting(one -> row(one) + " " + one.finding().getClass().getSimpleName())
                .containsExactlyInAnyOrder(
                        "3 GenesUnclear",
                        "4 NoSuchDay",
                        "4 GenesUnclear",
                        "5 UnknownSex",
                        "6 TagTwice",
                        "7 WrongSex",
                        "7 HatchedBeforeParent",
                        "9 InTheFuture",
                        "10 ParentUnknown",
                        "10 GenesUnclear",
                        "12 HatchedBeforeParent",
                        "12 OwnAncestor",
                        "13 TagMissing",
                        "14 UnknownStatus",
                        "15 CellsBeyondHeader");
        assertThat(plan.problemsByColumn().keySet())
                .containsExactly("", "Tag", "Sex", "Hatched", "Sire", "Dam", "Genetics", "Status");
        assertThat(apply(plan)).isInstanceOf(ImportOutcome.Refused.class);
        assertThat(database.read(Dump::of)).isEmpty();
    }

    @Test
    void three_hundred_animals_go_in_and_descend_from_one_another() throws IOException {
        var plan = plan("three-hundred.csv");

        assertThat(plan.stops()).isEmpty();
        assertThat(apply(plan)).isEqualTo(new ImportOutcome.Applied(300, 0, 0));
        assertThat(plan.rows()).filteredOn(row -> row.entry().dam().isPresent()).hasSize(260);
        assertThat(plan.rows())
                .filteredOn(row -> row.entry().sex().equals(java.util.Optional.of(Sex.MALE)))
                .hasSize(100);
    }

    @Test
    void the_files_are_what_their_generator_writes() throws IOException {
        assertThat(Files.readString(EXAMPLES.resolve("three-hundred.csv")))
                .isEqualTo(ThreeHundred.asText());
        var out = new ByteArrayOutputStream();
        ExampleWorkbooks.withTitleRows(out);
        var fresh = Files.write(folder.resolve("fresh.xlsx"), out.toByteArray());
        assertThat(sheet(fresh).rows())
                .isEqualTo(sheet(EXAMPLES.resolve("with-title-rows.xlsx")).rows());
    }

    private ImportPlan plan(String file) throws IOException {
        var sheet = sheet(EXAMPLES.resolve(file));
        return database.read(
                tx ->
                        ImportPlan.of(
                                tx,
                                sheet,
                                ColumnMatching.propose(sheet),
                                Choices.usual("python-regius"),
                                Situations.LINES,
                                Progress.unheard()));
    }

    private ImportOutcome apply(ImportPlan plan) {
        return plan.apply(database, new Author("keeper"), "import", Progress.unheard());
    }

    private static Sheet sheet(Path file) {
        var reading = Tables.read(file, file.getFileName().toString(), "");
        assertThat(reading).isInstanceOf(SheetReading.Read.class);
        return ((SheetReading.Read) reading).sheet();
    }

    private static int row(Problem problem) {
        return switch (problem.where()) {
            case Problem.Where.Cell(var row, _, _) -> row;
            case Problem.Where.WholeRow(var row) -> row;
            case Problem.Where.WholeColumn _, Problem.Where.WholeFile _ -> 0;
            case Problem.Where.OtherFile(_, var row) -> row;
        };
    }

    private static Path examples() {
        return List.of(Path.of("examples"), Path.of("..", "examples")).stream()
                .filter(Files::isDirectory)
                .findFirst()
                .orElseThrow();
    }
}
