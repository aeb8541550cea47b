package clutchwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/// The short version of `./bench calibration`.
class CalibrationTest {

    /// Beyond so many standard errors by chance alone: 5 in 10^6, for eleven figures 6 in 10^5.
    private static final double MOST = 4.56;

    @Test
    void of_the_events_given_a_chance_that_share_happens() {
        var calibration = Calibration.of(100, 1);

        assertThat(calibration.bands())
                .allSatisfy(
                        band -> {
                            assertThat(band.events()).isGreaterThan(100);
                            assertThat(Math.abs(band.deviations())).isLessThan(MOST);
                        });
        assertThat(Math.abs(calibration.overallDeviations())).isLessThan(MOST);
    }
}
