package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.records.animals.Animals;
import clutchwright.records.store.Author;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.CountDownLatch;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// A collection comes in from a file, in the browser.
class ImportScreenTest extends Browsing {

    private static final Path EXAMPLES = Path.of("..", "examples");

    @TempDir Path folder;

    @Test
    void three_hundred_animals_come_in_and_are_taken_back_as_one() {
        choose(EXAMPLES.resolve("three-hundred.csv"));
        assertThat(page().locator("h1")).hasText("three-hundred.csv");
        // As the file says in its second row: 12-001, a male of 2012 that shows Enchi.
        var first = row("12-001");
        assertThat(first).containsText("male");
        assertThat(first).containsText("2012");
        assertThat(first.locator(".genes strong")).hasText("Enchi");
        inspect("import-review");

        press("Bring in 300 animals");
        page().waitForURL(Pattern.compile("/done$"));
        assertThat(page().locator("h1")).hasText("Brought in");
        assertThat(page().locator(".lead")).containsText("300 animals added");
        assertThat(find("12-001")).isTrue();
        inspect("import-done");

        press("Undo the import");
        assertThat(find("12-001")).isFalse();
    }

    @Test
    void titles_above_the_header_of_a_workbook_do_not_matter() {
        choose(EXAMPLES.resolve("with-title-rows.xlsx"));
        assertThat(page().locator("#problems"))
                .containsText("2 rows above the header are passed over");
        inspect("import-workbook");
    }

    @Test
    void a_formula_counts_by_the_value_that_its_reader_saw() throws IOException {
        choose(bytes("formulas.xlsx", workbookWithFormulas()));
        assertThat(row("FX-1")).containsText("2 March 2021");
        assertThat(page().locator("#problems")).containsText("its last value “Pastel” is taken");
        assertThat(page().locator("#problems")).containsText("The cell shows the error #REF!");
    }

    @Test
    void every_fault_is_named_with_its_row_and_nothing_can_be_brought_in() {
        choose(EXAMPLES.resolve("problems.csv"));
        var problems = page().locator("#problems");
        assertThat(problems).containsText("There is no such day as 2019-02-30.");
        assertThat(problems).containsText("hermaphrodite");
        assertThat(problems).containsText("The tag “P2” stands in row 3 already.");
        // What is expected of each row is written in the file's own order: P3 is row 4.
        assertThat(line("There is no such day").locator("td").first()).hasText("4");
        assertThat(button(Pattern.compile("^Bring in"))).hasCount(0);
        inspect("import-problems");

        page().getByRole(AriaRole.LINK, named(Pattern.compile("^Notes"))).click();
        assertThat(page().locator("#problems .late")).hasCount(0);
    }

    @Test
    void what_the_file_leaves_open_is_settled_by_a_column_an_order_and_a_choice()
            throws IOException {
        var file =
                text(
                        "open.csv",
                        """
                        Reference,Sex,Hatched,Father,Look
                        OP-1,male,03/04/2019,,Pastel
                        OP-2,female,05/06/2019,,Clown
                        OP-3,female,07/08/2021,OP-9,Pastel het Clown
                        """);
        choose(file);
        page().getByLabel("What Reference holds").selectOption("TAG");
        page().getByLabel("What Look holds").selectOption("STATED");
        press("Look again");
        assertThat(page().locator("#problems"))
                .containsText("Does the day or the month come first?");
        assertThat(page().locator("#problems")).containsText("“OP-9” is neither in the file");

        page().getByLabel("Day or month first").selectOption("DAY_FIRST");
        page().getByLabel("Parents that are nowhere").selectOption("CREATE");
        press("Look again");
        assertThat(row("OP-1")).containsText("3 April 2019");
        press("Bring in 4 animals");
        page().waitForURL(Pattern.compile("/done$"));
        assertThat(find("OP-9")).as("the sire that was nowhere").isTrue();

        // The same headings again: what they hold is remembered; the animals are on record.
        choose(file);
        assertThat(page().getByLabel("What Reference holds")).hasValue("TAG");
        assertThat(page().locator("#problems")).containsText("OP-1 is on record already");
        page().getByLabel("Day or month first").selectOption("DAY_FIRST");
        page().getByLabel("Animals that are on record already").selectOption("SKIP_IDENTICAL");
        press("Look again");
        assertThat(page().locator(".bring")).containsText("Nothing in it is new");
    }

    @Test
    void an_import_that_is_stopped_leaves_nothing() throws IOException {
        var rows = new StringBuilder("tag,sex,genes\n");
        for (int i = 1; i <= 12_000; i++) {
            rows.append("STOP-").append(i).append(",f,Pastel het Clown\n");
        }
        choose(text("long.csv", rows.toString()));
        whileSomebodyElseWrites(
                () -> {
                    press("Bring in 12,000 animals");
                    assertThat(page().getByRole(AriaRole.PROGRESSBAR)).isVisible();
                    inspect("import-progress");
                });
        // Part of it was read or written by then.
        assertThat(page().locator("#bar p")).hasText(Pattern.compile("^[1-9][0-9]* %$"));
        press("Stop, and change nothing");

        page().waitForURL(
                        Pattern.compile("/done$"), new Page.WaitForURLOptions().setTimeout(30_000));
        assertThat(page().locator("h1")).hasText("Stopped");
        assertThat(find("STOP-1")).isFalse();
    }

    @Test
    void without_script_the_page_of_progress_turns_itself_over() throws IOException {
        useWithoutScript();
        choose(text("plain.csv", "tag,sex,genes\nPLAIN-1,f,Pastel\nPLAIN-2,m,\n"));
        press("Bring in 2 animals");
        assertThat(page().locator("h1"))
                .hasText("Brought in", new LocatorAssertions.HasTextOptions().setTimeout(10_000));
        assertThat(find("PLAIN-2")).isTrue();
    }

    @Test
    void a_cell_that_a_spreadsheet_would_run_stays_text() throws IOException {
        choose(text("runs.csv", "tag,name,genes\nRUN-1,\"=HYPERLINK(\"\"x\"\")\",Pastel\n"));
        assertThat(row("RUN-1")).containsText("=HYPERLINK(\"x\")");
    }

    @Test
    void what_is_no_table_is_refused_in_plain_words() throws IOException {
        refused(text("empty.csv", ""), "There is nothing in the file.");
        refused(bytes("broken.xlsx", brokenWorkbook()), "The file is damaged.");
        refused(
                bytes("picture.csv", new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10}),
                "The file is a picture; a table as .csv or .xlsx was expected.");
        refused(bytes("bomb.xlsx", bomb()), "The file unpacks to more than 300 MB");
        inspect("import-refused");

        open("/settings/import");
        press("Look at the file");
        assertThat(page().locator("#file-fault")).hasText("Choose a file to bring in.");
    }

    @Test
    void a_file_that_is_too_large_is_refused_in_plain_words() throws IOException {
        var large = folder.resolve("large.csv");
        try (var out = Files.newBufferedWriter(large)) {
            var line = "x".repeat(1 << 16) + "\n";
            for (int i = 0; i < 16 * 51; i++) {
                out.write(line);
            }
        }
        open("/settings/import");
        page().getByLabel("File", new Page.GetByLabelOptions().setExact(true)).setInputFiles(large);
        press("Look at the file");
        assertThat(page().locator("#file-fault")).containsText("at most 50 MB can be read");
    }

    @Test
    void everything_goes_out_as_a_package_and_is_seen_to_be_on_record() throws IOException {
        open("/settings");
        var download =
                page().waitForDownload(() -> page().getByText("Download everything").click());
        assertThat(download.suggestedFilename()).matches("clutchwright-collection-.*\\.zip");
        var zip = folder.resolve("collection.zip");
        download.saveAs(zip);
        choose(zip);
        assertThat(page().locator("h1")).hasText("collection.zip");
        inspect("import-package");

        open("/settings");
        var backup = page().waitForDownload(() -> page().getByText("Download a backup").click());
        assertThat(backup.suggestedFilename()).matches("clutchwright-backup-.*\\.zip");
        assertThat(Files.size(backup.path())).isPositive();
    }

    /// One writes at a time, so that an import that is begun meanwhile waits.
    private void whileSomebodyElseWrites(Runnable meanwhile) {
        var begun = new CountDownLatch(1);
        var over = new CountDownLatch(1);
        var writer =
                Thread.ofVirtual()
                        .start(
                                () ->
                                        bean(Holding.class)
                                                .database()
                                                .write(
                                                        new Author("somebody else"),
                                                        "wrote for long",
                                                        tx -> {
                                                            begun.countDown();
                                                            await(over);
                                                            return "";
                                                        }));
        await(begun);
        try {
            meanwhile.run();
        } finally {
            over.countDown();
        }
        try {
            writer.join();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private void refused(Path file, String sentence) {
        choose(file);
        assertThat(page().locator("#file-fault")).containsText(sentence);
    }

    private void choose(Path file) {
        open("/settings/import");
        page().getByLabel("File", new Page.GetByLabelOptions().setExact(true)).setInputFiles(file);
        press("Look at the file");
    }

    private boolean find(String tag) {
        return bean(Holding.class).database().read(tx -> new Animals(tx).byTag(tag).isPresent());
    }

    private Locator row(String tag) {
        return page().locator("section[aria-labelledby=first] tbody tr")
                .filter(new Locator.FilterOptions().setHasText(tag))
                .first();
    }

    private Locator line(String text) {
        return page().locator("#problems tbody tr")
                .filter(new Locator.FilterOptions().setHasText(text))
                .first();
    }

    private void press(String name) {
        page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true))
                .click();
    }

    private Locator button(Pattern name) {
        return page().getByRole(AriaRole.BUTTON, named(name));
    }

    private static Page.GetByRoleOptions named(Pattern name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    private Path text(String name, String text) throws IOException {
        return bytes(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private Path bytes(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    /// The parts of a workbook as ECMA-376 names them, with a value computed, and one that failed.
    private static byte[] workbookWithFormulas() throws IOException {
        var out = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(out)) {
            part(
                    zip,
                    "[Content_Types].xml",
                    """
                    <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
                    <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
                    <Default Extension="xml" ContentType="application/xml"/>
                    <Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>
                    <Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>
                    </Types>
                    """);
            part(
                    zip,
                    "_rels/.rels",
                    """
                    <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
                    <Relationship Id="r1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="xl/workbook.xml"/>
                    </Relationships>
                    """);
            part(
                    zip,
                    "xl/workbook.xml",
                    """
                    <workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">
                    <sheets><sheet name="Animals" sheetId="1" r:id="r1"/></sheets></workbook>
                    """);
            part(
                    zip,
                    "xl/_rels/workbook.xml.rels",
                    """
                    <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
                    <Relationship Id="r1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/>
                    </Relationships>
                    """);
            part(
                    zip,
                    "xl/worksheets/sheet1.xml",
                    """
                    <worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>
                    <row r="1"><c r="A1" t="inlineStr"><is><t>Tag</t></is></c><c r="B1" t="inlineStr"><is><t>Hatched</t></is></c><c r="C1" t="inlineStr"><is><t>Genes</t></is></c><c r="D1" t="inlineStr"><is><t>Notes</t></is></c></row>
                    <row r="2"><c r="A2" t="inlineStr"><is><t>FX-1</t></is></c><c r="B2" t="inlineStr"><is><t>2021-03-02</t></is></c><c r="C2" t="str"><f>CONCATENATE("Pas","tel")</f><v>Pastel</v></c><c r="D2" t="e"><f>Z9</f><v>#REF!</v></c></row>
                    </sheetData></worksheet>
                    """);
        }
        return out.toByteArray();
    }

    private static void part(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static byte[] brokenWorkbook() throws IOException {
        var whole = Files.readAllBytes(EXAMPLES.resolve("with-title-rows.xlsx"));
        return Arrays.copyOf(whole, whole.length / 2);
    }

    /// A workbook of which one part is half a gigabyte of blanks.
    private byte[] bomb() throws IOException {
        var out = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("xl/workbook.xml"));
            var blanks = " ".repeat(1 << 20).getBytes(StandardCharsets.UTF_8);
            for (int i = 0; i < 512; i++) {
                zip.write(blanks);
            }
            zip.closeEntry();
        }
        return out.toByteArray();
    }
}
