package clutchwright.app.labels;

import clutchwright.app.labels.Typesetting.Paragraph;
import java.util.ArrayList;
import java.util.List;

/// Where things are on a label of a size: the QR code at the left and words beside it, or words
/// below it on a label that is taller than wide. Millimetres from the label's upper left corner.
record LabelLayout(double qrLeft, double qrTop, double qrSide, Box words) {

    static final double POINTS_PER_MILLIMETRE = 72 / 25.4;

    /// So far a printer may miss the label.
    private static final double EDGE = 1.2;

    private static final double LARGEST_QR = 27;

    record Box(double left, double top, double width, double height) {}

    static LabelLayout of(SheetGeometry sheet) {
        return sheet.labelWidth() >= 1.3 * sheet.labelHeight() ? wide(sheet) : tall(sheet);
    }

    private static LabelLayout wide(SheetGeometry sheet) {
        var side =
                Math.min(
                        LARGEST_QR,
                        Math.min(sheet.labelHeight() - 2 * EDGE, sheet.labelWidth() * 0.52));
        var left = EDGE + side + 0.3;
        return new LabelLayout(
                EDGE,
                (sheet.labelHeight() - side) / 2,
                side,
                new Box(
                        left,
                        2 * EDGE,
                        sheet.labelWidth() - left - 1.7 * EDGE,
                        sheet.labelHeight() - 4 * EDGE));
    }

    private static LabelLayout tall(SheetGeometry sheet) {
        var side =
                Math.min(
                        LARGEST_QR,
                        Math.min(sheet.labelWidth() - 2 * EDGE, sheet.labelHeight() * 0.58));
        return new LabelLayout(
                (sheet.labelWidth() - side) / 2,
                EDGE,
                side,
                new Box(
                        2 * EDGE,
                        EDGE + side,
                        sheet.labelWidth() - 4 * EDGE,
                        sheet.labelHeight() - side - 2.5 * EDGE));
    }

    Typesetting.Page set(TypeCase type, Label label) {
        return new Typesetting(
                        type,
                        words.width() * POINTS_PER_MILLIMETRE,
                        words.height() * POINTS_PER_MILLIMETRE)
                .set(paragraphs(label));
    }

    /// Large type for what is read from a step away, small type for the rest.
    private List<Paragraph> paragraphs(Label label) {
        var height = words.height() * POINTS_PER_MILLIMETRE;
        var paragraphs = new ArrayList<Paragraph>();
        paragraphs.add(new Paragraph(label.head(), true, between(9, 0.26 * height, 24), 5.5, 2));
        paragraphs.add(new Paragraph(label.second(), true, between(7, 0.17 * height, 15), 5, 1));
        for (var line : label.lines()) {
            paragraphs.add(new Paragraph(line, false, between(5.5, 0.12 * height, 10), 4.5, 4));
        }
        return paragraphs;
    }

    private static double between(double least, double wanted, double most) {
        return Math.clamp(wanted, least, most);
    }
}
