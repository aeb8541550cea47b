package clutchwright.app.loggers;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.Optional;

/// Reads the time of a reading as loggers write it.
public final class LogTimes {

    static final String EXPECTED =
            "a time such as 2024-05-01 14:30, 2024-05-01T14:30:00+02:00 or 01.05.2024 14:30";

    private static final List<DateTimeFormatter> LOCAL =
            List.of(
                    form("uuuu-MM-dd['T'][' ']HH:mm"),
                    form("uuuu/MM/dd HH:mm"),
                    form("dd.MM.uuuu HH:mm"));
    private static final DateTimeFormatter OFFSET =
            new DateTimeFormatterBuilder()
                    .append(form("uuuu-MM-dd['T'][' ']HH:mm"))
                    .optionalStart()
                    .appendLiteral(' ')
                    .optionalEnd()
                    .appendOffset("+HH:mm", "Z")
                    .toFormatter()
                    .withResolverStyle(ResolverStyle.STRICT);

    private LogTimes() {}

    /// A moment, with the hours by which its clock was ahead of UTC; a clock that does not say so
    /// is taken to have stood still at one offset.
    record Moment(LocalDateTime clock, ZoneOffset offset) {

        LocalDateTime utc() {
            return clock.minusSeconds(offset.getTotalSeconds());
        }
    }

    static Optional<Moment> read(String text) {
        for (var form : LOCAL) {
            try {
                return Optional.of(new Moment(LocalDateTime.parse(text, form), ZoneOffset.UTC));
            } catch (DateTimeException e) {
                // The next form.
            }
        }
        try {
            var read = OffsetDateTime.parse(text, OFFSET);
            return Optional.of(new Moment(read.toLocalDateTime(), read.getOffset()));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static DateTimeFormatter form(String pattern) {
        return new DateTimeFormatterBuilder()
                .appendPattern(pattern)
                .optionalStart()
                .appendPattern(":ss")
                .optionalStart()
                .appendFraction(ChronoField.NANO_OF_SECOND, 1, 9, true)
                .optionalEnd()
                .optionalEnd()
                .toFormatter()
                .withResolverStyle(ResolverStyle.STRICT);
    }
}
