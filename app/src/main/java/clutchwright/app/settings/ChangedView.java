package clutchwright.app.settings;

import clutchwright.app.holding.ChangeLine;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.HistoryWords;
import clutchwright.app.wording.HistoryWords.Difference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animals;
import clutchwright.records.journal.Change;
import clutchwright.records.journal.Entry;
import clutchwright.records.journal.Journal;
import clutchwright.records.places.Address;
import clutchwright.records.places.Places;
import clutchwright.records.places.TubId;
import clutchwright.records.store.ChangeId;
import clutchwright.records.store.Transaction;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// What one change wrote, row by row, as it was and as it became.
///
/// @param skipped rows before the first that is shown
/// @param more rows after the last
/// @param piece whether only the rows are shown
public record ChangedView(
        long id, ChangeLine change, List<Row> rows, int skipped, int more, boolean piece)
        implements View {

    private static final int PAGE = 100;

    public ChangedView {
        rows = List.copyOf(rows);
    }

    /// @param kind `Added`, `Changed` or `Removed`
    public record Row(String kind, String subject, List<Difference> differences) {

        public Row {
            differences = List.copyOf(differences);
        }
    }

    static Optional<ChangedView> read(
            Transaction tx, ChangeId id, int skip, boolean piece, Formats formats, ZoneId zone) {
        var journal = new Journal(tx);
        return journal.find(id)
                .map(
                        change -> {
                            var entries = journal.entriesOf(id, skip, PAGE);
                            var words = words(tx, entries, formats);
                            var size = journal.sizes(List.of(change)).getOrDefault(id, 0);
                            return new ChangedView(
                                    id.value(),
                                    line(change, words, zone),
                                    entries.stream().map(entry -> row(entry, words)).toList(),
                                    skip,
                                    Math.max(0, size - skip - entries.size()),
                                    piece);
                        });
    }

    private static ChangeLine line(Change change, HistoryWords words, ZoneId zone) {
        return ChangeLine.line(change, List.of(), words, zone);
    }

    private static Row row(Entry entry, HistoryWords words) {
        return new Row(
                switch (entry.kind()) {
                    case ADDED -> "Added";
                    case CHANGED -> "Changed";
                    case REMOVED -> "Removed";
                },
                words.subject(entry),
                words.differences(entry));
    }

    /// The names of everything that the rows point at, fetched at once.
    private static HistoryWords words(Transaction tx, List<Entry> entries, Formats formats) {
        var tags = new HashMap<AnimalId, String>();
        new Animals(tx)
                .find(animalsIn(entries))
                .forEach(animal -> tags.put(animal.id(), animal.tag().value()));
        var places = new HashMap<Long, String>();
        return new HistoryWords(
                animal -> tags.getOrDefault(animal, "an animal that is gone"),
                tub -> places.computeIfAbsent(tub, id -> place(tx, id)),
                formats);
    }

    private static String place(Transaction tx, long tub) {
        return new Places(tx)
                .address(new TubId(tub))
                .map(Address::toString)
                .orElse("a place that is gone");
    }

    private static Set<AnimalId> animalsIn(List<Entry> entries) {
        var found = new HashSet<AnimalId>();
        for (var entry : entries) {
            entry.animal().ifPresent(found::add);
            for (var column : List.of("dam", "sire", "candidate")) {
                Optional.ofNullable(entry.columns().get(column))
                        .ifPresent(
                                value -> {
                                    value.before().map(ChangedView::animal).ifPresent(found::add);
                                    value.after().map(ChangedView::animal).ifPresent(found::add);
                                });
            }
        }
        return found;
    }

    private static AnimalId animal(String held) {
        return new AnimalId(Long.parseLong(held));
    }

    @Override
    public String template() {
        return piece ? "settings/journalRows.jte" : "settings/changed.jte";
    }

    @Override
    public String title() {
        return change.what();
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SETTINGS);
    }
}
