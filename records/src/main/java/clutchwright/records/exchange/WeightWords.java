package clutchwright.records.exchange;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/// Reads a weight as written, in grams where no unit is named.
final class WeightWords {

    private static final Pattern WEIGHT =
            Pattern.compile("([0-9][0-9., ]*)\\s*(g|gr|gram|grams|gm|gms|kg|kgs|oz|lb|lbs)?\\.?");
    private static final Pattern THOUSANDS = Pattern.compile("\\d{1,3}(?:[, ]\\d{3})+(?:\\.\\d+)?");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("\\d+,\\d{1,2}");

    private WeightWords() {}

    /// In grams, above zero; empty if it is no weight.
    static Optional<Double> read(String written) {
        var match = WEIGHT.matcher(written.strip().toLowerCase(Locale.ROOT));
        if (!match.matches()) {
            return Optional.empty();
        }
        var digits = match.group(1).strip();
        if (THOUSANDS.matcher(digits).matches()) {
            digits = digits.replaceAll("[, ]", "");
        } else if (DECIMAL_COMMA.matcher(digits).matches()) {
            digits = digits.replace(',', '.');
        }
        if (!digits.matches("\\d{1,9}(\\.\\d{0,6})?")) {
            return Optional.empty();
        }
        var unit = match.group(2) == null ? "g" : match.group(2);
        double grams = new BigDecimal(digits).multiply(gramsPer(unit)).doubleValue();
        return grams > 0 ? Optional.of(grams) : Optional.empty();
    }

    /// The avoirdupois pound is exactly 453.59237 g (International Yard and Pound Agreement, 1959).
    private static BigDecimal gramsPer(String unit) {
        return switch (unit) {
            case "kg", "kgs" -> BigDecimal.valueOf(1000);
            case "oz" -> new BigDecimal("28.349523125");
            case "lb", "lbs" -> new BigDecimal("453.59237");
            default -> BigDecimal.ONE;
        };
    }
}
