package clutchwright.app.labels;

import clutchwright.app.parts.Markup;

/// The first sheet in small: which of its labels are printed.
final class SheetDrawing {

    private SheetDrawing() {}

    static Markup of(SheetGeometry sheet, int labels, int first) {
        var drawing =
                new Markup()
                        .raw(
                                "<svg class=\"sheet\" viewBox=\"0 0 %.1f %.1f\" role=\"img\""
                                        + " aria-label=\"%s\">",
                                sheet.pageWidth(),
                                sheet.pageHeight(),
                                "The first sheet: labels %d to %d of %d are printed"
                                        .formatted(
                                                first + 1,
                                                Math.min(first + labels, sheet.perSheet()),
                                                sheet.perSheet()))
                        .raw(
                                "<rect class=\"page\" width=\"%.1f\" height=\"%.1f\"/>",
                                sheet.pageWidth(), sheet.pageHeight());
        for (int place = 0; place < sheet.perSheet(); place++) {
            var corner = sheet.corner(place);
            drawing.raw(
                    "<rect class=\"%s\" x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\""
                            + " rx=\"1.5\"/>",
                    place >= first && place < first + labels ? "used" : "free",
                    corner.left() + 0.5,
                    corner.top() + 0.5,
                    sheet.labelWidth() - 1,
                    sheet.labelHeight() - 1);
        }
        return drawing.raw("</svg>");
    }
}
