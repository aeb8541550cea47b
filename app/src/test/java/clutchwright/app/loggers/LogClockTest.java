package clutchwright.app.loggers;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.loggers.LogColumns.DayOrder;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Clocks went back from 03:00 to 02:00 on 27 October 2024 in Berlin, from UTC+2 to UTC+1, and
/// forward on 31 March (EU Directive 2000/84/EC: at 01:00 UTC).
class LogClockTest {

    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

    @Test
    void of_the_hour_that_is_there_twice_the_second_is_meant_once_the_clock_has_gone_back() {
        assertThat(
                        utc(
                                "2024-10-27 01:30",
                                "2024-10-27 02:00",
                                "2024-10-27 02:30",
                                "2024-10-27 02:00",
                                "2024-10-27 02:30",
                                "2024-10-27 03:00"))
                .containsExactly(
                        LocalDateTime.parse("2024-10-26T23:30"),
                        LocalDateTime.parse("2024-10-27T00:00"),
                        LocalDateTime.parse("2024-10-27T00:30"),
                        LocalDateTime.parse("2024-10-27T01:00"),
                        LocalDateTime.parse("2024-10-27T01:30"),
                        LocalDateTime.parse("2024-10-27T02:00"));
    }

    @Test
    void in_spring_an_hour_is_missing_and_no_time_passes_over_it() {
        assertThat(utc("2024-03-31 01:50", "2024-03-31 03:00"))
                .containsExactly(
                        LocalDateTime.parse("2024-03-31T00:50"),
                        LocalDateTime.parse("2024-03-31T01:00"));
    }

    @Test
    void an_offset_that_is_written_counts_whatever_the_zone() {
        assertThat(utc("2024-07-01T10:00:00-05:00", "2024-07-01T15:30:00Z"))
                .containsExactly(
                        LocalDateTime.parse("2024-07-01T15:00"),
                        LocalDateTime.parse("2024-07-01T15:30"));
    }

    @ParameterizedTest
    @CsvSource({
        "DAY_FIRST, 03/04/2024 14:05, 2024-04-03T12:05",
        "MONTH_FIRST, 03/04/2024 14:05, 2024-03-04T13:05",
        "MONTH_FIRST, 3/4/24 2:05:30 PM, 2024-03-04T13:05:30",
        "DAY_FIRST, 29/02/2024 00:00, 2024-02-28T23:00"
    })
    void dates_with_slashes_are_read_in_the_order_that_was_chosen(
            DayOrder order, String text, LocalDateTime utc) {
        assertThat(new LogClock(order, BERLIN).read(text).orElseThrow().utc()).isEqualTo(utc);
    }

    @ParameterizedTest
    @CsvSource({
        "30/02/2024 10:00",
        "2023-02-29 10:00",
        "2024-02-30T10:00:00Z",
        "13/13/2024 10:00",
        "soon",
        "''"
    })
    void what_is_no_time_is_not_read(String text) {
        assertThat(new LogClock(DayOrder.DAY_FIRST, BERLIN).read(text)).isEmpty();
    }

    private static Stream<LocalDateTime> utc(String... texts) {
        var clock = new LogClock(DayOrder.DAY_FIRST, BERLIN);
        return Stream.of(texts).map(text -> clock.read(text).orElseThrow().utc());
    }
}
