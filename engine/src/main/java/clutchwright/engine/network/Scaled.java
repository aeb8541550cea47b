package clutchwright.engine.network;

/// The logarithm of a product of many weights, with few logarithms taken.
final class Scaled {

    private static final double SMALL = 0x1p-300;
    private static final double LARGE = 0x1p300;

    private double product = 1;
    private double log;

    /// @param factor not below zero, finite
    void times(double factor) {
        if (factor < SMALL || factor > LARGE) {
            log += Math.log(factor);
            return;
        }
        product *= factor;
        if (product < SMALL || product > LARGE) {
            log += Math.log(product);
            product = 1;
        }
    }

    void timesExponential(double logFactor) {
        log += logFactor;
    }

    /// Minus infinity if a factor was zero.
    double log() {
        return log + Math.log(product);
    }
}
