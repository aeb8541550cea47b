package clutchwright.app.wording;

import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/// Dates, units and numbers as this keeper reads them.
public record Formats(Preferences preferences) {

    private static final double GRAMS_PER_OUNCE = 28.349523125;
    private static final DateTimeFormatter DAY_MONTH =
            DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH_DAY =
            DateTimeFormatter.ofPattern("MMMM d", Locale.ENGLISH);
    private static final DateTimeFormatter WORDS =
            DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter WORDS_MONTH_FIRST =
            DateTimeFormatter.ofPattern("MMMM d, uuuu", Locale.ENGLISH);

    /// A day with its year.
    public String date(LocalDate day) {
        return switch (preferences.dates()) {
            case WORDS -> WORDS.format(day);
            case WORDS_MONTH_FIRST -> WORDS_MONTH_FIRST.format(day);
            case FIGURES -> DateTimeFormatter.ISO_LOCAL_DATE.format(day);
        };
    }

    /// A day whose year is plain from the place where it stands.
    public String dayOfYear(LocalDate day) {
        return switch (preferences.dates()) {
            case WORDS -> DAY_MONTH.format(day);
            case WORDS_MONTH_FIRST -> MONTH_DAY.format(day);
            case FIGURES -> DateTimeFormatter.ISO_LOCAL_DATE.format(day);
        };
    }

    /// How far a day is from today, in words: `today`, `in 3 days`, `12 days ago`.
    public String away(LocalDate day, LocalDate today) {
        long days = ChronoUnit.DAYS.between(today, day);
        if (days == 0) {
            return "today";
        }
        if (days == 1) {
            return "tomorrow";
        }
        if (days == -1) {
            return "yesterday";
        }
        return days > 0 ? "in " + whole(days) + " days" : whole(-days) + " days ago";
    }

    /// A weight with its unit.
    public String weight(double grams) {
        return switch (preferences.weight()) {
            case GRAMS -> decimals(grams, grams < 100 && grams % 1 != 0 ? 1 : 0) + " g";
            case OUNCES -> decimals(grams / GRAMS_PER_OUNCE, 1) + " oz";
        };
    }

    /// Grams from what the keeper typed in the unit of their choice.
    public double gramsOf(double typed) {
        return switch (preferences.weight()) {
            case GRAMS -> typed;
            case OUNCES -> typed * GRAMS_PER_OUNCE;
        };
    }

    public String weightUnit() {
        return switch (preferences.weight()) {
            case GRAMS -> "g";
            case OUNCES -> "oz";
        };
    }

    /// A temperature with its unit, to a tenth of a degree.
    public String warmth(double celsius) {
        return switch (preferences.warmth()) {
            case CELSIUS -> decimals(celsius, 1) + " °C";
            case FAHRENHEIT -> decimals(celsius * 9 / 5 + 32, 1) + " °F";
        };
    }

    /// How much warmer, with its unit, to a tenth of a degree.
    public String warmthDifference(double kelvin) {
        return switch (preferences.warmth()) {
            case CELSIUS -> decimals(kelvin, 1) + " °C";
            case FAHRENHEIT -> decimals(kelvin * 9 / 5, 1) + " °F";
        };
    }

    /// The number of a temperature in the keeper's unit.
    public double ofCelsius(double celsius) {
        return switch (preferences.warmth()) {
            case CELSIUS -> celsius;
            case FAHRENHEIT -> celsius * 9 / 5 + 32;
        };
    }

    /// Degrees Celsius from what the keeper typed in the unit of their choice.
    public double celsiusOf(double typed) {
        return switch (preferences.warmth()) {
            case CELSIUS -> typed;
            case FAHRENHEIT -> (typed - 32) * 5 / 9;
        };
    }

    public String warmthUnit() {
        return switch (preferences.warmth()) {
            case CELSIUS -> "°C";
            case FAHRENHEIT -> "°F";
        };
    }

    /// The number of a weight in the keeper's unit.
    public double ofGrams(double grams) {
        return switch (preferences.weight()) {
            case GRAMS -> grams;
            case OUNCES -> grams / GRAMS_PER_OUNCE;
        };
    }

    /// A whole number, thousands apart: `1,742`.
    public String whole(long number) {
        return decimals((double) number, 0);
    }

    /// A number with at most so many places, thousands apart; zeros at the end fall away.
    public String decimals(double number, int places) {
        var format = new DecimalFormat("#,##0", DecimalFormatSymbols.getInstance(Locale.ENGLISH));
        format.setMaximumFractionDigits(places);
        format.setRoundingMode(RoundingMode.HALF_UP);
        return format.format(number);
    }

    /// A count with its noun: `1 egg`, `7 eggs`.
    public String count(long number, String one, String many) {
        return whole(number) + " " + (number == 1 ? one : many);
    }

    /// `Clown`, `Clown and Pastel`, `Clown, Pastel and Piebald`.
    public String list(List<String> items) {
        if (items.size() < 2) {
            return String.join("", items);
        }
        return items.stream().limit(items.size() - 1L).collect(Collectors.joining(", "))
                + " and "
                + items.getLast();
    }
}
