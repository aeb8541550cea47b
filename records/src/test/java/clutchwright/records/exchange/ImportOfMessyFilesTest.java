package clutchwright.records.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Sex;
import clutchwright.records.animals.Hatched;
import clutchwright.records.animals.Status;
import clutchwright.records.checks.Parent;
import clutchwright.records.exchange.ImportPlan.Fate;
import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.exchange.sheets.SheetReading;
import clutchwright.records.store.Author;
import clutchwright.records.store.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Files as breeders keep them: understood, or refused with every fault named. What a word is
/// taken to mean is common practice of the trade, no source.
class ImportOfMessyFilesTest {

    private static final Clock CLOCK =
            Clock.fixed(Instant.parse("2026-06-01T12:00:00Z"), ZoneOffset.UTC);
    private static final Author KEEPER = new Author("keeper");
    private static final Choices USUAL = Choices.usual("python-regius");

    @TempDir Path folder;
    private Database database;

    @BeforeEach
    void open() {
        database = Database.open(folder.resolve("store"), CLOCK);
    }

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void sexes_are_read_in_every_usual_shape() throws IOException {
        var plan =
                plan(
                        """
                tag,sex
                A,M
                B,female
                C,1.0
                D,0.1
                E,♂
                F,♀
                G,
                H,?
                I,0.0.1
                """);

        assertThat(plan.canBeApplied()).isTrue();
        assertThat(plan.rows())
                .extracting(row -> row.entry().sex().map(Sex::name).orElse("-"))
                .containsExactly(
                        "MALE", "FEMALE", "MALE", "FEMALE", "MALE", "FEMALE", "-", "-", "-");
    }

    @Test
    void a_one_is_male_only_where_others_have_nought_point_one() throws IOException {
        assertThat(findings(plan("tag,sex\nA,1\nB,0.1\n").notes()))
                .contains(new Finding.OneIsMale());
        assertThat(findings(plan("tag,sex\nA,1\nB,2\n").stops()))
                .containsExactly(
                        new Finding.UnknownSex("1", SexWords.EXPECTED),
                        new Finding.UnknownSex("2", SexWords.EXPECTED));
    }

    @Test
    void dates_are_read_in_every_usual_shape() throws IOException {
        var plan =
                plan(
                        """
                tag,born
                A,2021-03-04
                B,13/04/2021
                C,03/04/2021
                D,4 Mar 2021
                E,"March 4th, 2021"
                F,4.3.2021
                G,2020
                H,Spring 2020
                I,44259
                J,04-Mar-21
                K,20210304
                L,unknown
                M,03/03/2021
                """);

        assertThat(plan.stops()).isEmpty();
        assertThat(plan.rows())
                .extracting(row -> row.entry().hatched().iso())
                .containsExactly(
                        "2021-03-04",
                        "2021-04-13",
                        "2021-04-03",
                        "2021-03-04",
                        "2021-03-04",
                        "2021-03-04",
                        "2020",
                        "2020",
                        "2021-03-04",
                        "2021-03-04",
                        "2021-03-04",
                        "",
                        "2021-03-03");
        assertThat(findings(plan.notes()))
                .contains(
                        new Finding.DateOrderShown(DateOrder.DAY_FIRST, "13/04/2021", 3),
                        new Finding.OnlyYear("Spring 2020", 2020),
                        new Finding.SerialDate("44259", LocalDate.of(2021, 3, 4)),
                        new Finding.ShortYear("04-Mar-21", LocalDate.of(2021, 3, 4)));
        assertThat(plan.rows().get(7).entry().notes()).isEqualTo("born: Spring 2020");
    }

    @Test
    void day_and_month_are_asked_where_no_date_shows_their_order() throws IOException {
        var text = "tag,hatched\nA,03/04/2021\nB,05/06/2021\n";
        var asked = plan(text);

        assertThat(findings(asked.stops()))
                .containsExactly(new Finding.DateOrderUnknown("03/04/2021", 2, 2));
        assertThat(asked.stops().getFirst().remedies())
                .containsExactly(Problem.Remedy.CHOOSE_DATE_ORDER);
        var monthFirst = plan(text, USUAL.withDateOrder(DateOrder.MONTH_FIRST));
        assertThat(monthFirst.stops()).isEmpty();
        assertThat(monthFirst.rows().getFirst().entry().hatched())
                .isEqualTo(new Hatched.OnDay(LocalDate.of(2021, 3, 4)));
        assertThat(findings(plan("tag,dob\nA,13/01/2021\nB,01/13/2021\nC,02/03/2021\n").stops()))
                .containsExactly(new Finding.DateOrderMixed("13/01/2021", 2, "01/13/2021", 3));
    }

    @Test
    void parents_stand_anywhere_in_the_file_by_tag_or_name() throws IOException {
        var plan =
                plan(
                        """
                tag,name,sex,sire,dam
                C,,f,Rowan,d1
                X,,m,M1:0.7|M2:0.3,D1
                Y,,m,M1 or M2,D1
                Z,,m,M1/M2?,D1
                W,,m,unknown,D1
                D1,Hazel,f,,
                M1,Rowan,m,,
                M2,Alder,m,,
                """);

        assertThat(plan.stops()).isEmpty();
        assertThat(plan.rows().subList(0, 5))
                .extracting(row -> sire(row.entry()))
                .containsExactly("M1", "M1 7/10, M2 3/10", "M1 1/2, M2 1/2", "M1 1/2, M2 1/2", "");
        assertThat(plan.rows().getFirst().entry().dam().orElseThrow().value()).isEqualTo("D1");
        assertThat(findings(plan.notes()))
                .contains(new Finding.ParentByName(Parent.SIRE, "Rowan", "M1"));
    }

    @Test
    void a_parent_that_is_nowhere_is_refused_made_or_kept_as_a_note() throws IOException {
        var text = "tag,sex,sire,dam\nA,f,Big Otto,B2\nB1,f,,\n";
        var refused = plan(text);

        assertThat(findings(refused.stops()))
                .containsExactly(
                        new Finding.ParentUnknown(Parent.SIRE, "Big Otto", List.of()),
                        new Finding.ParentUnknown(Parent.DAM, "B2", List.of("B1")));
        var made = plan(text, USUAL.withParents(Choices.StrangeParents.CREATE));
        assertThat(made.canBeApplied()).isTrue();
        assertThat(made.strangers())
                .extracting(entry -> entry.tag() + " " + entry.sex().orElseThrow())
                .containsExactly("B2 FEMALE", "Big Otto MALE");
        var noted = plan(text, USUAL.withParents(Choices.StrangeParents.KEEP_AS_NOTE));
        assertThat(noted.canBeApplied()).isTrue();
        assertThat(noted.rows().getFirst().entry().notes()).isEqualTo("dam: B2\nsire: Big Otto");
        assertThat(apply(made)).isEqualTo(new ImportOutcome.Applied(4, 0, 0));
    }

    @Test
    void what_cannot_be_in_a_line_of_descent_is_found() throws IOException {
        assertThat(findings(plan("tag,sex,sire\nA,m,B\nB,m,A\n").stops()))
                .hasOnlyElementsOfType(Finding.OwnAncestor.class)
                .isNotEmpty();
        assertThat(findings(plan("tag,sex,dam\nA,f,A\n").stops()))
                .anyMatch(Finding.OwnAncestor.class::isInstance);
        assertThat(findings(plan("tag,sex,sire\nA,m,B\nB,f,\n").stops()))
                .containsExactly(new Finding.WrongSex(Parent.SIRE, "B", Sex.FEMALE));
        assertThat(findings(plan("tag,hatched,dam\nA,2019-05-01,B\nB,2020,\n").stops()))
                .containsExactly(
                        new Finding.HatchedBeforeParent(Parent.DAM, "2019-05-01", "B", "2020"));
        assertThat(findings(plan("tag,sire,dam\nA,C,\nB,,C\nC,,\n").stops()))
                .containsExactly(new Finding.UsedAsBoth("C", 3, 2));
    }

    @Test
    void a_parent_without_a_sex_has_the_sex_of_its_part() throws IOException {
        var plan = plan("tag,dam\nA,B\nB,\n");

        assertThat(findings(plan.notes()))
                .contains(new Finding.SexFromParenthood("B", Sex.FEMALE, Parent.DAM));
        assertThat(plan.rows().get(1).entry().sex()).contains(Sex.FEMALE);
    }

    @Test
    void dates_that_cannot_be_are_found() throws IOException {
        assertThat(findings(plan("tag,hatched\nA,2035-01-01\nB,31/02/2021\nC,soon\n").stops()))
                .containsExactly(
                        new Finding.InTheFuture(LocalDate.of(2035, 1, 1), LocalDate.of(2026, 6, 1)),
                        new Finding.NoSuchDay("31/02/2021"),
                        new Finding.UnreadableDate("soon"));
    }

    @Test
    void genes_spread_over_columns_make_one_line() throws IOException {
        var plan =
                plan(
                        """
                tag,Visual,Hets,66% het,Poss hets
                A,Pastel,"Clown, 66% Piebald",,
                B,Mojave,het Ghost,Clown,
                C,,none,,50% Piebald
                """);

        assertThat(plan.stops()).isEmpty();
        assertThat(plan.rows())
                .extracting(row -> row.entry().stated())
                .containsExactly(
                        "Pastel, het Clown, 66% het Piebald",
                        "Mojave, het Ghost, 66% het Clown", "50% het Piebald");
    }

    @Test
    void every_fault_of_a_gene_line_is_named_with_its_place() throws IOException {
        var plan = plan("tag,genes\nA,Pastel het Xyzzyq\nB,Mojave Mystic Phantom\n");

        assertThat(plan.stops()).hasSize(2);
        assertThat(plan.stops().getFirst().where())
                .isEqualTo(new Problem.Where.Cell(2, 1, "genes"));
        var unknown = (Finding.GenesUnclear) plan.stops().getFirst().finding();
        assertThat(unknown.fault().start()).isEqualTo("Pastel het ".length());
        assertThat(unknown.fault().found()).isEqualTo("Xyzzyq");
        var three = (Finding.GenesUnclear) plan.stops().get(1).finding();
        assertThat(three.fault().names()).contains("Mojave", "Mystic", "Phantom");
    }

    @Test
    void the_sex_in_a_gene_line_completes_or_contradicts_the_sex_column() throws IOException {
        assertThat(findings(plan("tag,sex,genes\nA,f,1.0 Pastel\n").stops()))
                .containsExactly(new Finding.SexContradicted(Sex.FEMALE, Sex.MALE));
        var plan = plan("tag,genes\nA,1.0 Pastel\nB,1.2 Pastel\n");
        assertThat(plan.rows().getFirst().entry().sex()).contains(Sex.MALE);
        assertThat(findings(plan.stops()))
                .singleElement()
                .isInstanceOf(Finding.SeveralAnimals.class);
    }

    @Test
    void tags_are_there_and_unique() throws IOException {
        assertThat(findings(plan("tag,sex\nA1,f\n,m\na1,m\n").stops()))
                .containsExactly(new Finding.TagMissing(), new Finding.TagTwice("a1", 2));
        assertThat(findings(plan("colour,size\nred,5\n").stops()))
                .containsExactly(new Finding.NoTagColumn(List.of("colour", "size")));
    }

    @Test
    void cells_beyond_the_header_stop_the_import() throws IOException {
        assertThat(findings(plan("tag,sex\nA,f\nB,m,Pastel\nC,m\n").stops()))
                .containsExactly(new Finding.CellsBeyondHeader(3, 2, List.of("Pastel")));
    }

    @Test
    void an_animal_on_record_is_refused_passed_over_or_updated_as_chosen() throws IOException {
        apply(plan("tag,name,sex,genes\nA,Ada,f,Pastel\n"));
        var same = "tag,name,sex,genes\na,Ada,f,Pastel\n";
        var other = "tag,name,genes\nA,Eva,Pastel het Clown\n";

        assertThat(findings(plan(same).stops()))
                .containsExactly(new Finding.OnRecord("a", true, List.of()));
        var skipping = USUAL.withOnRecord(Choices.OnRecordAlready.SKIP_IDENTICAL);
        assertThat(plan(same, skipping).rows().getFirst().fate()).isEqualTo(Fate.SKIPPED);
        assertThat(findings(plan(other, skipping).stops()))
                .containsExactly(
                        new Finding.OnRecord("A", false, List.of(Column.NAME, Column.STATED)));
        var updating = plan(other, USUAL.withOnRecord(Choices.OnRecordAlready.UPDATE));
        assertThat(apply(updating)).isEqualTo(new ImportOutcome.Applied(0, 1, 0));
        var after = database.read(Recorded::of).all().iterator().next();
        assertThat(after.name()).isEqualTo("Eva");
        assertThat(after.sex()).as("a blank column changes nothing").contains(Sex.FEMALE);
        assertThat(after.stated()).isEqualTo("Pastel het Clown");
    }

    @Test
    void a_file_read_again_says_nothing_new_with_its_weights_and_places() throws IOException {
        var text = "tag,weight,tub\nA,1250,7\nB,900,8\n";
        apply(plan(text));
        var again = plan(text, USUAL.withOnRecord(Choices.OnRecordAlready.SKIP_IDENTICAL));

        assertThat(again.rows())
                .extracting(ImportPlan.PlannedRow::fate)
                .containsExactly(Fate.SKIPPED, Fate.SKIPPED);
        var heavier =
                plan("tag,weight\nA,1300\n", USUAL.withOnRecord(Choices.OnRecordAlready.UPDATE));
        assertThat(apply(heavier)).isEqualTo(new ImportOutcome.Applied(0, 1, 0));
        assertThat(database.read(Dump::of))
                .filteredOn(line -> line.startsWith("weighing [A]"))
                .hasSize(2);
    }

    @Test
    void status_weight_place_origin_and_other_columns_find_their_way() throws IOException {
        var plan =
                plan(
                        """
                tag,status,weight,weighed,location,origin,breeder,colour
                A,available,"1,250 g",2026-05-01,Room 1 / Rack A / 12,bought,the autumn show,dark
                B,holdback,1.5kg,,7,CBB,,
                C,eaten,heavy,,,,,
                """);

        assertThat(findings(plan.stops()))
                .containsExactly(
                        new Finding.UnknownStatus("eaten", StatusWords.expected()),
                        new Finding.BadNumber(Column.WEIGHT, "heavy"));
        var first = plan.rows().getFirst().entry();
        assertThat(first.status()).isEqualTo(Status.FOR_SALE);
        assertThat(first.weight())
                .contains(new AnimalEntry.WeightEntry(1250, LocalDate.of(2026, 5, 1)));
        assertThat(first.place()).contains(new PlaceName("Room 1", "Rack A", "12"));
        assertThat(first.origin().from()).isEqualTo("the autumn show");
        assertThat(first.notes()).isEqualTo("colour: dark");
        var second = plan.rows().get(1).entry();
        assertThat(second.weight())
                .contains(new AnimalEntry.WeightEntry(1500, LocalDate.of(2026, 6, 1)));
        assertThat(second.notes()).isEqualTo("origin: CBB");
    }

    @Test
    void a_refused_or_stopped_import_leaves_nothing_behind() throws IOException {
        var faulty = plan("tag,sex\nA,f\nB,purple\n");
        assertThat(apply(faulty)).isInstanceOf(ImportOutcome.Refused.class);
        assertThat(database.read(Dump::of)).isEmpty();

        var text = new StringBuilder("tag,sex\n");
        for (int i = 0; i < 400; i++) {
            text.append("T").append(i).append(",f\n");
        }
        var many = plan(text.toString());
        var stopped = many.apply(database, KEEPER, "import", (done, total) -> done < total * 3 / 4);
        assertThat(stopped).isEqualTo(new ImportOutcome.Cancelled());
        assertThat(database.read(Dump::of)).isEmpty();
    }

    @Test
    void making_a_plan_can_be_stopped() throws IOException {
        var sheet = sheet("tag\n" + "A\n".repeat(300));

        org.assertj.core.api.Assertions.assertThatThrownBy(
                        () ->
                                database.read(
                                        tx ->
                                                ImportPlan.of(
                                                        tx,
                                                        sheet,
                                                        ColumnMatching.propose(sheet),
                                                        USUAL,
                                                        Situations.LINES,
                                                        (done, total) -> done < 200)))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void a_matching_that_the_keeper_changed_is_remembered_for_such_files() throws IOException {
        var sheet = sheet("Code,Pappa,Genetics\nA,,Pastel\n");
        var proposed = ColumnMatching.propose(sheet);
        assertThat(proposed.columns())
                .containsExactly(Column.TAG, Column.AMONG_NOTES, Column.STATED);

        database.write(
                KEEPER,
                "matched",
                tx -> {
                    new RememberedMatchings(tx).remember(proposed.with(1, Column.SIRE));
                    return true;
                });

        assertThat(database.read(tx -> new RememberedMatchings(tx).propose(sheet)).columns())
                .containsExactly(Column.TAG, Column.SIRE, Column.STATED);
        assertThat(proposed.with(2, Column.TAG).columns())
                .as("what was the tag before is kept among the notes")
                .containsExactly(Column.AMONG_NOTES, Column.AMONG_NOTES, Column.TAG);
    }

    @Test
    void names_serve_as_tags_where_there_are_no_tags() throws IOException {
        assertThat(plan("Name,Sex\nAda,f\n").rows().getFirst().entry().tag().value())
                .isEqualTo("Ada");
    }

    private ImportPlan plan(String text) throws IOException {
        return plan(text, USUAL);
    }

    private ImportPlan plan(String text, Choices choices) throws IOException {
        var sheet = sheet(text);
        return database.read(
                tx ->
                        ImportPlan.of(
                                tx,
                                sheet,
                                ColumnMatching.propose(sheet),
                                choices,
                                Situations.LINES,
                                Progress.unheard()));
    }

    private Sheet sheet(String text) throws IOException {
        var path = Files.writeString(folder.resolve("file.csv"), text);
        return ((SheetReading.Read) Tables.read(path, "file.csv", "")).sheet();
    }

    private ImportOutcome apply(ImportPlan plan) {
        return plan.apply(database, KEEPER, "import", Progress.unheard());
    }

    private static List<Finding> findings(List<Problem> problems) {
        return problems.stream().map(Problem::finding).toList();
    }

    private static String sire(AnimalEntry entry) {
        return switch (entry.sire()) {
            case AnimalEntry.SireEntry.Unknown() -> "";
            case AnimalEntry.SireEntry.Known(var tag) -> tag.value();
            case AnimalEntry.SireEntry.OneOf(_, var candidates) ->
                    String.join(
                            ", ",
                            candidates.chances().entrySet().stream()
                                    .map(one -> one.getKey() + " " + one.getValue())
                                    .toList());
        };
    }
}
