package clutchwright.app.labels;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.List;

/// A QR code as dark bars on a square, its quiet zone around it.
///
/// @param modules across, with the quiet zone
/// @param bars the dark ones of a row that touch, together; from the square's upper left corner
record QrSquare(int modules, List<Bar> bars) {

    /// Free modules on each side: ISO/IEC 18004, 'Quiet zone'.
    static final int QUIET = 4;

    QrSquare {
        bars = List.copyOf(bars);
    }

    /// Dark modules side by side.
    record Bar(int x, int y, int length) {}

    /// With error correction M: a seventh of it may be dirt.
    ///
    /// @throws IllegalArgumentException if the text is too long for any code
    static QrSquare of(String text) {
        try {
            var matrix = Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
            return new QrSquare(matrix.getWidth() + 2 * QUIET, bars(matrix));
        } catch (WriterException e) {
            throw new IllegalArgumentException("no QR code for " + text, e);
        }
    }

    private static List<Bar> bars(ByteMatrix matrix) {
        var bars = new ArrayList<Bar>();
        for (int y = 0; y < matrix.getHeight(); y++) {
            int x = 0;
            while (x < matrix.getWidth()) {
                int end = x;
                while (end < matrix.getWidth() && matrix.get(end, y) == 1) {
                    end++;
                }
                if (end > x) {
                    bars.add(new Bar(x + QUIET, y + QUIET, end - x));
                }
                x = end + 1;
            }
        }
        return bars;
    }
}
