package clutchwright.engine.probability;

import java.math.BigInteger;
import org.jspecify.annotations.Nullable;

/// An exact rational number in lowest terms, the denominator above zero.
///
/// Most chances of a cross fit into two `long`s and stay there; what does not fit is kept exactly
/// all the same. Two fractions are equal when they are the same number.
public final class Fraction implements Comparable<Fraction> {

    public static final Fraction NONE = new Fraction(0, 1);
    public static final Fraction WHOLE = new Fraction(1, 1);
    public static final Fraction HALF = new Fraction(1, 2);

    /// Whole numbers up to here have a double of their own: 2 to the power of 53.
    private static final long EXACT_IN_DOUBLE = 1L << 53;

    private final long n;

    /// Zero where the number is in `big`.
    private final long d;

    private final @Nullable Big big;

    /// A numerator or denominator that no `long` holds.
    private record Big(BigInteger numerator, BigInteger denominator) {}

    private Fraction(long n, long d) {
        this.n = n;
        this.d = d;
        this.big = null;
    }

    private Fraction(Big big) {
        this.n = 0;
        this.d = 0;
        this.big = big;
    }

    /// @throws IllegalArgumentException if the denominator is zero
    public static Fraction of(long numerator, long denominator) {
        if (denominator == 0) {
            throw new IllegalArgumentException("the denominator of " + numerator + "/0 is zero");
        }
        if (numerator == Long.MIN_VALUE || denominator == Long.MIN_VALUE) {
            // Neither is small, so that this comes back no more.
            return of(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
        }
        return denominator > 0 ? lowest(numerator, denominator) : lowest(-numerator, -denominator);
    }

    /// @throws IllegalArgumentException if the denominator is zero
    public static Fraction of(BigInteger numerator, BigInteger denominator) {
        if (denominator.signum() == 0) {
            throw new IllegalArgumentException("the denominator of " + numerator + "/0 is zero");
        }
        if (isSmall(numerator) && isSmall(denominator)) {
            return of(numerator.longValue(), denominator.longValue());
        }
        var divisor = numerator.gcd(denominator);
        if (denominator.signum() < 0) {
            divisor = divisor.negate();
        }
        return ofLowest(numerator.divide(divisor), denominator.divide(divisor));
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
        return big == null ? BigInteger.valueOf(n) : big.numerator;
    }

    public BigInteger denominator() {
        return big == null ? BigInteger.valueOf(d) : big.denominator;
    }

    public boolean isNone() {
        return n == 0 && d != 0;
    }

    public boolean isWhole() {
        return n == 1 && d == 1;
    }

    public Fraction plus(Fraction that) {
        if (big == null && that.big == null) {
            if (d == that.d) {
                var sum = n + that.n;
                if (((n ^ sum) & (that.n ^ sum)) >= 0 && sum != Long.MIN_VALUE) {
                    return lowest(sum, d);
                }
            } else if (fits(n, that.d) && fits(that.n, d) && fits(d, that.d)) {
                var left = n * that.d;
                var right = that.n * d;
                var sum = left + right;
                if (((left ^ sum) & (right ^ sum)) >= 0 && sum != Long.MIN_VALUE) {
                    return lowest(sum, d * that.d);
                }
            }
        }
        return of(
                numerator()
                        .multiply(that.denominator())
                        .add(that.numerator().multiply(denominator())),
                denominator().multiply(that.denominator()));
    }

    public Fraction minus(Fraction that) {
        return plus(that.negated());
    }

    public Fraction times(Fraction that) {
        if (isWhole()) {
            return that;
        }
        if (that.isWhole()) {
            return this;
        }
        if (big == null && that.big == null && fits(n, that.n) && fits(d, that.d)) {
            return lowest(n * that.n, d * that.d);
        }
        return of(
                numerator().multiply(that.numerator()), denominator().multiply(that.denominator()));
    }

    /// How many parts this is, if the whole is divided into so many.
    ///
    /// @throws ArithmeticException if that is not a whole number
    public BigInteger partsOf(BigInteger parts) {
        if (big == null && isSmall(parts)) {
            var all = parts.longValue();
            if (all % d == 0 && fits(n, all / d)) {
                return BigInteger.valueOf(n * (all / d));
            }
        }
        var found = numerator().multiply(parts).divideAndRemainder(denominator());
        if (found[1].signum() != 0) {
            throw new ArithmeticException(this + " of " + parts + " is not whole");
        }
        return found[0];
    }

    /// @throws IllegalArgumentException if the divisor is zero
    public Fraction dividedBy(Fraction that) {
        if (big == null && that.big == null && fits(n, that.d) && fits(d, that.n)) {
            return of(n * that.d, d * that.n);
        }
        return of(
                numerator().multiply(that.denominator()), denominator().multiply(that.numerator()));
    }

    /// @param exponent zero or more; anything to the power of zero is one
    public Fraction power(int exponent) {
        if (exponent == 1 || (exponent > 0 && (isNone() || isWhole()))) {
            return this;
        }
        return ofLowest(numerator().pow(exponent), denominator().pow(exponent));
    }

    /// One less this: the chance that it does not happen.
    public Fraction complement() {
        return WHOLE.minus(this);
    }

    /// The nearest double, also where numerator and denominator alone would overflow one. What is
    /// nearer to zero than the smallest normal double is rounded twice.
    public double value() {
        if (big == null && Math.abs(n) <= EXACT_IN_DOUBLE && d <= EXACT_IN_DOUBLE) {
            return (double) n / d;
        }
        var numerator = numerator().abs();
        // Enough binary digits for a double and some more; whatever is left over makes the last one
        // odd, so that nothing looks like the middle between two doubles that is not.
        var shift = 80 - numerator.bitLength() + denominator().bitLength();
        var parts =
                shift >= 0
                        ? numerator.shiftLeft(shift).divideAndRemainder(denominator())
                        : numerator.divideAndRemainder(denominator().shiftLeft(-shift));
        var digits = parts[1].signum() == 0 ? parts[0] : parts[0].setBit(0);
        return numerator().signum() * Math.scalb(digits.doubleValue(), -shift);
    }

    @Override
    public int compareTo(Fraction that) {
        if (big == null && that.big == null && fits(n, that.d) && fits(that.n, d)) {
            return Long.compare(n * that.d, that.n * d);
        }
        return numerator()
                .multiply(that.denominator())
                .compareTo(that.numerator().multiply(denominator()));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Fraction that
                && n == that.n
                && d == that.d
                && (big == null ? that.big == null : big.equals(that.big));
    }

    @Override
    public int hashCode() {
        return big == null ? 31 * Long.hashCode(n) + Long.hashCode(d) : big.hashCode();
    }

    /// `n/d`, also for whole numbers: `1/1`.
    @Override
    public String toString() {
        return numerator() + "/" + denominator();
    }

    private Fraction negated() {
        return big == null
                ? new Fraction(-n, d)
                : new Fraction(new Big(big.numerator.negate(), big.denominator));
    }

    private static Fraction lowest(long numerator, long denominator) {
        if (numerator == 0) {
            return NONE;
        }
        var divisor = greatestCommonDivisor(Math.abs(numerator), denominator);
        return new Fraction(numerator / divisor, denominator / divisor);
    }

    /// Small and big never hold the same number, so that equality need not compare across.
    private static Fraction ofLowest(BigInteger numerator, BigInteger denominator) {
        return isSmall(numerator) && isSmall(denominator)
                ? new Fraction(numerator.longValue(), denominator.longValue())
                : new Fraction(new Big(numerator, denominator));
    }

    /// `Long.MIN_VALUE` has no negative and counts as big.
    private static boolean isSmall(BigInteger number) {
        return number.bitLength() < Long.SIZE
                && (number.signum() >= 0 || number.longValue() != Long.MIN_VALUE);
    }

    private static boolean fits(long a, long b) {
        var low = a * b;
        return Math.multiplyHigh(a, b) == low >> 63 && low != Long.MIN_VALUE;
    }

    /// Stein's binary algorithm; both above zero. Denominators of a cross are mostly powers of
    /// two, where it ends at once.
    private static long greatestCommonDivisor(long a, long b) {
        var twos = Math.min(Long.numberOfTrailingZeros(a), Long.numberOfTrailingZeros(b));
        var x = a >>> Long.numberOfTrailingZeros(a);
        var y = b >>> Long.numberOfTrailingZeros(b);
        while (x != y && x != 1 && y != 1) {
            if (x > y) {
                x -= y;
                x >>>= Long.numberOfTrailingZeros(x);
            } else {
                y -= x;
                y >>>= Long.numberOfTrailingZeros(y);
            }
        }
        return Math.min(x, y) << twos;
    }
}
