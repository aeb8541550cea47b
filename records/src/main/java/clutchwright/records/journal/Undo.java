package clutchwright.records.journal;

import clutchwright.records.store.ChangeId;
import java.util.List;

/// What became of taking a change back.
public sealed interface Undo {

    /// Everything is as it was before that change.
    ///
    /// @param by the change that took it back; it can be taken back too
    record Undone(ChangeId by) implements Undo {}

    /// Nothing was taken back: what was written later would be lost or would hang in the air.
    ///
    /// @param later the changes to be taken back first, the newest first; empty where what stands
    ///     in the way is not in the journal
    record Blocked(List<Change> later) implements Undo {

        public Blocked {
            later = List.copyOf(later);
        }
    }

    record AlreadyUndone(ChangeId by) implements Undo {}

    record NoSuchChange(ChangeId asked) implements Undo {}
}
