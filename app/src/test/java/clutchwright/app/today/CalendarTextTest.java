package clutchwright.app.today;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import clutchwright.app.today.CalendarText.Event;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

/// The feed, read by another program's parser (biweekly 0.6.8) and held against RFC 5545.
class CalendarTextTest {

    private static final Event AWKWARD =
            new Event(
                    "laying-eggs-new-dam-B-09@clutchwright",
                    LocalDate.of(2024, 2, 29),
                    "B-09; Pípit, the „old“ one \\ 雪蛇 🐍: expected to lay about 7 March",
                    "She shed before laying,\non 8 February; 9 in 10 between 1 March and 12 March. "
                            + "Ångström ".repeat(20));

    @Test
    void another_parser_reads_what_was_written() {
        var text = new CalendarText(List.of(AWKWARD), Instant.parse("2024-02-10T08:15:00Z"));

        var calendar = Biweekly.parse(text.toString()).first();
        assertThat(calendar.validate(ICalVersion.V2_0).isEmpty()).isTrue();
        var event = calendar.getEvents().getFirst();
        assertThat(event.getUid().getValue()).isEqualTo(AWKWARD.uid());
        assertThat(event.getSummary().getValue()).isEqualTo(AWKWARD.summary());
        assertThat(event.getDescription().getValue()).isEqualTo(AWKWARD.description());
        assertThat(event.getDateStart().getValue().hasTime()).isFalse();
        assertThat(day(event.getDateStart().getValue())).isEqualTo("2024-02-29");
        // The end is not part of it: RFC 5545, section 3.6.1.
        assertThat(day(event.getDateEnd().getValue())).isEqualTo("2024-03-01");
        assertThat(event.getDateTimeStamp().getValue().toInstant())
                .isEqualTo("2024-02-10T08:15:00Z");
    }

    @Test
    void no_line_is_longer_than_75_octets_and_all_end_as_the_standard_asks() {
        var text = new CalendarText(List.of(AWKWARD), Instant.EPOCH).toString();

        assertThat(text).endsWith("\r\n");
        assertThat(text.replace("\r\n", "")).doesNotContain("\n", "\r");
        for (var line : text.split("\r\n")) {
            assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75);
        }
    }

    @Test
    void a_day_without_work_is_a_calendar_too() {
        var empty = new CalendarText(List.of(), Instant.EPOCH).toString();

        assertThat(Biweekly.parse(empty).first().getEvents()).isEmpty();
    }

    private static String day(java.util.Date date) {
        return date.toInstant().atZone(ZoneId.systemDefault()).toLocalDate().toString();
    }
}
