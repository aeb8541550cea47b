package clutchwright.app.labels;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/// A PDF as a printer and a reader see it: in millimetres from the page's upper left corner.
final class PrintedSheet {

    private static final double MILLIMETRES_PER_POINT = 25.4 / 72;
    private static final int DOTS_PER_INCH = 300;

    private PrintedSheet() {}

    static int pages(byte[] pdf) throws IOException {
        try (var document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }

    static Rectangle2D page(byte[] pdf) throws IOException {
        try (var document = Loader.loadPDF(pdf)) {
            var box = document.getPage(0).getMediaBox();
            return millimetres(0, 0, box.getWidth(), box.getHeight());
        }
    }

    /// The rectangles that are stroked, in the order in which they are drawn.
    static List<Rectangle2D> outlines(byte[] pdf, int page) throws IOException {
        try (var document = Loader.loadPDF(pdf)) {
            var rectangles = new Rectangles(document.getPage(page));
            rectangles.processPage(document.getPage(page));
            return rectangles.stroked;
        }
    }

    /// Where each sign of the text is, with its ascenders and descenders.
    static List<Placed> signs(byte[] pdf, int page) throws IOException {
        try (var document = Loader.loadPDF(pdf)) {
            var signs = new ArrayList<Placed>();
            var stripper =
                    new PDFTextStripper() {
                        @Override
                        protected void writeString(String text, List<TextPosition> positions) {
                            for (var at : positions) {
                                signs.add(
                                        new Placed(
                                                at.getUnicode(),
                                                millimetres(
                                                        at.getXDirAdj(),
                                                        at.getYDirAdj()
                                                                - 0.76 * at.getFontSizeInPt(),
                                                        at.getWidthDirAdj(),
                                                        at.getFontSizeInPt())));
                            }
                        }
                    };
            stripper.setStartPage(page + 1);
            stripper.setEndPage(page + 1);
            stripper.getText(document);
            return signs;
        }
    }

    static String text(byte[] pdf) throws IOException {
        try (var document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    static List<String> fonts(byte[] pdf) throws IOException {
        try (var document = Loader.loadPDF(pdf)) {
            var names = new ArrayList<String>();
            var resources = document.getPage(0).getResources();
            for (var name : resources.getFontNames()) {
                var font = resources.getFont(name);
                names.add(font.getName() + (font.isEmbedded() ? " embedded" : " missing"));
            }
            return names;
        }
    }

    static int images(byte[] pdf) throws IOException {
        try (var document = Loader.loadPDF(pdf)) {
            int images = 0;
            for (var name : document.getPage(0).getResources().getXObjectNames()) {
                images += name.equals(COSName.IMAGE) ? 0 : 1;
            }
            return images;
        }
    }

    static BufferedImage printed(byte[] pdf, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document)
                    .renderImageWithDPI(page, DOTS_PER_INCH, ImageType.GRAY);
        }
    }

    /// The part of the printed page that one label covers.
    static BufferedImage label(BufferedImage page, SheetGeometry sheet, int place) {
        var corner = sheet.corner(place);
        int left = dots(corner.left());
        int top = dots(corner.top());
        return page.getSubimage(
                left,
                top,
                Math.min(dots(sheet.labelWidth()), page.getWidth() - left),
                Math.min(dots(sheet.labelHeight()), page.getHeight() - top));
    }

    /// What a phone reads of it. The reader is the one that looks at every likely corner: the
    /// simple one takes the first three, and in one of sixty codes the data looks like a corner.
    static String scanned(BufferedImage image) {
        try {
            var found = new QRCodeMultiReader().decodeMultiple(bitmap(image));
            return found.length == 1 ? found[0].getText() : found.length + " codes";
        } catch (NotFoundException e) {
            return "no code: " + e;
        }
    }

    private static BinaryBitmap bitmap(BufferedImage image) {
        int[] pixels =
                image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        return new BinaryBitmap(
                new HybridBinarizer(
                        new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels)));
    }

    static int dots(double millimetres) {
        return (int) Math.round(millimetres / 25.4 * DOTS_PER_INCH);
    }

    private static Rectangle2D millimetres(double x, double y, double width, double height) {
        return new Rectangle2D.Double(
                x * MILLIMETRES_PER_POINT,
                y * MILLIMETRES_PER_POINT,
                width * MILLIMETRES_PER_POINT,
                height * MILLIMETRES_PER_POINT);
    }

    record Placed(String sign, Rectangle2D at) {}

    /// Follows the page's own drawing operators.
    private static final class Rectangles extends PDFGraphicsStreamEngine {

        private final List<Rectangle2D> stroked = new ArrayList<>();
        private final List<Rectangle2D> path = new ArrayList<>();
        private final double height;

        private Rectangles(PDPage page) {
            super(page);
            height = page.getMediaBox().getHeight();
        }

        @Override
        public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
            path.add(
                    millimetres(
                            a.getX(), height - c.getY(), c.getX() - a.getX(), c.getY() - a.getY()));
        }

        @Override
        public void strokePath() {
            stroked.addAll(path);
            path.clear();
        }

        @Override
        public void fillPath(int rule) {
            path.clear();
        }

        @Override
        public void fillAndStrokePath(int rule) {
            path.clear();
        }

        @Override
        public void endPath() {
            path.clear();
        }

        @Override
        public void drawImage(PDImage image) {}

        @Override
        public void clip(int rule) {}

        @Override
        public void moveTo(float x, float y) {}

        @Override
        public void lineTo(float x, float y) {}

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {}

        @Override
        public Point2D getCurrentPoint() {
            return new Point2D.Float();
        }

        @Override
        public void closePath() {}

        @Override
        public void shadingFill(COSName shading) {}
    }
}
