package clutchwright.app.settings;

import clutchwright.app.holding.ChangeLine;
import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.HistoryWords;
import clutchwright.records.journal.Journal;
import clutchwright.records.journal.Undo;
import clutchwright.records.store.ChangeId;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;

/// What was changed, by whom and when, and the way back.
@Controller
public class JournalPage {

    private static final String CHANGE = "/journal/{id:[0-9]{1,18}}";
    private static final String MISSING = "There is no such change in the journal.";

    private final Holding holding;
    private final Preferring preferring;

    JournalPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping("/journal")
    public Reply show(@RequestParam(name = "before", defaultValue = "0") long before) {
        return holding.database()
                .read(tx -> Reply.show(JournalView.read(tx, before, formats(), zone())));
    }

    @GetMapping(CHANGE)
    public Reply change(
            @PathVariable long id, @RequestParam(name = "skip", defaultValue = "0") int skip) {
        return changed(id, skip, false);
    }

    /// The same as a piece of the journal, fetched when a change is opened.
    @GetMapping(CHANGE + "/rows")
    public Reply rows(@PathVariable long id) {
        return changed(id, 0, true);
    }

    private Reply changed(long id, int skip, boolean piece) {
        return holding.database()
                .read(
                        tx ->
                                ChangedView.read(
                                        tx,
                                        new ChangeId(id),
                                        Math.max(0, skip),
                                        piece,
                                        formats(),
                                        zone()))
                .<Reply>map(Reply::show)
                .orElseGet(() -> Reply.missing(MISSING));
    }

    @PostMapping(CHANGE + "/undo")
    public Reply undo(
            @PathVariable long id,
            @RequestHeader(name = HttpHeaders.REFERER, required = false) Optional<String> from) {
        var change = new ChangeId(id);
        var asked = holding.database().read(tx -> new Journal(tx).find(change));
        if (asked.isEmpty()) {
            return Reply.missing(MISSING);
        }
        var what = asked.get().what();
        var undo =
                holding.database()
                        .write(
                                holding.author(),
                                "Took back: " + what,
                                tx -> new Journal(tx).undo(change));
        return switch (undo) {
            case Undo.Undone(var by) ->
                    Reply.go(new WayBack(holding).to(from))
                            .saying("Taken back: %s.".formatted(what), "Redo", Written.undo(by));
            case Undo.AlreadyUndone _ ->
                    Reply.go("/journal").saying("That was taken back already: %s.".formatted(what));
            case Undo.NoSuchChange _ -> Reply.missing(MISSING);
            case Undo.Blocked(var later) ->
                    Reply.conflictWith(
                            new UndoRefusedView(
                                    what,
                                    later.stream()
                                            .map(
                                                    each ->
                                                            ChangeLine.line(
                                                                    each,
                                                                    List.of(),
                                                                    new HistoryWords(
                                                                            Object::toString,
                                                                            Long::toString,
                                                                            formats()),
                                                                    zone()))
                                            .toList()));
        };
    }

    private Formats formats() {
        return new Formats(preferring.preferences());
    }

    private ZoneId zone() {
        return holding.database().clock().getZone();
    }
}
