package clutchwright.app.collection;

import clutchwright.records.settings.Settings;
import clutchwright.records.store.Transaction;
import java.util.List;

/// Filters of the list that the keeper saved under a name.
///
/// @param end the end of the list's address, `?sex=female` or so
public record SavedFilter(String name, String end) {

    static final int LONGEST_NAME = 40;

    static List<SavedFilter> all(Transaction tx) {
        return new Settings(tx)
                .under(Settings.FILTERS).entrySet().stream()
                        .map(
                                kept ->
                                        new SavedFilter(
                                                kept.getKey().substring(Settings.FILTERS.length()),
                                                kept.getValue()))
                        .toList();
    }

    public String link() {
        return "/collection" + end;
    }

    void keep(Transaction tx) {
        new Settings(tx).put(Settings.FILTERS + name, end);
    }

    static void forget(Transaction tx, String name) {
        new Settings(tx).remove(Settings.FILTERS + name);
    }
}
