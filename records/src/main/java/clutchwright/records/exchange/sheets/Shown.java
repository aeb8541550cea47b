package clutchwright.records.exchange.sheets;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.regex.Pattern;

/// A number of a workbook as its cell shows it: a date, a share in percent, a padded number.
final class Shown {

    private static final Pattern NOT_OF_THE_PATTERN =
            Pattern.compile("\"[^\"]*\"|\\[[^]]*]|\\\\.|_.|\\*.");
    private static final Pattern DATE_LETTERS = Pattern.compile("[dy]|m{3,}");
    private static final Pattern FIXED_DECIMALS = Pattern.compile("0\\.(0+)");
    private static final Pattern PADDED = Pattern.compile("0{2,}");
    private static final Pattern PERCENT = Pattern.compile("0(\\.0+)?%");

    /// Day 0 of the usual calendar of workbooks. Their day 60 is a 29 February 1900 that never
    /// was, so from day 61 on this origin is right.
    private static final LocalDate ORIGIN_1900 = LocalDate.of(1899, 12, 30);

    private static final LocalDate ORIGIN_1904 = LocalDate.of(1904, 1, 1);

    private Shown() {}

    static String number(BigDecimal value, String format, int formatId, boolean from1904) {
        var pattern = NOT_OF_THE_PATTERN.matcher(format).replaceAll("").toLowerCase(Locale.ROOT);
        var section = pattern.split(";", 2)[0].strip();
        if (isDate(section, formatId)) {
            return date(value, from1904 ? ORIGIN_1904 : ORIGIN_1900);
        }
        if (PERCENT.matcher(section).matches() || formatId == 9 || formatId == 10) {
            return plain(value.movePointRight(2).setScale(6, RoundingMode.HALF_EVEN)) + "%";
        }
        var fixed = FIXED_DECIMALS.matcher(section);
        if (fixed.matches()) {
            return value.setScale(fixed.group(1).length(), RoundingMode.HALF_UP).toPlainString();
        }
        var text = plain(value);
        if (PADDED.matcher(section).matches() && !text.contains(".") && value.signum() >= 0) {
            return "0".repeat(Math.max(0, section.length() - text.length())) + text;
        }
        return text;
    }

    /// Numbers 14 to 22 and the others here are the formats that every workbook has unlisted.
    private static boolean isDate(String section, int formatId) {
        boolean builtIn =
                (formatId >= 14 && formatId <= 17)
                        || formatId == 22
                        || (formatId >= 27 && formatId <= 31)
                        || formatId == 36
                        || (formatId >= 50 && formatId <= 58);
        return builtIn || DATE_LETTERS.matcher(section).find();
    }

    private static String date(BigDecimal serial, LocalDate origin) {
        long days = serial.setScale(0, RoundingMode.FLOOR).longValue();
        if (days < 1 || days > 2_958_465) {
            return plain(serial);
        }
        var seconds =
                serial.subtract(BigDecimal.valueOf(days))
                        .multiply(BigDecimal.valueOf(ChronoUnit.DAYS.getDuration().toSeconds()))
                        .setScale(0, RoundingMode.HALF_UP)
                        .longValue();
        var day = origin.plusDays(days);
        return seconds == 0
                ? day.toString()
                : LocalDateTime.of(day, java.time.LocalTime.MIDNIGHT)
                        .plusSeconds(seconds)
                        .toString();
    }

    /// Without the tail of zeros, to the fifteen digits that a spreadsheet shows at most; further
    /// ones were only put there by binary arithmetic.
    static String plain(BigDecimal value) {
        var shown = value.round(new MathContext(15, RoundingMode.HALF_EVEN)).stripTrailingZeros();
        return shown.signum() == 0 ? "0" : shown.toPlainString();
    }
}
