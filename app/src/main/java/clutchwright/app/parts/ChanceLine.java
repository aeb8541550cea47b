package clutchwright.app.parts;

/// A hairline whose inked length is a chance.
///
/// It decorates a figure that stands beside it in text, and is hidden from readers of text.
public final class ChanceLine {

    private ChanceLine() {}

    /// @param chance 0 to 1
    public static Markup of(double chance) {
        return new Markup()
                .raw(
                        "<svg class=\"hair\" viewBox=\"0 0 100 2\" preserveAspectRatio=\"none\""
                                + " aria-hidden=\"true\" focusable=\"false\"><rect class=\"hair-line\""
                                + " width=\"100\" height=\"2\"/><rect class=\"hair-ink\""
                                + " width=\"%.2f\" height=\"2\"/></svg>",
                        Math.clamp(chance, 0.0, 1.0) * 100);
    }
}
