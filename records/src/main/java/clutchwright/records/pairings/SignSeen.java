package clutchwright.records.pairings;

import java.time.LocalDate;

/// A sign that was seen of a pairing.
public record SignSeen(
        long id, long version, PairingId pairing, Kind kind, LocalDate on, String notes) {

    /// What was seen.
    public enum Kind {
        LOCK,
        OVULATION,
        PRE_LAY_SHED
    }
}
