package clutchwright.records.exchange.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// A workbook is read as its cells show it.
class WorkbooksTest {

    @TempDir Path folder;

    @Test
    void numbers_come_as_a_person_reads_them() throws IOException {
        var sheet =
                sheetOf(
                        page -> {
                            header(page);
                            page.value(1, 0, 7.0);
                            page.value(2, 0, 0.1);
                            page.value(3, 0, 1.0);
                            page.style(3, 0).format("0.0").set();
                            page.value(4, 0, 0.66);
                            page.style(4, 0).format("0%").set();
                            page.value(5, 0, 7);
                            page.style(5, 0).format("000").set();
                            page.value(6, 0, 0.1 + 0.2);
                            page.value(7, 0, true);
                        });

        assertThat(firstCells(sheet))
                .containsExactly("7", "0.1", "1.0", "66%", "007", "0.3", "true");
    }

    /// Day 44259 of the 1900 calendar is 4 March 2021 (ECMA-376 part 1, 18.17.4.1: serial 1 is
    /// 1 January 1900, and 1900 counts as a leap year).
    @Test
    void cells_formatted_as_dates_are_dates() throws IOException {
        var sheet =
                sheetOf(
                        page -> {
                            header(page);
                            page.value(1, 0, 44259);
                            page.style(1, 0).format("dd/mm/yyyy").set();
                            page.value(2, 0, LocalDate.of(2021, 3, 4));
                            page.style(2, 0).format("d-mmm-yy").set();
                            page.value(3, 0, 44259);
                        });

        assertThat(firstCells(sheet)).containsExactly("2021-03-04", "2021-03-04", "44259");
    }

    @Test
    void a_formula_counts_with_its_last_value_and_is_noted() throws IOException {
        var sheet =
                readParts(
                        workbook(
                                """
                <row r="1"><c r="A1" t="inlineStr"><is><t>tag</t></is></c>
                <c r="B1" t="inlineStr"><is><t>sex</t></is></c></row>
                <row r="2"><c r="A2" t="str"><f>"A"&amp;1</f><v>A1</v></c>
                <c r="B2"><f>1+1</f></c></row>
                <row r="3"><c r="A3" t="inlineStr"><is><t>A2</t></is></c>
                <c r="B3" t="e"><v>#REF!</v></c></row>
                """));

        assertThat(sheet.rows())
                .extracting(Sheet.Row::cells)
                .containsExactly(List.of("A1", ""), List.of("A2", ""));
        assertThat(sheet.remarks())
                .containsExactly(
                        new SheetRemark.FormulaValue(2, 0, "A1"),
                        new SheetRemark.FormulaWithoutValue(2, 1),
                        new SheetRemark.ErrorCell(3, 1, "#REF!"));
    }

    @Test
    void any_sheet_can_be_chosen_and_the_first_with_something_in_it_is_taken() throws IOException {
        var out = new ByteArrayOutputStream();
        try (var workbook = new Workbook(out, "test", "1.0")) {
            workbook.newWorksheet("Empty");
            for (var name : List.of("Snakes", "Sold")) {
                var page = workbook.newWorksheet(name);
                page.value(0, 0, "tag");
                page.value(1, 0, "of " + name);
            }
        }
        var path = Files.write(folder.resolve("many.xlsx"), out.toByteArray());

        assertThat(sheet(path, "").name()).isEqualTo("Snakes");
        assertThat(sheet(path, "").sheets()).containsExactly("Empty", "Snakes", "Sold");
        assertThat(firstCells(sheet(path, "Sold"))).containsExactly("of Sold");
        assertThat(file().read(path, "many.xlsx", "Lent"))
                .isEqualTo(
                        new SheetReading.Unreadable(
                                new FileFault.NoSuchSheet(
                                        "Lent", List.of("Empty", "Snakes", "Sold"))));
    }

    @Test
    void a_workbook_cut_short_is_broken() throws IOException {
        var whole = bytesOf(WorkbooksTest::header);

        for (int length : List.of(10, whole.length / 2, whole.length - 5)) {
            assertThat(fault(Arrays.copyOf(whole, length))).isEqualTo(new FileFault.Broken());
        }
    }

    @Test
    void damage_anywhere_in_a_workbook_never_makes_the_reader_fail() throws IOException {
        long seed = 20_260_403L;
        System.out.println("WorkbooksTest seed " + seed);
        var random = new java.util.Random(seed);
        var whole =
                bytesOf(
                        page -> {
                            header(page);
                            page.value(1, 0, "A1");
                        });
        for (int round = 0; round < 300; round++) {
            var damaged = whole.clone();
            for (int i = 0; i < 3; i++) {
                damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
            }
            assertThat(file().read(Files.write(folder.resolve("d.xlsx"), damaged), "d.xlsx", ""))
                    .isNotNull();
        }
    }

    @Test
    void a_small_file_that_unpacks_to_a_huge_one_is_refused() throws IOException {
        var out = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("xl/workbook.xml"));
            zip.write("<workbook/>".getBytes(StandardCharsets.UTF_8));
            zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
            var zeros = new byte[1 << 20];
            for (int i = 0; i < 301; i++) {
                zip.write(zeros);
            }
        }

        assertThat(out.size()).isLessThan(1 << 20);
        assertThat(fault(out.toByteArray()))
                .isEqualTo(new FileFault.UnpacksTooLarge(Limits.USUAL.unpackedBytes()));
    }

    @Test
    void entities_that_multiply_are_refused() throws IOException {
        var parts = new java.util.LinkedHashMap<>(workbook("<row r=\"1\"/>"));
        parts.put(
                "xl/sharedStrings.xml",
                """
                <?xml version="1.0"?><!DOCTYPE sst [<!ENTITY a "aaaaaaaaaa">
                <!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;">]>
                <sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">
                <si><t>&b;</t></si></sst>
                """);

        assertThat(fault(zipped(parts))).isEqualTo(new FileFault.Broken());
    }

    @Test
    void other_packed_files_say_what_they_are() throws IOException {
        assertThat(fault(zipped(Map.of("content.xml", "<x/>"))))
                .isEqualTo(new FileFault.OtherFormat(FileFault.Format.OPEN_DOCUMENT));
        assertThat(fault(zipped(Map.of("holiday.jpg", "x"))))
                .isEqualTo(new FileFault.OtherFormat(FileFault.Format.ARCHIVE));
    }

    private static void header(Worksheet page) {
        page.value(0, 0, "tag");
        page.value(0, 1, "sex");
    }

    private Sheet sheetOf(Consumer<Worksheet> filling) throws IOException {
        return sheet(Files.write(folder.resolve("file.xlsx"), bytesOf(filling)), "");
    }

    private static byte[] bytesOf(Consumer<Worksheet> filling) throws IOException {
        var out = new ByteArrayOutputStream();
        try (var workbook = new Workbook(out, "test", "1.0")) {
            filling.accept(workbook.newWorksheet("Snakes"));
        }
        return out.toByteArray();
    }

    private Sheet readParts(Map<String, String> parts) throws IOException {
        return sheet(Files.write(folder.resolve("parts.xlsx"), zipped(parts)), "");
    }

    private static SheetFile file() {
        return new SheetFile(Set.of("tag", "sex")::contains, Limits.USUAL);
    }

    private static Sheet sheet(Path path, String name) {
        return ((SheetReading.Read) file().read(path, path.getFileName().toString(), name)).sheet();
    }

    private FileFault fault(byte[] bytes) throws IOException {
        var path = Files.write(folder.resolve("faulty.xlsx"), bytes);
        return ((SheetReading.Unreadable) file().read(path, "faulty.xlsx", "")).fault();
    }

    private static List<String> firstCells(Sheet sheet) {
        return sheet.rows().stream().map(row -> row.cells().getFirst()).toList();
    }

    private static byte[] zipped(Map<String, String> parts) throws IOException {
        var out = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(out)) {
            for (var part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
            }
        }
        return out.toByteArray();
    }

    /// The least that a workbook consists of (ECMA-376 part 1, 12.2), around these rows.
    private static Map<String, String> workbook(String rows) {
        var main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
        var office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
        var packaged = "http://schemas.openxmlformats.org/package/2006/";
        return Map.of(
                "[Content_Types].xml",
                "<Types xmlns=\""
                        + packaged
                        + "content-types\">"
                        + "<Override PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd."
                        + "openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/>"
                        + "<Override PartName=\"/xl/worksheets/sheet1.xml\" ContentType=\""
                        + "application/vnd.openxmlformats-officedocument.spreadsheetml."
                        + "worksheet+xml\"/></Types>",
                "_rels/.rels",
                "<Relationships xmlns=\""
                        + packaged
                        + "relationships\"><Relationship Id=\"r1\""
                        + " Type=\""
                        + office
                        + "/officeDocument\" Target=\"xl/workbook.xml\"/>"
                        + "</Relationships>",
                "xl/workbook.xml",
                "<workbook xmlns=\""
                        + main
                        + "\" xmlns:r=\""
                        + office
                        + "\"><sheets>"
                        + "<sheet name=\"One\" sheetId=\"1\" r:id=\"r1\"/></sheets></workbook>",
                "xl/_rels/workbook.xml.rels",
                "<Relationships xmlns=\""
                        + packaged
                        + "relationships\"><Relationship Id=\"r1\""
                        + " Type=\""
                        + office
                        + "/worksheet\" Target=\"worksheets/sheet1.xml\"/>"
                        + "</Relationships>",
                "xl/worksheets/sheet1.xml",
                "<worksheet xmlns=\""
                        + main
                        + "\"><sheetData>"
                        + rows
                        + "</sheetData></worksheet>");
    }
}
