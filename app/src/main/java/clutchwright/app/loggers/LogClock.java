package clutchwright.app.loggers;

import clutchwright.app.loggers.LogColumns.DayOrder;
import clutchwright.app.loggers.LogTimes.Moment;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/// Reads a file's times one after the other, by a clock that may change to and from summer time.
///
/// Of the hour that is there twice in autumn, the second is meant once the clock has gone back.
final class LogClock {

    private static final Pattern SAYS_ITS_OFFSET = Pattern.compile(".*(Z|[+-]\\d{2}:?\\d{2})$");

    private final List<DateTimeFormatter> slashes;
    private final ZoneId zone;
    private Optional<ZonedDateTime> before = Optional.empty();

    LogClock(DayOrder order, ZoneId zone) {
        var day = order == DayOrder.DAY_FIRST ? "d/M/" : "M/d/";
        this.slashes =
                List.of(
                        form(day + "uuuu H:mm[:ss]"),
                        form(day + "uu H:mm[:ss]"),
                        form(day + "uuuu h:mm[:ss] a"),
                        form(day + "uu h:mm[:ss] a"));
        this.zone = zone;
    }

    Optional<Moment> read(String text) {
        var iso = LogTimes.read(text);
        if (iso.isPresent() && SAYS_ITS_OFFSET.matcher(text).matches()) {
            return iso;
        }
        return iso.map(Moment::clock).or(() -> slashed(text)).map(this::here);
    }

    private Moment here(LocalDateTime local) {
        var moment = local.atZone(zone);
        if (before.filter(earlier -> moment.isBefore(earlier)).isPresent()) {
            var second = moment.withLaterOffsetAtOverlap();
            if (!second.isBefore(before.get())) {
                before = Optional.of(second);
                return new Moment(local, second.getOffset());
            }
        }
        before = Optional.of(moment);
        return new Moment(local, moment.getOffset());
    }

    private Optional<LocalDateTime> slashed(String text) {
        for (var form : slashes) {
            try {
                return Optional.of(LocalDateTime.parse(text, form));
            } catch (DateTimeException e) {
                // The next form.
            }
        }
        return Optional.empty();
    }

    private static DateTimeFormatter form(String pattern) {
        return new DateTimeFormatterBuilder()
                .parseCaseInsensitive()
                .appendPattern(pattern)
                .toFormatter(Locale.ENGLISH)
                .withResolverStyle(ResolverStyle.STRICT);
    }
}
