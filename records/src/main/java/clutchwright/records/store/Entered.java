package clutchwright.records.store;

import java.util.Optional;

/// What was once written under a key, and what was said of it.
///
/// @param change that wrote it
/// @param stands whether the change was not taken back since
/// @param what the person did, in the words of the journal
/// @param answer empty where the program ended between writing and answering
public record Entered(ChangeId change, boolean stands, String what, Optional<Answer> answer) {

    /// @param path that was gone to
    /// @param said there of what was done; may be blank
    public record Answer(String path, String said) {}
}
