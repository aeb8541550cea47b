package clutchwright.app.labels;

/// Where the labels are on a sheet; everything in millimetres, from the page's upper left corner.
///
/// @param marginLeft from the page's edge to the first label
/// @param marginTop from the page's edge to the first label
/// @param gapAcross between two labels of a row
/// @param gapDown between two rows
public record SheetGeometry(
        double pageWidth,
        double pageHeight,
        double marginLeft,
        double marginTop,
        int columns,
        int rows,
        double labelWidth,
        double labelHeight,
        double gapAcross,
        double gapDown) {

    /// Smaller ones have no room for a QR code that a phone reads and a word beside it.
    static final double LEAST_WIDTH = 25;

    static final double LEAST_HEIGHT = 15;

    /// What a sum of decimal millimetres may be off by.
    private static final double ROUNDING = 1e-6;

    public SheetGeometry {
        if (columns < 1 || rows < 1 || !(labelWidth > 0) || !(labelHeight > 0)) {
            throw new IllegalArgumentException(
                    "%d columns and %d rows of %s by %s mm"
                            .formatted(columns, rows, labelWidth, labelHeight));
        }
    }

    /// A label's upper left corner.
    record Corner(double left, double top) {}

    int perSheet() {
        return columns * rows;
    }

    /// @param index from zero, row by row
    Corner corner(int index) {
        if (index < 0 || index >= perSheet()) {
            throw new IllegalArgumentException("label %d of %d".formatted(index, perSheet()));
        }
        int row = index / columns;
        return new Corner(
                marginLeft + (index % columns) * (labelWidth + gapAcross),
                marginTop + row * (labelHeight + gapDown));
    }

    /// How far the last column reaches over the page's right edge; zero where it does not.
    double overRight() {
        return over(marginLeft + columns * labelWidth + (columns - 1) * gapAcross - pageWidth);
    }

    /// How far the last row reaches over the page's lower edge; zero where it does not.
    double overBottom() {
        return over(marginTop + rows * labelHeight + (rows - 1) * gapDown - pageHeight);
    }

    private static double over(double millimetres) {
        return millimetres > ROUNDING ? millimetres : 0;
    }

    /// How many sheets so many labels need if the first one goes to a place other than the first.
    ///
    /// @param first from zero
    int sheets(int labels, int first) {
        return labels == 0 ? 0 : Math.ceilDiv(first + labels, perSheet());
    }
}
