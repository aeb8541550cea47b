package clutchwright.engine.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/// The line along which the days of one season are counted: day 1 is the first of January of a
/// year, days before it are 0 and below, and those of the year after go on.
public record SeasonYear(int year) {

    /// The season whose mean day is nearest to a day.
    ///
    /// @param mean day of the year about which clutches are laid
    public static SeasonYear about(LocalDate day, double mean) {
        var year = new SeasonYear(day.getYear() - 1);
        while (year.number(day) > mean + DayOfYear.YEAR / 2) {
            year = new SeasonYear(year.year + 1);
        }
        return year;
    }

    public double number(LocalDate day) {
        return ChronoUnit.DAYS.between(LocalDate.of(year, 1, 1), day) + 1;
    }

    /// The date nearest to a point of the line.
    public LocalDate date(double day) {
        return LocalDate.of(year, 1, 1).plusDays(Math.round(day) - 1);
    }
}
