package clutchwright.app.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/// The sheets as they come out of the printer: measured, scanned and read.
class LabelSheetsTest {

    private static final String ADDRESS = "http://192.168.178.120:8420";

    /// A hundredth of a millimetre: PDF numbers are written to some five places of a point.
    private static final double EXACT = 0.01;

    private static final Label LONG =
            new Label(
                    ADDRESS + "/a/99999",
                    "Kunigunde-Wilhelmine von der Hohenstaufenbergischen Schlangenwiese",
                    "2026-117-HATCHLING-OF-THE-THIRD  ♀",
                    List.of(
                            "Super Pastel Enchi Fire Leopard 66% het Clown 50% het Pied het Desert"
                                    + " Ghost het Ultramel maybe Yellow Belly with Lesser",
                            "Schlangenzimmer im Untergeschoss / Aufzuchtregal links / 117"));

    @ParameterizedTest
    @EnumSource
    void every_code_of_a_full_sheet_leads_where_it_should(SheetSize size) throws Exception {
        var sheet = size.geometry();
        // Of one and of five digits, so that codes of several sizes are among them.
        var labels = labels(sheet.perSheet() + 2, size.ordinal() * 9_990 + 7);
        var pdf = new LabelSheets(sheet, labels, 0, false).pdf("Labels");

        assertThat(PrintedSheet.pages(pdf)).isEqualTo(2);
        var first = PrintedSheet.printed(pdf, 0);
        for (int place = 0; place < sheet.perSheet(); place++) {
            assertThat(PrintedSheet.scanned(PrintedSheet.label(first, sheet, place)))
                    .isEqualTo(labels.get(place).address());
        }
        var second = PrintedSheet.printed(pdf, 1);
        assertThat(PrintedSheet.scanned(PrintedSheet.label(second, sheet, 1)))
                .isEqualTo(labels.getLast().address());
    }

    /// Column, row, and where the label's upper left corner is by the sheet's own numbers.
    static Stream<Arguments> corners() {
        return Stream.of(
                Arguments.of(SheetSize.A4_3X8, 210, 297, 70, 37, 2, 7, 140.0, 259.5),
                Arguments.of(SheetSize.A4_3X8, 210, 297, 70, 37, 0, 0, 0.0, 0.5),
                Arguments.of(SheetSize.A4_3X7, 210, 297, 63.5, 38.1, 1, 3, 73.25, 129.45),
                Arguments.of(SheetSize.A4_3X7, 210, 297, 63.5, 38.1, 2, 6, 139.25, 243.75),
                Arguments.of(SheetSize.A4_5X13, 210, 297, 38.1, 21.2, 4, 12, 167.15, 265.1),
                Arguments.of(SheetSize.A4_5X13, 210, 297, 38.1, 21.2, 1, 1, 45.35, 31.9),
                Arguments.of(SheetSize.LETTER_3X10, 215.9, 279.4, 66.7, 25.4, 2, 9, 144.4, 241.3),
                Arguments.of(SheetSize.LETTER_3X10, 215.9, 279.4, 66.7, 25.4, 0, 4, 4.8, 114.3));
    }

    @ParameterizedTest
    @MethodSource("corners")
    void labels_are_where_the_sheets_numbers_say(
            SheetSize size,
            double pageWidth,
            double pageHeight,
            double width,
            double height,
            int column,
            int row,
            double left,
            double top)
            throws Exception {
        var sheet = size.geometry();
        var pdf = new LabelSheets(sheet, labels(1, 1), 0, true).pdf("Labels");

        is(PrintedSheet.page(pdf), 0, 0, pageWidth, pageHeight);
        var outlines = PrintedSheet.outlines(pdf, 0);
        assertThat(outlines).hasSize(sheet.perSheet());
        is(outlines.get(row * sheet.columns() + column), left, top, width, height);
        assertThat(outlines)
                .allMatch(
                        label ->
                                label.getMinX() > -EXACT
                                        && label.getMinY() > -EXACT
                                        && label.getMaxX() < pageWidth + EXACT
                                        && label.getMaxY() < pageHeight + EXACT);
    }

    /// What is left of the page is shared out to both sides: within a tenth of a millimetre.
    @ParameterizedTest
    @EnumSource
    void a_common_sheet_is_in_the_middle_of_its_page(SheetSize size) {
        var sheet = size.geometry();
        var last = sheet.corner(sheet.perSheet() - 1);
        assertThat(sheet.pageWidth() - last.left() - sheet.labelWidth())
                .isCloseTo(sheet.marginLeft(), within(0.1));
        assertThat(sheet.pageHeight() - last.top() - sheet.labelHeight())
                .isCloseTo(sheet.marginTop(), within(0.1));
    }

    /// ISO/IEC 18004:2015, 6.3.8 'Quiet zone': a region four modules wide around the symbol, free
    // of
    /// all other markings.
    @ParameterizedTest
    @EnumSource
    void the_quiet_zone_around_a_code_is_four_modules_wide(SheetSize size) throws Exception {
        var sheet = size.geometry();
        var label = new Label(LONG.address(), "MMMMMMMMMM WWWWWWW", "WWWW", LONG.lines());
        var pdf = new LabelSheets(sheet, List.of(label), 0, true).pdf("Labels");
        var layout = LabelLayout.of(sheet);
        var module = layout.qrSide() / QrSquare.of(label.address()).modules();
        var image = PrintedSheet.label(PrintedSheet.printed(pdf, 0), sheet, 0);

        var symbolLeft = layout.qrLeft() + 4 * module;
        var symbolTop = layout.qrTop() + 4 * module;
        var symbolSide = layout.qrSide() - 8 * module;
        // The symbol's own corner is ink; what surrounds it to four modules, less a dot for the
        // blur of its edge, is paper.
        assertThat(isInk(image, symbolLeft + module / 2, symbolTop + module / 2)).isTrue();
        for (double x = symbolLeft - 4 * module;
                x < symbolLeft + symbolSide + 4 * module;
                x += 0.05) {
            for (double y = symbolTop - 4 * module;
                    y < symbolTop + symbolSide + 4 * module;
                    y += 0.05) {
                var isInside =
                        x > symbolLeft - 0.17
                                && x < symbolLeft + symbolSide + 0.17
                                && y > symbolTop - 0.17
                                && y < symbolTop + symbolSide + 0.17;
                if (!isInside) {
                    assertThat(isInk(image, x, y)).as("%s mm, %s mm", x, y).isFalse();
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void long_names_never_leave_their_label(SheetSize size) throws Exception {
        var sheet = size.geometry();
        var pdf =
                new LabelSheets(
                                sheet,
                                java.util.Collections.nCopies(sheet.perSheet(), LONG),
                                0,
                                false)
                        .pdf("Labels");
        var labels = IntStream.range(0, sheet.perSheet()).mapToObj(at -> box(sheet, at)).toList();
        var signs = PrintedSheet.signs(pdf, 0);
        assertThat(signs).hasSizeGreaterThan(sheet.perSheet() * 40);
        for (var sign : signs) {
            assertThat(labels).as(sign.toString()).anyMatch(label -> label.contains(sign.at()));
        }
        // The code is read all the same: no word lies over it.
        var printed = PrintedSheet.printed(pdf, 0);
        assertThat(PrintedSheet.scanned(PrintedSheet.label(printed, sheet, 1)))
                .isEqualTo(LONG.address());
    }

    @Test
    void a_label_that_is_too_small_for_its_words_says_so_and_keeps_the_name() throws Exception {
        var sheet = SheetSize.A4_5X13.geometry();
        assertThat(PrintJob.of(sheet, List.of(LONG), 0).cut()).isEqualTo(1);
        assertThat(PrintJob.of(sheet, labels(1, 5), 0).cut()).isZero();
        var text = PrintedSheet.text(new LabelSheets(sheet, List.of(LONG), 0, false).pdf("Labels"));
        assertThat(text).contains("Kunigunde").contains("…");
    }

    @Test
    void a_short_name_is_set_large() throws Exception {
        var sheet = SheetSize.A4_3X8.geometry();
        var label = new Label(ADDRESS + "/a/1", "Žofie", "24-003  ♀", List.of("Clown"));
        var pdf = new LabelSheets(sheet, List.of(label), 0, false).pdf("Labels");
        var first = PrintedSheet.signs(pdf, 0).getFirst();
        assertThat(first.sign()).isEqualTo("Ž");
        // Six millimetres of type are read from two steps away.
        assertThat(first.at().getHeight()).isGreaterThan(6);
    }

    @Test
    void names_of_many_tongues_are_printed_and_a_sign_that_is_not_known_is_a_square()
            throws Exception {
        var sheet = SheetSize.A4_3X8.geometry();
        var labels =
                Stream.of("Žofie", "Łucja", "Ярослава", "Ελένη", "Noodle 🐍", "Việt", "長蛇")
                        .map(name -> new Label(ADDRESS + "/a/1", name, "24-003  ♀", List.of()))
                        .toList();
        var pdf = new LabelSheets(sheet, labels, 0, false).pdf("Labels");
        assertThat(PrintedSheet.text(pdf).replaceAll("\\s+", " "))
                .contains("Žofie", "Łucja", "Ярослава", "Ελένη", "Noodle □", "Việt", "□□", "♀");
        assertThat(PrintedSheet.fonts(pdf))
                .isNotEmpty()
                .allMatch(
                        font -> font.contains("DejaVuSansCondensed") && font.endsWith("embedded"));
        assertThat(PrintedSheet.images(pdf)).as("pictures: codes are vectors").isZero();

        var job = PrintJob.of(sheet, labels, 0);
        assertThat(job.missing()).containsExactly("🐍", "長", "蛇");
        assertThat(job.replaced()).isEqualTo(2);
    }

    @Test
    void a_sheet_that_was_used_already_goes_on_at_its_first_free_label() throws Exception {
        var sheet = SheetSize.A4_3X8.geometry();
        var labels = labels(3, 40);
        var pdf = new LabelSheets(sheet, labels, 22, false).pdf("Labels");
        assertThat(PrintedSheet.pages(pdf)).isEqualTo(2);
        assertThat(PrintJob.of(sheet, labels, 22).sheets()).isEqualTo(2);
        var first = PrintedSheet.printed(pdf, 0);
        assertThat(PrintedSheet.scanned(PrintedSheet.label(first, sheet, 21)))
                .startsWith("no code");
        assertThat(PrintedSheet.scanned(PrintedSheet.label(first, sheet, 22)))
                .isEqualTo(labels.getFirst().address());
        assertThat(PrintedSheet.scanned(PrintedSheet.label(PrintedSheet.printed(pdf, 1), sheet, 0)))
                .isEqualTo(labels.getLast().address());
    }

    @Test
    void a_label_that_is_taller_than_wide_has_its_words_below_the_code() throws Exception {
        var sheet = new SheetGeometry(100, 150, 2, 2, 3, 2, 30, 70, 2, 3);
        var pdf = new LabelSheets(sheet, List.of(LONG), 5, false).pdf("Labels");
        assertThat(PrintedSheet.scanned(PrintedSheet.label(PrintedSheet.printed(pdf, 0), sheet, 5)))
                .isEqualTo(LONG.address());
        assertThat(PrintedSheet.signs(pdf, 0))
                .isNotEmpty()
                .allMatch(sign -> box(sheet, 5).contains(sign.at()));
    }

    private static List<Label> labels(int count, int from) {
        return IntStream.range(from, from + count)
                .mapToObj(
                        id ->
                                new Label(
                                        ADDRESS + "/a/" + id,
                                        "Animal " + id,
                                        "24-%03d  ♂".formatted(id % 1000),
                                        List.of("Pastel het Clown", "Room / A / " + id)))
                .toList();
    }

    private static Rectangle2D box(SheetGeometry sheet, int place) {
        var corner = sheet.corner(place);
        return new Rectangle2D.Double(
                corner.left(), corner.top(), sheet.labelWidth(), sheet.labelHeight());
    }

    private static void is(
            Rectangle2D found, double left, double top, double width, double height) {
        assertThat(found.getX()).isCloseTo(left, within(EXACT));
        assertThat(found.getY()).isCloseTo(top, within(EXACT));
        assertThat(found.getWidth()).isCloseTo(width, within(EXACT));
        assertThat(found.getHeight()).isCloseTo(height, within(EXACT));
    }

    private static boolean isInk(BufferedImage image, double x, double y) {
        int column = Math.clamp(PrintedSheet.dots(x), 0, image.getWidth() - 1);
        int row = Math.clamp(PrintedSheet.dots(y), 0, image.getHeight() - 1);
        return image.getRaster().getSample(column, row, 0) < 128;
    }
}
