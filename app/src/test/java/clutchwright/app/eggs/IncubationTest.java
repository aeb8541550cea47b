package clutchwright.app.eggs;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.wording.Formats;
import clutchwright.app.wording.Preferences;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/// Days since laying and the window of hatching. 55 to 60 days at 31.5 to 32 °C: common practice,
/// no source.
class IncubationTest {

    private static final LocalDate LAID = LocalDate.of(2024, 4, 18);
    private static final Formats FORMATS = new Formats(Preferences.FIRST);

    @Test
    void the_day_of_laying_is_day_nought_and_no_day_comes_before_it() {
        assertThat(on(LAID).day()).isZero();
        assertThat(on(LAID.minusDays(1)).day()).isZero();
        assertThat(on(LocalDate.of(2024, 6, 14)).day()).isEqualTo(57);
    }

    @Test
    void hatching_is_looked_for_from_day_55_and_late_a_week_past_the_window() {
        assertThat(on(LocalDate.of(2024, 6, 11)).isDue()).isFalse();
        assertThat(on(LocalDate.of(2024, 6, 12)).isDue()).isTrue();
        assertThat(on(LocalDate.of(2024, 6, 24)).isLate()).isFalse();
        assertThat(on(LocalDate.of(2024, 6, 25)).isLate()).isTrue();
    }

    @Test
    void the_window_is_two_days_and_says_on_what_it_rests() {
        assertThat(on(LAID).window(FORMATS)).isEqualTo("12 June to 17 June");
        assertThat(Incubation.basis(FORMATS)).contains("31.5 °C to 32 °C", "common practice");
        assertThat(Incubation.limits(FORMATS)).contains("32.8 °C", "33.3 °C");
    }

    private static Incubation on(LocalDate today) {
        return new Incubation(LAID, today);
    }
}
