package clutchwright.records.exchange;

import java.util.List;

/// What became of an import.
public sealed interface ImportOutcome {

    /// It is on record.
    record Applied(int added, int updated, int skipped) implements ImportOutcome {}

    /// Something stands against it; nothing was changed.
    ///
    /// @param problems all of them, at least one that stops
    record Refused(List<Problem> problems) implements ImportOutcome {

        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /// It was stopped on the way; nothing was changed.
    record Cancelled() implements ImportOutcome {}
}
