package clutchwright.engine.probability;

/// The standard normal distribution.
///
/// The series of G. Marsaglia, "Evaluating the normal distribution", Journal of Statistical
/// Software 11(4), 2004; in the tail the continued fraction of Laplace.
public final class Normal {

    private static final double TAIL = 4;
    private static final int TERMS = 200;
    private static final double ROOT_OF_TWO_PI = Math.sqrt(2 * Math.PI);

    private Normal() {}

    public static double density(double x) {
        return Math.exp(-x * x / 2) / ROOT_OF_TWO_PI;
    }

    /// The chance of a value up to that; absolute error below 1e-15.
    public static double below(double x) {
        return x > 0 ? 1 - above(x) : above(-x);
    }

    /// The chance of a value above that; relative error below 1e-12 in the tail as well.
    public static double above(double x) {
        if (x < 0) {
            return 1 - above(-x);
        }
        return x > TAIL ? density(x) / fraction(x) : 0.5 - series(x);
    }

    /// The value that is exceeded with chance 1 - p.
    ///
    /// @param p within 0 to 1, both excluded
    /// @throws IllegalArgumentException if it is not
    public static double quantile(double p) {
        if (!(p > 0 && p < 1)) {
            throw new IllegalArgumentException("a quantile at " + p + ", not within 0 to 1");
        }
        var low = -40.0;
        var high = 40.0;
        // Halving is plain and never fails; sixty halvings leave nothing of the range.
        for (var step = 0; step < 70; step++) {
            var middle = (low + high) / 2;
            if (p < 0.5 ? above(-middle) < p : below(middle) < p) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static double series(double x) {
        var sum = x;
        var term = x;
        for (var k = 3; k < TERMS && sum + term != sum; k += 2) {
            term *= x * x / k;
            sum += term;
        }
        return sum * density(x);
    }

    private static double fraction(double x) {
        var fraction = x;
        for (var k = TERMS; k > 0; k--) {
            fraction = x + k / fraction;
        }
        return fraction;
    }
}
