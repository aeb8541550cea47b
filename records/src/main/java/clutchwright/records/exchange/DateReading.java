package clutchwright.records.exchange;

import java.time.LocalDate;

/// How the text of a date was understood, before it is known which of day and month comes first.
sealed interface DateReading {

    /// Nothing, or a word that says it is not known.
    record Blank() implements DateReading {}

    record OnDay(LocalDate day, Written written) implements DateReading {}

    record InYear(int year, Written written) implements DateReading {}

    /// Two readings are possible; they are the same day only if day and month are the same number.
    record EitherOrder(LocalDate dayFirst, LocalDate monthFirst, boolean shortYear)
            implements DateReading {}

    /// Only one order gives a day of the calendar.
    record ProvesOrder(LocalDate day, DateOrder order, boolean shortYear) implements DateReading {}

    /// Looks like a date of no calendar: 31/02/2021.
    record NoSuchDay() implements DateReading {}

    record NotADate() implements DateReading {}

    enum Written {
        PLAINLY,
        /// The year with two digits.
        SHORT_YEAR,
        /// As the number by which a spreadsheet counts days.
        AS_SERIAL,
        /// With a season, a month, or a word such as `about`, beside the year.
        ROUGHLY
    }
}
