package clutchwright.app.labels;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.LinkedHashSet;
import java.util.Set;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/// One face of the labels' font: how wide a text is, and which signs it has.
///
/// It knows Latin, Greek, Cyrillic and more; what it does not know is shown as an open square.
final class Typeface implements AutoCloseable {

    private static final int OPEN_SQUARE = 0x25A1;
    private static final int VARIATIONS_FROM = 0xFE00;
    private static final int VARIATIONS_TO = 0xFE0F;

    private final TrueTypeFont font;
    private final CmapLookup glyphs;

    private Typeface(TrueTypeFont font, CmapLookup glyphs) {
        this.font = font;
        this.glyphs = glyphs;
    }

    static Typeface plain() {
        return read("DejaVuSansCondensed.ttf");
    }

    static Typeface strong() {
        return read("DejaVuSansCondensed-Bold.ttf");
    }

    private static Typeface read(String file) {
        try (var stream = Typeface.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException("the program lacks its font " + file);
            }
            var font = new TTFParser().parse(new RandomAccessReadBuffer(stream));
            // Widths are added up sign by sign, which ligatures would belie.
            font.setEnableGsub(false);
            return new Typeface(font, font.getUnicodeCmapLookup());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /// The text with only such signs as the font has.
    String printable(String text) {
        var printable = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFC)
                .codePoints()
                .filter(sign -> !isUnseen(sign))
                .map(Typeface::blankForControls)
                .map(sign -> isKnown(sign) ? sign : OPEN_SQUARE)
                .forEach(printable::appendCodePoint);
        return printable.toString().replaceAll(" +", " ").strip();
    }

    /// The signs of a text that the font lacks.
    Set<String> missingIn(String text) {
        var missing = new LinkedHashSet<String>();
        Normalizer.normalize(text, Normalizer.Form.NFC)
                .codePoints()
                .filter(sign -> !isUnseen(sign))
                .map(Typeface::blankForControls)
                .filter(sign -> !isKnown(sign))
                .mapToObj(Character::toString)
                .forEach(missing::add);
        return missing;
    }

    /// In points, of a text that is printable.
    double width(String text, double size) {
        return text.codePoints().mapToDouble(this::advance).sum() * size;
    }

    PDFont in(PDDocument document) throws IOException {
        return PDType0Font.load(document, font, true);
    }

    private double advance(int sign) {
        try {
            return font.getAdvanceWidth(glyphs.getGlyphId(sign)) / (double) font.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private boolean isKnown(int sign) {
        return glyphs.getGlyphId(sign) != 0;
    }

    /// What only says how its neighbours are joined.
    private static boolean isUnseen(int sign) {
        return Character.getType(sign) == Character.FORMAT
                || (sign >= VARIATIONS_FROM && sign <= VARIATIONS_TO);
    }

    private static int blankForControls(int sign) {
        return Character.isISOControl(sign) || Character.isWhitespace(sign) ? ' ' : sign;
    }

    @Override
    public void close() {
        try {
            font.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
