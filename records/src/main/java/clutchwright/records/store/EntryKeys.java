package clutchwright.records.store;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/// Remembers for a year what was entered under which key.
final class EntryKeys {

    /// Longer than any phone keeps a page open.
    private static final Duration KEPT = Duration.ofDays(366);

    private static final String FIND =
            "select c.id, c.what, c.undone_by, k.went_to, k.said from entry_key k"
                    + " join change c on c.id = k.change where k.entry_key = ?";

    private final Prepared prepared;

    EntryKeys(Prepared prepared) {
        this.prepared = prepared;
    }

    Optional<Entered> find(EntryKey key) {
        return prepared.list(EntryKeys::entered, FIND, List.of(key.value())).stream().findFirst();
    }

    void keep(EntryKey key, ChangeId change, Instant now) {
        prepared.update(
                "delete from entry_key where made_at < ?", List.of(now.minus(KEPT).toString()));
        prepared.update(
                "insert into entry_key (entry_key, made_at, change, went_to, said)"
                        + " values (?, ?, ?, '', '')",
                List.of(key.value(), now.toString(), change.value()));
    }

    void answer(EntryKey key, Entered.Answer answer) {
        prepared.update(
                "update entry_key set went_to = ?, said = ? where entry_key = ?",
                List.of(answer.path(), answer.said(), key.value()));
    }

    String house() {
        return prepared.list(row -> row.text("mark"), "select mark from house", List.of())
                .getFirst();
    }

    private static Entered entered(Row row) {
        return new Entered(
                new ChangeId(row.number("id")),
                row.findNumber("undone_by").isEmpty(),
                row.text("what"),
                Optional.of(row.text("went_to"))
                        .filter(path -> !path.isEmpty())
                        .map(path -> new Entered.Answer(path, row.text("said"))));
    }
}
