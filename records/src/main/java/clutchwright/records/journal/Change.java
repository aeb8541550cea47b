package clutchwright.records.journal;

import clutchwright.records.store.Author;
import clutchwright.records.store.ChangeId;
import java.time.Instant;
import java.util.Optional;

/// What one person did at one moment: all of it was written together.
///
/// @param what     in the words of the screen on which it was done
/// @param undoes   the change that this one took back
/// @param undoneBy the change that took this one back, while it stands
public record Change(
        ChangeId id,
        Instant at,
        Author who,
        String what,
        Optional<ChangeId> undoes,
        Optional<ChangeId> undoneBy) {}
