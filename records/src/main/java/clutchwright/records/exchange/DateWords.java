package clutchwright.records.exchange;

import clutchwright.records.exchange.DateReading.Written;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Reads a date in the many shapes in which breeders write it.
///
/// @param thisYear decides what a year of two digits means
record DateWords(int thisYear) {

    private static final Set<String> UNKNOWN =
            Set.of("", "?", "??", "-", "--", "n/a", "na", "none", "unknown", "unk", "not known");

    private static final List<String> MONTHS =
            List.of(
                    "jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov",
                    "dec");

    private static final Pattern YEAR = Pattern.compile("((?:19|20)\\d\\d)");
    private static final Pattern ROUGH_YEAR =
            Pattern.compile(
                    "(?:~|c\\.?|ca\\.?|circa|about|approx\\.?)?\\s*((?:19|20)\\d\\d)\\s*\\??");
    private static final Pattern SEASON =
            Pattern.compile(
                    "(?:(?:early|mid|late)[ -]?)?"
                            + "(?:spring|summer|autumn|fall|winter|season|start|middle|end)?"
                            + "(?: of)?[ ,]*((?:19|20)\\d\\d)(?: season)?");
    private static final Pattern BIG_FIRST =
            Pattern.compile("(\\d{4})[-/. ](\\d{1,2})[-/. ](\\d{1,2})(?:[t ]\\d\\d?:.*)?");
    private static final Pattern COMPACT = Pattern.compile("((?:19|20)\\d\\d)(\\d\\d)(\\d\\d)");
    private static final Pattern YEAR_AND_MONTH =
            Pattern.compile("(\\d{4})[-/.](\\d{1,2})|(\\d{1,2})[-/.](\\d{4})");
    private static final Pattern SMALL_FIRST =
            Pattern.compile(
                    "(\\d{1,2})\\s*([-/. ])\\s*(\\d{1,2})\\s*[-/. ]\\s*(\\d{4}|\\d{2})"
                            + "(?:\\s+\\d\\d?:.*)?");
    private static final Pattern DAY_MONTHNAME =
            Pattern.compile(
                    "(\\d{1,2})(?:st|nd|rd|th)?(?: of)?[-/. ,]*([a-z]{3,9})\\.?[-/. ,']*(\\d{4}|\\d{2})");
    private static final Pattern MONTHNAME_DAY =
            Pattern.compile(
                    "([a-z]{3,9})\\.?[-/. ]*(\\d{1,2})(?:st|nd|rd|th)?[-/. ,]+'?(\\d{4}|\\d{2})");
    private static final Pattern MONTHNAME_YEAR =
            Pattern.compile("([a-z]{3,9})\\.?[-/. ,']*((?:19|20)\\d\\d)");
    private static final Pattern SERIAL = Pattern.compile("(\\d{5})(?:\\.\\d+)?");

    /// Days of a workbook's calendar from about 1982 to 2064.
    private static final int FIRST_SERIAL = 30_000;

    private static final int LAST_SERIAL = 60_000;

    DateReading read(String written) {
        var text = written.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        if (UNKNOWN.contains(text)) {
            return new DateReading.Blank();
        }
        return year(text)
                .or(() -> bigFirst(text))
                .or(() -> smallFirst(text))
                .or(() -> withMonthName(text))
                .or(() -> serial(text))
                .orElseGet(DateReading.NotADate::new);
    }

    private static Optional<DateReading> year(String text) {
        var plain = YEAR.matcher(text);
        if (plain.matches()) {
            return Optional.of(
                    new DateReading.InYear(Integer.parseInt(plain.group(1)), Written.PLAINLY));
        }
        return firstMatch(text, ROUGH_YEAR, SEASON)
                .map(match -> rough(Integer.parseInt(match.group(1))));
    }

    private static Optional<Matcher> firstMatch(String text, Pattern... patterns) {
        return List.of(patterns).stream()
                .map(pattern -> pattern.matcher(text))
                .filter(Matcher::matches)
                .findFirst();
    }

    private static DateReading rough(int year) {
        return new DateReading.InYear(year, Written.ROUGHLY);
    }

    private static Optional<DateReading> bigFirst(String text) {
        var match = firstMatch(text, BIG_FIRST, COMPACT);
        if (match.isPresent()) {
            var parts = match.get();
            return Optional.of(
                    day(number(parts, 1), number(parts, 2), number(parts, 3))
                            .<DateReading>map(day -> new DateReading.OnDay(day, Written.PLAINLY))
                            .orElseGet(DateReading.NoSuchDay::new));
        }
        var month = YEAR_AND_MONTH.matcher(text);
        if (!month.matches()) {
            return Optional.empty();
        }
        boolean yearLeads = month.group(1) != null;
        int number = Integer.parseInt(yearLeads ? month.group(2) : month.group(3));
        int year = Integer.parseInt(yearLeads ? month.group(1) : month.group(4));
        return Optional.of(number < 1 || number > 12 ? new DateReading.NoSuchDay() : rough(year));
    }

    private Optional<DateReading> smallFirst(String text) {
        var match = SMALL_FIRST.matcher(text);
        if (!match.matches()) {
            return Optional.empty();
        }
        boolean shortYear = match.group(4).length() == 2;
        int year = fullYear(match.group(4));
        var dayFirst = day(year, number(match, 3), number(match, 1));
        var monthFirst = day(year, number(match, 1), number(match, 3));
        if (dayFirst.isPresent() && match.group(2).equals(".")) {
            // Full stops stand between day and month only where the day comes first.
            return Optional.of(
                    new DateReading.OnDay(
                            dayFirst.get(), shortYear ? Written.SHORT_YEAR : Written.PLAINLY));
        }
        if (dayFirst.isPresent() && monthFirst.isPresent()) {
            return Optional.of(
                    new DateReading.EitherOrder(dayFirst.get(), monthFirst.get(), shortYear));
        }
        return Optional.of(
                dayFirst.<DateReading>map(
                                day ->
                                        new DateReading.ProvesOrder(
                                                day, DateOrder.DAY_FIRST, shortYear))
                        .or(
                                () ->
                                        monthFirst.map(
                                                day ->
                                                        new DateReading.ProvesOrder(
                                                                day,
                                                                DateOrder.MONTH_FIRST,
                                                                shortYear)))
                        .orElseGet(DateReading.NoSuchDay::new));
    }

    private Optional<DateReading> withMonthName(String text) {
        var dayLeads = DAY_MONTHNAME.matcher(text);
        if (dayLeads.matches() && monthOf(dayLeads.group(2)).isPresent()) {
            return named(dayLeads.group(3), dayLeads.group(2), dayLeads.group(1));
        }
        var monthLeads = MONTHNAME_DAY.matcher(text);
        if (monthLeads.matches() && monthOf(monthLeads.group(1)).isPresent()) {
            return named(monthLeads.group(3), monthLeads.group(1), monthLeads.group(2));
        }
        var noDay = MONTHNAME_YEAR.matcher(text);
        if (noDay.matches() && monthOf(noDay.group(1)).isPresent()) {
            return Optional.of(rough(number(noDay, 2)));
        }
        return Optional.empty();
    }

    private Optional<DateReading> named(String year, String month, String day) {
        var written = year.length() == 2 ? Written.SHORT_YEAR : Written.PLAINLY;
        return monthOf(month)
                .map(
                        number ->
                                day(fullYear(year), number, Integer.parseInt(day))
                                        .<DateReading>map(
                                                found -> new DateReading.OnDay(found, written))
                                        .orElseGet(DateReading.NoSuchDay::new));
    }

    private static Optional<Integer> monthOf(String name) {
        var start = name.substring(0, 3);
        boolean word =
                name.length() == 3
                        || name.equals("sept")
                        || java.time.Month.of(Math.max(1, MONTHS.indexOf(start) + 1))
                                .name()
                                .toLowerCase(Locale.ROOT)
                                .equals(name);
        return word && MONTHS.contains(start)
                ? Optional.of(MONTHS.indexOf(start) + 1)
                : Optional.empty();
    }

    private static Optional<DateReading> serial(String text) {
        var match = SERIAL.matcher(text);
        if (!match.matches()) {
            return Optional.empty();
        }
        int days = number(match, 1);
        return days < FIRST_SERIAL || days > LAST_SERIAL
                ? Optional.empty()
                : Optional.of(
                        new DateReading.OnDay(
                                LocalDate.of(1899, 12, 30).plusDays(days), Written.AS_SERIAL));
    }

    /// A year of two digits is the latest one with these digits that is not after next year.
    private int fullYear(String digits) {
        int year = Integer.parseInt(digits);
        if (digits.length() == 4) {
            return year;
        }
        int inThisCentury = thisYear / 100 * 100 + year;
        return inThisCentury > thisYear + 1 ? inThisCentury - 100 : inThisCentury;
    }

    private static int number(Matcher match, int group) {
        return Integer.parseInt(match.group(group));
    }

    private static Optional<LocalDate> day(int year, int month, int day) {
        try {
            return Optional.of(LocalDate.of(year, month, day));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }
}
