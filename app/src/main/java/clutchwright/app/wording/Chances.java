package clutchwright.app.wording;

import clutchwright.engine.probability.Fraction;
import java.math.BigInteger;
import java.util.Locale;

/// Chances as a breeder reads them.
public final class Chances {

    private static final BigInteger READABLE = BigInteger.valueOf(1024);

    private Chances() {}

    /// `3/16`; where the fraction would be unreadable, the percentage.
    public static String fraction(Fraction chance) {
        if (chance.isWhole()) {
            return "certain";
        }
        return chance.denominator().compareTo(READABLE) <= 0
                ? chance.toString()
                : percent(chance.value());
    }

    /// Three significant figures, never rounded to a certainty it is not: `18.8 %`, `0.0024 %`.
    public static String percent(double chance) {
        var percent = chance * 100;
        if (percent <= 0) {
            return "0 %";
        }
        if (percent >= 100) {
            return "100 %";
        }
        if (percent > 99.9) {
            return "over 99.9 %";
        }
        if (percent < 0.0001) {
            return "under 0.0001 %";
        }
        if (percent >= 10) {
            return trim(String.format(Locale.ROOT, "%.1f", percent)) + " %";
        }
        if (percent >= 1) {
            return trim(String.format(Locale.ROOT, "%.2f", percent)) + " %";
        }
        return trim(String.format(Locale.ROOT, "%.4f", percent)) + " %";
    }

    /// How the trade writes a chance of a het: `66%` is two thirds and `33%` one third.
    public static String het(Fraction chance) {
        if (chance.equals(Fraction.of(2, 3))) {
            return "66%";
        }
        if (chance.equals(Fraction.of(1, 3))) {
            return "33%";
        }
        var percent = chance.times(Fraction.of(100, 1));
        return percent.denominator().equals(BigInteger.ONE)
                ? percent.numerator() + "%"
                : fraction(chance);
    }

    private static String trim(String number) {
        return number.contains(".") ? number.replaceAll("0+$", "").replaceAll("\\.$", "") : number;
    }
}
