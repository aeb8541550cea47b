package clutchwright.app.holding;

import clutchwright.app.web.Reply;
import clutchwright.records.store.ChangeId;
import clutchwright.records.store.Work;
import java.util.Optional;

/// What came of writing into the records, and the change by which it can be taken back.
///
/// @param change empty where nothing was written, because it was refused or there was nothing to do
public record Written<R>(R result, Optional<ChangeId> change) {

    /// Writes as whoever sits at the keyboard.
    ///
    /// @param what what the person did, in their words: it stands in the journal
    public static <R> Written<R> to(Holding holding, String what, Work<R> work) {
        return holding.database()
                .write(
                        holding.author(),
                        what,
                        tx -> {
                            var result = work.in(tx);
                            return new Written<>(result, tx.change());
                        });
    }

    /// Goes to a page, says there what was done, and offers to take it back.
    public Reply.Go going(String path, String sentence) {
        return change.map(id -> Reply.go(path).saying(sentence, "Undo", undo(id)))
                .orElseGet(() -> Reply.go(path).saying(sentence));
    }

    /// Where a change is taken back by posting.
    public static String undo(ChangeId change) {
        return "/journal/" + change + "/undo";
    }
}
