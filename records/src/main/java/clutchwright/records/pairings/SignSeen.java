package clutchwright.records.pairings;

import java.time.LocalDate;

/// A sign that was seen of a pairing.
public record SignSeen(
        long id, long version, PairingId pairing, Kind kind, LocalDate on, String notes) {

    /// What was seen.
    public enum Kind {
        LOCK,
        /// She fills out behind the middle: follicles grow.
        BUILDING,
        OVULATION,
        PRE_LAY_SHED
    }
}
