package clutchwright.engine.pedigree;

import clutchwright.engine.genetics.Sex;
import java.time.LocalDate;
import java.util.Optional;

/// One animal of a pedigree.
///
/// @param hatched when it hatched, as far as that is known
public record Member(AnimalId id, Optional<Sex> sex, Optional<Span> hatched, Parentage parentage) {

    /// A day, or the first and last day it may have been.
    public record Span(LocalDate earliest, LocalDate latest) {

        public Span {
            if (latest.isBefore(earliest)) {
                throw new IllegalArgumentException(latest + " is before " + earliest);
            }
        }

        public static Span year(int year) {
            return new Span(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31));
        }

        public static Span day(LocalDate day) {
            return new Span(day, day);
        }
    }
}
