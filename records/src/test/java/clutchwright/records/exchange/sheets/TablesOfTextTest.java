package clutchwright.records.exchange.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Text as spreadsheets save it is read whatever its separator and encoding.
class TablesOfTextTest {

    private static final Set<String> NAMES = Set.of("tag", "name", "sex", "genes", "hatched");

    @TempDir Path folder;

    @Test
    void each_separator_is_recognised() throws IOException {
        for (var separator : List.of(",", ";", "\t", "|")) {
            var sheet =
                    sheetOf(
                            String.join(separator, "Tag", "Sex", "Genes")
                                    + "\n"
                                    + String.join(separator, "A1", "male", "Pastel")
                                    + "\n");

            assertThat(sheet.header()).containsExactly("Tag", "Sex", "Genes");
            assertThat(sheet.rows().getFirst().cells()).containsExactly("A1", "male", "Pastel");
        }
    }

    @Test
    void commas_inside_cells_do_not_hide_the_semicolons_between_them() throws IOException {
        var sheet =
                sheetOf(
                        """
                tag;genes
                A1;Pastel, het Clown, het Piebald, het Ghost
                A2;Mojave, Enchi, het Clown, het Piebald
                """);

        assertThat(sheet.rows())
                .extracting(row -> row.cells().get(1))
                .containsExactly(
                        "Pastel, het Clown, het Piebald, het Ghost",
                        "Mojave, Enchi, het Clown, het Piebald");
    }

    @Test
    void a_separator_that_the_first_line_announces_is_taken() throws IOException {
        var sheet = sheetOf("sep=;\ntag;sex\nA1;m\n");

        assertThat(sheet.header()).containsExactly("tag", "sex");
        assertThat(sheet.headerRow()).isEqualTo(1);
    }

    @Test
    void quoted_cells_hold_separators_quotes_and_line_breaks() throws IOException {
        var sheet = sheetOf("tag,name\nA1,\"Big, \"\"slow\"\"\nand kind\"\nA2,x\n");

        assertThat(sheet.rows().getFirst().cells().get(1)).isEqualTo("Big, \"slow\"\nand kind");
        assertThat(sheet.rows().get(1).number())
                .as("rows are counted as a spreadsheet counts them, not as lines")
                .isEqualTo(3);
    }

    /// Byte order marks as The Unicode Standard, section 23.8, gives them.
    @Test
    void every_usual_encoding_is_read_and_a_guess_is_told() throws IOException {
        var text = "tag,name\nA1,Zoë Ärger\n";
        var withMark = "\uFEFF" + text;

        assertThat(nameIn(withMark.getBytes(StandardCharsets.UTF_8))).isEqualTo("Zoë Ärger");
        assertThat(nameIn(withMark.getBytes(StandardCharsets.UTF_16LE))).isEqualTo("Zoë Ärger");
        assertThat(nameIn(withMark.getBytes(StandardCharsets.UTF_16BE))).isEqualTo("Zoë Ärger");
        assertThat(nameIn(text.getBytes(StandardCharsets.UTF_8))).isEqualTo("Zoë Ärger");
        assertThat(nameIn(text.getBytes(StandardCharsets.UTF_16LE))).isEqualTo("Zoë Ärger");
        var windows = text.getBytes(Charset.forName("windows-1252"));
        assertThat(nameIn(windows)).isEqualTo("Zoë Ärger");
        assertThat(sheetOf(windows).remarks())
                .contains(new SheetRemark.EncodingTaken("windows-1252"));
    }

    @Test
    void the_header_is_found_under_title_rows() throws IOException {
        var sheet =
                sheetOf(
                        """
                My collection,,
                as of 2026,,
                ,,
                Tag,Sex,Hatched
                A1,m,2020
                """);

        assertThat(sheet.headerRow()).isEqualTo(4);
        assertThat(sheet.rows())
                .singleElement()
                .satisfies(row -> assertThat(row.number()).isEqualTo(5));
        assertThat(sheet.remarks()).contains(new SheetRemark.RowsAboveHeader(2));
    }

    @Test
    void blank_rows_are_passed_over_and_rows_keep_their_numbers() throws IOException {
        var sheet = sheetOf("tag,sex\nA1,m\n\n,\nA2,f\n");

        assertThat(sheet.rows()).extracting(Sheet.Row::number).containsExactly(2, 5);
    }

    @Test
    void a_row_with_cells_beyond_the_header_is_told_with_its_number() throws IOException {
        var sheet = sheetOf("tag,sex\nA1,m\nA2,f,Pastel,het Clown\nA3,m\nA4\n");

        assertThat(sheet.remarks())
                .containsExactly(
                        new SheetRemark.LongRow(3, 4, 2, List.of("Pastel", "het Clown")),
                        new SheetRemark.ShortRow(5, 1, 2));
    }

    @Test
    void a_column_without_a_heading_is_called_by_its_letter() throws IOException {
        var sheet = sheetOf("tag,,sex\nA1,x,m\n");

        assertThat(sheet.header()).containsExactly("tag", "B", "sex");
        assertThat(Sheet.letterOf(26)).isEqualTo("AA");
        assertThat(Sheet.letterOf(701)).isEqualTo("ZZ");
        assertThat(Sheet.letterOf(702)).isEqualTo("AAA");
    }

    @Test
    void a_file_that_is_no_table_says_what_it_is() throws IOException {
        assertThat(faultOf(new byte[0])).isEqualTo(new FileFault.Empty());
        assertThat(faultOf(" \n,,\n".getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(new FileFault.Empty());
        assertThat(faultOf("tag,sex\n".getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(new FileFault.OnlyHeader(1));
        assertThat(faultOf("%PDF-1.7 ...".getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(new FileFault.OtherFormat(FileFault.Format.PDF));
        assertThat(faultOf(bytes(0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A, 0, 0)))
                .isEqualTo(new FileFault.OtherFormat(FileFault.Format.PICTURE));
        assertThat(faultOf(bytes(0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1)))
                .isEqualTo(new FileFault.OtherFormat(FileFault.Format.OLD_WORKBOOK));
        assertThat(faultOf("<!DOCTYPE html><p>".getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(new FileFault.OtherFormat(FileFault.Format.WEB_PAGE));
        assertThat(faultOf(bytes(1, 2, 3, 0, 4, 5, 6, 7, 0, 1)))
                .isEqualTo(new FileFault.OtherFormat(FileFault.Format.UNKNOWN));
        assertThat(faultOf("tag,name\nA1,\"no end\nA2,x\n".getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(new FileFault.BadQuote(2));
        assertThat(read(folder.resolve("nowhere.csv"), Limits.USUAL))
                .isEqualTo(new SheetReading.Unreadable(new FileFault.NotFound("file.csv")));
    }

    @Test
    void each_limit_is_kept() throws IOException {
        var small = new Limits(200, 1000, 3, 4, 10);

        assertThat(faultOf("tag\nA\nB\nC\nD\n", small)).isEqualTo(new FileFault.TooManyRows(3));
        assertThat(faultOf("tag,b,c,d,e\nA,1,2,3,4\n", small))
                .isEqualTo(new FileFault.TooManyColumns(1, 5, 4));
        assertThat(faultOf("tag\nlonger than ten\n", small))
                .isEqualTo(new FileFault.CellTooLong(2, 0, 15, 10));
        assertThat(faultOf("tag\n" + "A\n".repeat(200), small))
                .isEqualTo(new FileFault.TooLarge(404, 200));
    }

    @Test
    void no_bytes_at_all_make_the_reader_fail() throws IOException {
        long seed = 20_260_402L;
        System.out.println("TablesOfTextTest seed " + seed);
        var random = new java.util.Random(seed);
        var alphabet = "\",;\t|\n\r=tagsex\u00e4'\0".getBytes(StandardCharsets.UTF_8);
        for (int round = 0; round < 500; round++) {
            var bytes = new byte[1 + random.nextInt(60)];
            for (int i = 0; i < bytes.length; i++) {
                bytes[i] = alphabet[random.nextInt(alphabet.length)];
            }
            assertThat(read(write(bytes), Limits.USUAL))
                    .as("bytes %s", Arrays.toString(bytes))
                    .isNotNull();
        }
    }

    private Sheet sheetOf(String text) throws IOException {
        return sheetOf(text.getBytes(StandardCharsets.UTF_8));
    }

    private Sheet sheetOf(byte[] bytes) throws IOException {
        return ((SheetReading.Read) read(write(bytes), Limits.USUAL)).sheet();
    }

    private String nameIn(byte[] bytes) throws IOException {
        return sheetOf(bytes).rows().getFirst().cells().get(1);
    }

    private FileFault faultOf(byte[] bytes) throws IOException {
        return ((SheetReading.Unreadable) read(write(bytes), Limits.USUAL)).fault();
    }

    private FileFault faultOf(String text, Limits limits) throws IOException {
        var path = write(text.getBytes(StandardCharsets.UTF_8));
        return ((SheetReading.Unreadable) read(path, limits)).fault();
    }

    private static SheetReading read(Path path, Limits limits) {
        return new SheetFile(
                        text -> NAMES.contains(text.strip().toLowerCase(java.util.Locale.ROOT)),
                        limits)
                .read(path, "file.csv", "");
    }

    private Path write(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("file.csv"), bytes);
    }

    private static byte[] bytes(int... values) {
        var bytes = new byte[values.length];
        for (int i = 0; i < values.length; i++) {
            bytes[i] = (byte) values[i];
        }
        return bytes;
    }
}
