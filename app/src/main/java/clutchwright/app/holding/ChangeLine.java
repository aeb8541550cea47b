package clutchwright.app.holding;

import clutchwright.app.wording.HistoryWords;
import clutchwright.app.wording.HistoryWords.Difference;
import clutchwright.records.journal.Change;
import clutchwright.records.journal.Entry;
import clutchwright.records.store.ChangeId;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;

/// A change, as a line of a history or of the journal.
///
/// @param undone whether it was taken back
/// @param undo where to take it back
public record ChangeLine(
        String when,
        String who,
        String what,
        List<Difference> differences,
        boolean undone,
        String undo) {

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    public ChangeLine {
        differences = List.copyOf(differences);
    }

    /// @param entries newest first
    public static List<ChangeLine> all(List<Entry> entries, HistoryWords words, ZoneId zone) {
        var changes = new LinkedHashMap<ChangeId, Change>();
        var differences = new LinkedHashMap<ChangeId, List<Difference>>();
        for (var entry : entries) {
            changes.putIfAbsent(entry.change().id(), entry.change());
            differences
                    .computeIfAbsent(entry.change().id(), _ -> new ArrayList<>())
                    .addAll(words.differences(entry));
        }
        return changes.values().stream()
                .map(
                        change ->
                                line(
                                        change,
                                        differences.getOrDefault(change.id(), List.of()),
                                        words,
                                        zone))
                .toList();
    }

    /// @param differences none where they are not shown
    public static ChangeLine line(
            Change change, List<Difference> differences, HistoryWords words, ZoneId zone) {
        var at = change.at().atZone(zone);
        return new ChangeLine(
                words.formats().date(at.toLocalDate()) + ", " + TIME.format(at),
                change.who().name(),
                change.what(),
                differences,
                change.undoneBy().isPresent(),
                Written.undo(change.id()));
    }
}
