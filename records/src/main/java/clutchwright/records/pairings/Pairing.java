package clutchwright.records.pairings;

import clutchwright.engine.pedigree.AnimalId;
import java.time.LocalDate;
import java.util.Optional;

/// One female with one male in one season.
///
/// @param season      the year in which the young would hatch or the eggs be laid, as the keeper
///     counts
/// @param putTogether the first day they were together
/// @param separated   the last
public record Pairing(
        PairingId id,
        long version,
        int season,
        AnimalId dam,
        AnimalId sire,
        State state,
        Optional<LocalDate> putTogether,
        Optional<LocalDate> separated,
        String notes) {

    /// How far it has come.
    public enum State {
        PLANNED,
        ACTIVE,
        DONE
    }

    public Pairing {
        notes = notes.strip();
    }

    /// Together from that day on.
    public Pairing begun(LocalDate day) {
        return new Pairing(
                id, version, season, dam, sire, State.ACTIVE, Optional.of(day), separated, notes);
    }

    /// Separated for good.
    public Pairing done(LocalDate day) {
        return new Pairing(
                id, version, season, dam, sire, State.DONE, putTogether, Optional.of(day), notes);
    }

    public Pairing withNotes(String changed) {
        return new Pairing(id, version, season, dam, sire, state, putTogether, separated, changed);
    }
}
