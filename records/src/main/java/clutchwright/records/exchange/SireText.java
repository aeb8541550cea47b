package clutchwright.records.exchange;

import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import clutchwright.records.animals.Tag;
import java.math.BigInteger;
import java.util.stream.Collectors;

/// Sires as our own files write them; [ParentCell#readOwn] reads it back exactly.
final class SireText {

    private SireText() {}

    static String one(Tag tag) {
        return tag.value().contains("|") ? escaped(tag) : tag.value();
    }

    /// Tags divided by `|`; with weights unless all are alike.
    static String oneOf(Distribution<Tag> candidates) {
        var chances = candidates.chances().values();
        boolean alike = chances.stream().distinct().count() == 1;
        boolean decimal = chances.stream().allMatch(SireText::isShortDecimal);
        var common =
                chances.stream()
                        .map(Fraction::denominator)
                        .reduce(BigInteger.ONE, SireText::leastCommonMultiple);
        return candidates.chances().entrySet().stream()
                .map(
                        entry ->
                                escaped(entry.getKey())
                                        + (alike
                                                ? ""
                                                : ":" + weight(entry.getValue(), decimal, common)))
                .collect(Collectors.joining("|"));
    }

    private static String weight(Fraction chance, boolean decimal, BigInteger common) {
        return decimal
                ? new java.math.BigDecimal(chance.numerator())
                        .divide(new java.math.BigDecimal(chance.denominator()))
                        .toPlainString()
                : chance.numerator().multiply(common.divide(chance.denominator())).toString();
    }

    /// At most six places behind the point.
    private static boolean isShortDecimal(Fraction chance) {
        return BigInteger.TEN.pow(6).mod(chance.denominator()).signum() == 0;
    }

    private static BigInteger leastCommonMultiple(BigInteger one, BigInteger other) {
        return one.multiply(other).divide(one.gcd(other));
    }

    private static String escaped(Tag tag) {
        return tag.value().replaceAll("[\\\\|:]", "\\\\$0");
    }
}
