package clutchwright.app.labels;

/// Common sheets, named by their dimensions alone.
enum SheetSize {
    A4_3X8("A4, 24 labels of 70 × 37 mm (3 × 8)"),
    A4_3X7("A4, 21 labels of 63.5 × 38.1 mm (3 × 7)"),
    A4_5X13("A4, 65 labels of 38.1 × 21.2 mm (5 × 13)"),
    LETTER_3X10("US Letter, 30 labels of 66.7 × 25.4 mm (3 × 10)");

    private final String title;

    SheetSize(String title) {
        this.title = title;
    }

    String title() {
        return title;
    }

    /// Gaps are common practice; what is left of the page is shared out to both sides.
    SheetGeometry geometry() {
        return switch (this) {
            case A4_3X8 -> new SheetGeometry(210, 297, 0, 0.5, 3, 8, 70, 37, 0, 0);
            case A4_3X7 -> new SheetGeometry(210, 297, 7.25, 15.15, 3, 7, 63.5, 38.1, 2.5, 0);
            case A4_5X13 -> new SheetGeometry(210, 297, 4.75, 10.7, 5, 13, 38.1, 21.2, 2.5, 0);
            case LETTER_3X10 ->
                    new SheetGeometry(215.9, 279.4, 4.8, 12.7, 3, 10, 66.7, 25.4, 3.1, 0);
        };
    }
}
