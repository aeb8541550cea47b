package clutchwright.engine.incubation;

import java.time.Duration;
import java.time.Instant;

/// What a sensor's readings call for attention by, the gravest kinds first.
///
/// @param since when it began
/// @param extreme the reading that is farthest off; the last one where nothing has come since
public record SensorAlarm(Kind kind, Instant since, Celsius extreme) {

    /// Limits of eggs as in [EggLimits], each with the time it may last: common practice, no
    /// source. How long too warm may last, and how fast is too fast, is our judgement.
    public enum Kind {
        /// 35 °C or more for half an hour.
        CRITICAL(Duration.ofMinutes(30)),
        /// 33.3 °C or more for an hour.
        TOO_WARM(Duration.ofHours(1)),
        /// 27 °C or less for half a day.
        TOO_COLD(Duration.ofHours(12)),
        /// By 2 K or more within an hour.
        TOO_FAST(Duration.ZERO),
        /// 32.8 °C or more for half a day.
        WARM(Duration.ofHours(12)),
        /// 29.5 °C or less for a day.
        COOL(Duration.ofHours(24)),
        /// Nothing has come for longer than the keeper allows.
        SILENT(Duration.ZERO);

        private final Duration lasting;

        Kind(Duration lasting) {
            this.lasting = lasting;
        }

        public Duration lasting() {
            return lasting;
        }

        /// Whether eggs are in danger now.
        public boolean isGrave() {
            return this == CRITICAL || this == TOO_WARM || this == TOO_COLD;
        }
    }
}
