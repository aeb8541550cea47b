package clutchwright.app.labels;

import static clutchwright.app.labels.LabelLayout.POINTS_PER_MILLIMETRE;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;

/// Labels on sheets, as a PDF: vectors and embedded type alone, so that a printer loses nothing.
///
/// @param first which label of the first sheet is the first free one, from zero
/// @param outlined whether the labels' edges are drawn, to try the sheet on plain paper
record LabelSheets(SheetGeometry geometry, List<Label> labels, int first, boolean outlined) {

    LabelSheets {
        labels = List.copyOf(labels);
        if (first < 0 || first >= geometry.perSheet()) {
            throw new IllegalArgumentException(
                    "first label %d of %d".formatted(first, geometry.perSheet()));
        }
    }

    byte[] pdf(String title) {
        var bytes = new ByteArrayOutputStream();
        try (var type = TypeCase.open();
                var document = new PDDocument()) {
            document.getDocumentInformation().setTitle(title);
            document.getDocumentCatalog().setLanguage("en");
            asTheyAre(document);
            draw(document, type);
            document.save(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /// Asks the viewer not to fit the page to the printer: the labels would miss the sheet.
    private static void asTheyAre(PDDocument document) {
        var catalog = document.getDocumentCatalog();
        var preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        catalog.setViewerPreferences(preferences);
    }

    private void draw(PDDocument document, TypeCase type) throws IOException {
        var plain = type.plain().in(document);
        var strong = type.strong().in(document);
        for (int sheet = 0; sheet < geometry.sheets(labels.size(), first); sheet++) {
            var page =
                    new PDPage(
                            new PDRectangle(
                                    points(geometry.pageWidth()), points(geometry.pageHeight())));
            document.addPage(page);
            try (var ink = new PDPageContentStream(document, page)) {
                for (int place = 0; place < geometry.perSheet(); place++) {
                    var index = sheet * geometry.perSheet() + place - first;
                    var corner = geometry.corner(place);
                    if (outlined) {
                        outline(ink, corner);
                    }
                    if (index >= 0 && index < labels.size()) {
                        label(ink, corner, labels.get(index), type, plain, strong);
                    }
                }
            }
        }
    }

    private void outline(PDPageContentStream ink, SheetGeometry.Corner corner) throws IOException {
        ink.setLineWidth(0.4f);
        ink.setStrokingColor(0.55f);
        rectangle(ink, corner.left(), corner.top(), geometry.labelWidth(), geometry.labelHeight());
        ink.stroke();
    }

    private void label(
            PDPageContentStream ink,
            SheetGeometry.Corner corner,
            Label label,
            TypeCase type,
            PDFont plain,
            PDFont strong)
            throws IOException {
        var layout = LabelLayout.of(geometry);
        var square = QrSquare.of(label.address());
        var module = layout.qrSide() / square.modules();
        ink.setNonStrokingColor(0f);
        for (var bar : square.bars()) {
            rectangle(
                    ink,
                    corner.left() + layout.qrLeft() + bar.x() * module,
                    corner.top() + layout.qrTop() + bar.y() * module,
                    bar.length() * module,
                    module);
        }
        ink.fill();
        for (var line : layout.set(type, label).lines()) {
            ink.beginText();
            ink.setFont(line.strong() ? strong : plain, (float) line.size());
            ink.setTextMatrix(
                    Matrix.getTranslateInstance(
                            points(corner.left() + layout.words().left()),
                            points(geometry.pageHeight() - corner.top() - layout.words().top())
                                    - (float) line.baseline()));
            ink.showText(line.text());
            ink.endText();
        }
    }

    private void rectangle(
            PDPageContentStream ink, double left, double top, double width, double height)
            throws IOException {
        ink.addRect(
                points(left),
                points(geometry.pageHeight() - top - height),
                points(width),
                points(height));
    }

    private static float points(double millimetres) {
        return (float) (millimetres * POINTS_PER_MILLIMETRE);
    }
}
