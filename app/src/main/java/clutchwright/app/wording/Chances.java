package clutchwright.app.wording;

import clutchwright.engine.probability.Fraction;
import java.math.BigInteger;
import java.util.List;
import java.util.Locale;

/// Chances as a breeder reads them.
public final class Chances {

    private static final BigInteger READABLE = BigInteger.valueOf(1024);

    private static final List<Fraction> CLASSIC =
            List.of(
                    Fraction.WHOLE,
                    Fraction.of(2, 3),
                    Fraction.HALF,
                    Fraction.of(1, 3),
                    Fraction.of(1, 4));

    // With a little room for rounding.
    private static final double HALF_A_PERCENT = 0.005 + 1e-6;

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

    /// The exact fraction where it is readable, and the percentage: `2/3, 66.7 %`.
    public static String both(Fraction chance) {
        return chance.isWhole() || chance.denominator().compareTo(READABLE) > 0
                ? fraction(chance)
                : chance + ", " + percent(chance.value());
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

    /// The figure of the trade's convention: 100, 66, 50, 33 or 25 % where that is right within
    /// half a percent, else the nearest whole percent, at least one.
    public static Fraction asTraded(Fraction chance) {
        if (chance.isNone()) {
            return chance;
        }
        for (var classic : CLASSIC) {
            if (Math.abs(chance.value() - classic.value()) <= HALF_A_PERCENT) {
                return classic;
            }
        }
        return Fraction.of(Math.clamp(Math.round(chance.value() * 100), 1, 99), 100);
    }

    /// What the trade calls 100 %: certain within half a percent.
    public static boolean isAsGoodAsCertain(Fraction chance) {
        return asTraded(chance).isWhole();
    }

    private static String trim(String number) {
        return number.contains(".") ? number.replaceAll("0+$", "").replaceAll("\\.$", "") : number;
    }
}
