package clutchwright.app.settings;

import clutchwright.app.holding.ChangeLine;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.HistoryWords;
import clutchwright.records.journal.Journal;
import clutchwright.records.store.ChangeId;
import clutchwright.records.store.Transaction;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/// A page of the journal.
///
/// @param newest whether it is the first page
/// @param older the change from which the next page goes on; 0 where nothing is older
public record JournalView(List<Line> lines, boolean newest, long older) implements View {

    private static final int PAGE = 40;

    public JournalView {
        lines = List.copyOf(lines);
    }

    /// @param records how many rows it wrote
    public record Line(long id, ChangeLine change, int records) {}

    /// @param before 0 for the newest
    static JournalView read(Transaction tx, long before, Formats formats, ZoneId zone) {
        var journal = new Journal(tx);
        var found =
                before == 0
                        ? journal.latest(PAGE + 1)
                        : journal.before(new ChangeId(before), PAGE + 1);
        var shown = found.subList(0, Math.min(PAGE, found.size()));
        var sizes = journal.sizes(shown);
        var words = new HistoryWords(Object::toString, Long::toString, formats);
        return new JournalView(
                shown.stream()
                        .map(
                                change ->
                                        new Line(
                                                change.id().value(),
                                                ChangeLine.line(change, List.of(), words, zone),
                                                sizes.getOrDefault(change.id(), 0)))
                        .toList(),
                before == 0,
                found.size() > PAGE ? shown.getLast().id().value() : 0);
    }

    @Override
    public String template() {
        return "settings/journal.jte";
    }

    @Override
    public String title() {
        return "Journal of changes";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SETTINGS);
    }
}
