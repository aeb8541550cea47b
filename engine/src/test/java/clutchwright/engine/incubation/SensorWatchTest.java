package clutchwright.engine.incubation;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.incubation.SensorAlarm.Kind;
import clutchwright.engine.incubation.SensorWatch.Said;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SensorWatchTest {

    private static final Instant NOW = Instant.parse("2024-05-10T12:00:00Z");
    private static final Duration SILENT = Duration.ofMinutes(90);

    /// So long at one temperature, after a good day, to the very minute and a reading short of it.
    @ParameterizedTest
    @CsvSource({
        "35.0, 30, CRITICAL",
        "33.4, 60, TOO_WARM",
        "33.0, 720, WARM",
        "27.0, 720, TOO_COLD",
        "29.5, 1440, COOL"
    })
    void a_temperature_counts_once_it_has_lasted(double celsius, int minutes, Kind kind) {
        var onTime = afterAGoodDay(celsius, minutes);
        var before = afterAGoodDay(celsius, minutes - 10);

        assertThat(kinds(onTime)).contains(kind);
        assertThat(kinds(before)).doesNotContain(kind);
        assertThat(SensorWatch.of(onTime, NOW, SILENT))
                .filteredOn(alarm -> alarm.kind() == kind)
                .singleElement()
                .satisfies(
                        alarm -> {
                            assertThat(alarm.since())
                                    .isEqualTo(NOW.minus(Duration.ofMinutes(minutes)));
                            assertThat(alarm.extreme().degrees()).isEqualTo(celsius);
                        });
    }

    @Test
    void one_good_reading_begins_the_time_anew() {
        var readings =
                IntStream.rangeClosed(0, 24)
                        .mapToObj(i -> said(240 - 10 * i, i == 20 ? 32 : 33.5))
                        .toList();

        assertThat(kinds(readings)).doesNotContain(Kind.TOO_WARM);
    }

    @Test
    void what_lasted_over_a_long_silence_is_not_known_to_have_lasted() {
        var readings = List.of(said(800, 33.5), said(20, 33.5), said(10, 33.6), said(0, 33.5));

        assertThat(kinds(readings)).isEmpty();
    }

    @Test
    void two_degrees_in_an_hour_are_fast_either_way_and_over_two_hours_are_not() {
        assertThat(kinds(List.of(said(60, 30), said(30, 31), said(0, 32)))).contains(Kind.TOO_FAST);
        assertThat(kinds(List.of(said(60, 32), said(30, 31), said(0, 30)))).contains(Kind.TOO_FAST);
        assertThat(kinds(List.of(said(120, 30), said(60, 31), said(0, 32)))).isEmpty();
    }

    @Test
    void silence_is_told_from_the_last_reading_on_and_only_past_the_time_allowed() {
        assertThat(kinds(List.of(said(90, 31.7)))).isEmpty();
        assertThat(SensorWatch.of(List.of(said(91, 31.7)), NOW, SILENT))
                .containsExactly(
                        new SensorAlarm(
                                Kind.SILENT, NOW.minus(Duration.ofMinutes(91)), new Celsius(31.7)));
    }

    @Test
    void nothing_is_said_of_a_sensor_that_never_spoke_or_of_times_to_come() {
        assertThat(kinds(List.of())).isEmpty();
        assertThat(kinds(List.of(said(-120, 40), said(-60, 40)))).isEmpty();
    }

    @Test
    void the_gravest_stands_first_and_covers_the_milder() {
        var hot = IntStream.rangeClosed(0, 90).mapToObj(i -> said(900 - 10 * i, 36)).toList();

        assertThat(kinds(hot)).containsExactly(Kind.CRITICAL);
        assertThat(SensorWatch.of(hot, NOW.plus(Duration.ofHours(2)), SILENT))
                .extracting(SensorAlarm::kind)
                .containsExactly(Kind.CRITICAL, Kind.SILENT);
    }

    private static List<Kind> kinds(List<Said> readings) {
        return SensorWatch.of(readings, NOW, SILENT).stream().map(SensorAlarm::kind).toList();
    }

    /// Every ten minutes; the last reading is now.
    private static List<Said> afterAGoodDay(double celsius, int minutes) {
        return IntStream.rangeClosed(0, 200)
                .map(i -> 2000 - 10 * i)
                .mapToObj(ago -> said(ago, ago <= minutes ? celsius : 31.7))
                .toList();
    }

    private static Said said(int minutesAgo, double celsius) {
        return new Said(NOW.minus(Duration.ofMinutes(minutesAgo)), new Celsius(celsius));
    }
}
