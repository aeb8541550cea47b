package clutchwright.records.animals;

import clutchwright.engine.pedigree.Member.Span;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/// When an animal hatched, as far as that is known.
public sealed interface Hatched {

    record OnDay(LocalDate day) implements Hatched {}

    /// @param year 1 to 9999
    record InYear(int year) implements Hatched {

        public InYear {
            if (year < 1 || year > 9999) {
                throw new IllegalArgumentException("the year is " + year + ", not 1 to 9999");
            }
        }
    }

    record Unknown() implements Hatched {}

    /// Reads an ISO date, a year, or nothing where it is unknown.
    ///
    /// @throws IllegalArgumentException if it is none of them
    static Hatched parse(String text) {
        var bare = text.strip();
        if (bare.isEmpty()) {
            return new Unknown();
        }
        try {
            return bare.matches("\\d{4}")
                    ? new InYear(Integer.parseInt(bare))
                    : new OnDay(LocalDate.parse(bare));
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("not a date or a year: " + text, e);
        }
    }

    /// From the earliest to the latest day it may have been.
    default Optional<Span> span() {
        return switch (this) {
            case OnDay(var day) -> Optional.of(Span.day(day));
            case InYear(var year) -> Optional.of(Span.year(year));
            case Unknown() -> Optional.empty();
        };
    }

    /// The season it hatched in.
    default Optional<Integer> season() {
        return span().map(span -> span.earliest().getYear());
    }

    /// An ISO date, a year of four digits, or nothing.
    default String iso() {
        return switch (this) {
            case OnDay(var day) -> day.toString();
            case InYear(var year) -> "%04d".formatted(year);
            case Unknown() -> "";
        };
    }
}
