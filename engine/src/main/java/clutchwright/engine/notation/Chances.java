package clutchwright.engine.notation;

import clutchwright.engine.probability.Fraction;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;

/// Chances as breeders write them: `66%` is two thirds and `33%` one third, other numbers are
/// exact.
final class Chances {

    static final Fraction TWO_THIRDS = Fraction.of(2, 3);
    static final Fraction THIRD = Fraction.of(1, 3);

    private static final Fraction HUNDRED = Fraction.of(100, 1);
    private static final int MOST_DECIMALS = 6;

    private Chances() {}

    /// @param number digits with at most one point or comma
    /// @return empty if it is not above 0 and at most 100
    static Optional<Fraction> ofPercent(String number) {
        if (number.equals("66")) {
            return Optional.of(TWO_THIRDS);
        }
        if (number.equals("33")) {
            return Optional.of(THIRD);
        }
        var plain = number.replace(',', '.');
        if (plain.indexOf('.') != plain.lastIndexOf('.')) {
            return Optional.empty();
        }
        var exact = new BigDecimal(plain);
        return within(
                Fraction.of(exact.unscaledValue(), BigInteger.TEN.pow(exact.scale()))
                        .dividedBy(HUNDRED));
    }

    /// `2/3`, and `50/50` for a half.
    static Optional<Fraction> ofFraction(String above, String below) {
        if (above.equals("50") && below.equals("50")) {
            return Optional.of(Fraction.HALF);
        }
        var denominator = new BigInteger(below);
        return denominator.signum() == 0
                ? Optional.empty()
                : within(Fraction.of(new BigInteger(above), denominator));
    }

    /// The way this house writes a chance below one, so that it reads back as the same number.
    static String write(Fraction chance) {
        if (chance.equals(TWO_THIRDS)) {
            return "66%";
        }
        if (chance.equals(THIRD)) {
            return "33%";
        }
        var percent = chance.times(HUNDRED);
        var scaled = percent.times(Fraction.of(BigInteger.TEN.pow(MOST_DECIMALS), BigInteger.ONE));
        boolean terminates = scaled.denominator().equals(BigInteger.ONE);
        if (terminates) {
            var written =
                    new BigDecimal(scaled.numerator(), MOST_DECIMALS)
                            .stripTrailingZeros()
                            .toPlainString();
            if (!written.equals("66") && !written.equals("33")) {
                return written + "%";
            }
        }
        return chance.numerator() + "/" + chance.denominator();
    }

    private static Optional<Fraction> within(Fraction chance) {
        boolean isChance = !chance.isNone() && chance.compareTo(Fraction.WHOLE) <= 0;
        return isChance ? Optional.of(chance) : Optional.empty();
    }
}
