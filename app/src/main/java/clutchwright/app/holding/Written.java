package clutchwright.app.holding;

import clutchwright.app.web.EntryInHand;
import clutchwright.app.web.Reply;
import clutchwright.records.store.ChangeId;
import clutchwright.records.store.EntryKey;
import clutchwright.records.store.Once;
import clutchwright.records.store.Work;
import java.util.Optional;

/// What came of writing into the records, and the change by which it can be taken back.
///
/// @param change empty where nothing was written, because it was refused or there was nothing to do
public record Written<R>(R result, Optional<ChangeId> change) {

    /// Writes as whoever sits at the keyboard. Where a form that may arrive twice is in hand, it is
    /// written under the form's key, and so once.
    ///
    /// @param what what the person did, in their words: it stands in the journal
    public static <R> Written<R> to(Holding holding, String what, Work<R> work) {
        Work<Written<R>> all =
                tx -> {
                    var result = work.in(tx);
                    return new Written<>(result, tx.change());
                };
        return EntryInHand.key()
                .flatMap(EntryKey::find)
                .map(key -> once(holding, what, key, all))
                .orElseGet(() -> holding.database().write(holding.author(), what, all));
    }

    private static <R> Written<R> once(
            Holding holding, String what, EntryKey key, Work<Written<R>> all) {
        return switch (holding.database().writeOnce(holding.author(), what, key, all)) {
            case Once.Now<Written<R>>(var written) -> {
                if (written.change().isPresent()) {
                    EntryInHand.isWritten();
                }
                yield written;
            }
            case Once.Before<Written<R>> _ -> throw new EntryInHand.WrittenMeanwhile();
        };
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
