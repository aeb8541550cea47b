package clutchwright.engine.probability;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/// An exact rational number in lowest terms, the denominator above zero.
///
/// Most chances of a cross fit into two `long`s and stay there; what does not fit is kept exactly
/// all the same. Two fractions are equal when they are the same number.
public final class Fraction implements Comparable<Fraction> {

    public static final Fraction NONE = new Fraction(BigInteger.ZERO, BigInteger.ONE);
    public static final Fraction WHOLE = new Fraction(BigInteger.ONE, BigInteger.ONE);
    public static final Fraction HALF = of(1, 2);

    private final BigInteger numerator;
    private final BigInteger denominator;

    private Fraction(BigInteger numerator, BigInteger denominator) {
        this.numerator = numerator;
        this.denominator = denominator;
    }

    /// @throws IllegalArgumentException if the denominator is zero
    public static Fraction of(long numerator, long denominator) {
        return of(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    /// @throws IllegalArgumentException if the denominator is zero
    public static Fraction of(BigInteger numerator, BigInteger denominator) {
        if (denominator.signum() == 0) {
            throw new IllegalArgumentException("the denominator of " + numerator + "/0 is zero");
        }
        var divisor = numerator.gcd(denominator);
        if (denominator.signum() < 0) {
            divisor = divisor.negate();
        }
        return new Fraction(numerator.divide(divisor), denominator.divide(divisor));
    }

    /// Reads `n/d` or a whole number.
    ///
    /// @throws IllegalArgumentException if the text is neither
    public static Fraction parse(String text) {
        var parts = text.strip().split("/", -1);
        try {
            return switch (parts.length) {
                case 1 -> of(new BigInteger(parts[0].strip()), BigInteger.ONE);
                case 2 -> of(new BigInteger(parts[0].strip()), new BigInteger(parts[1].strip()));
                default -> throw new IllegalArgumentException("not a fraction n/d: " + text);
            };
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("not a fraction n/d: " + text, e);
        }
    }

    public BigInteger numerator() {
        return numerator;
    }

    public BigInteger denominator() {
        return denominator;
    }

    public boolean isNone() {
        return numerator.signum() == 0;
    }

    public boolean isWhole() {
        return equals(WHOLE);
    }

    public Fraction plus(Fraction that) {
        return of(
                numerator.multiply(that.denominator).add(that.numerator.multiply(denominator)),
                denominator.multiply(that.denominator));
    }

    public Fraction minus(Fraction that) {
        return of(
                numerator.multiply(that.denominator).subtract(that.numerator.multiply(denominator)),
                denominator.multiply(that.denominator));
    }

    public Fraction times(Fraction that) {
        return of(numerator.multiply(that.numerator), denominator.multiply(that.denominator));
    }

    /// @throws IllegalArgumentException if the divisor is zero
    public Fraction dividedBy(Fraction that) {
        return of(numerator.multiply(that.denominator), denominator.multiply(that.numerator));
    }

    /// @param exponent zero or more; anything to the power of zero is one
    public Fraction power(int exponent) {
        return new Fraction(numerator.pow(exponent), denominator.pow(exponent));
    }

    /// One less this: the chance that it does not happen.
    public Fraction complement() {
        return WHOLE.minus(this);
    }

    /// The nearest double, also where numerator and denominator alone would overflow one.
    public double value() {
        return new BigDecimal(numerator)
                .divide(new BigDecimal(denominator), MathContext.DECIMAL64)
                .doubleValue();
    }

    @Override
    public int compareTo(Fraction that) {
        return numerator.multiply(that.denominator).compareTo(that.numerator.multiply(denominator));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Fraction that
                && numerator.equals(that.numerator)
                && denominator.equals(that.denominator);
    }

    @Override
    public int hashCode() {
        return 31 * numerator.hashCode() + denominator.hashCode();
    }

    /// `n/d`, also for whole numbers: `1/1`.
    @Override
    public String toString() {
        return numerator + "/" + denominator;
    }
}
