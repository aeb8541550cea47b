package clutchwright.records.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedSet;
import org.jspecify.annotations.Nullable;

/// Writes the journal of one transaction, and keeps in mind which animals it touched.
final class Ledger {

    private static final String IN_PLACE =
            "select a.id from animal a join tub t on t.id = a.place"
                    + " join rack r on r.id = t.rack where ";

    private final Prepared prepared;
    private final @Nullable Author author;
    private final String what;
    private final Instant now;
    private final SequencedSet<Long> touchedAnimals = new LinkedHashSet<>();
    private @Nullable ChangeId change;

    Ledger(Prepared prepared, @Nullable Author author, String what, Instant now) {
        this.prepared = prepared;
        this.author = author;
        this.what = what;
        this.now = now;
    }

    Author author() {
        if (author == null) {
            throw new IllegalStateException("this transaction only reads");
        }
        return author;
    }

    Optional<ChangeId> change() {
        return Optional.ofNullable(change);
    }

    ChangeId openedChange() {
        var opened = change;
        if (opened == null) {
            long id =
                    prepared.list(
                                    row -> row.number("id"),
                                    "insert into change (made_at, made_by, what)"
                                            + " values (?, ?, ?) returning id",
                                    List.of(now.toString(), author().name(), what))
                            .getFirst();
            opened = new ChangeId(id);
            change = opened;
        }
        return opened;
    }

    /// What was opened since is no longer there: it was rolled back.
    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    void forgetSince(Optional<ChangeId> earlier) {
        change = earlier.orElse(null);
    }

    void note(
            String table,
            long id,
            @Nullable Map<String, @Nullable Object> before,
            @Nullable Map<String, @Nullable Object> after) {
        var animals = new LinkedHashSet<Long>();
        animalOf(table, id, before).ifPresent(animals::add);
        animalOf(table, id, after).ifPresent(animals::add);
        touchedAnimals.addAll(animals);
        touchPlace(table, id);
        var parameters = new ArrayList<@Nullable Object>();
        parameters.add(openedChange().value());
        parameters.add(table);
        parameters.add(id);
        parameters.add(animals.isEmpty() ? null : animals.getLast());
        parameters.add(before == null ? null : Image.of(before).toString());
        parameters.add(after == null ? null : Image.of(after).toString());
        prepared.update(
                "insert into entry"
                        + " (change, table_name, row_id, animal, before_image, after_image)"
                        + " values (?, ?, ?, ?, ?, ?)",
                parameters);
    }

    void noteUndone(ChangeId undone, ChangeId by, Optional<ChangeId> standsAgain) {
        prepared.update(
                "update change set undone_by = ? where id = ?",
                List.of(by.value(), undone.value()));
        prepared.update(
                "update change set undoes = ? where id = ?", List.of(undone.value(), by.value()));
        standsAgain.ifPresent(
                again ->
                        prepared.update(
                                "update change set undone_by = null where id = ?",
                                List.of(again.value())));
    }

    /// Brings up to date what follows from the rows that were written.
    void settle() {
        if (!touchedAnimals.isEmpty()) {
            new Derived(prepared).refresh(List.copyOf(touchedAnimals));
            touchedAnimals.clear();
        }
    }

    /// An animal is found by the name of the place it is in.
    private void touchPlace(String table, long id) {
        var whose =
                switch (table) {
                    case "tub" -> "t.id = ?";
                    case "rack" -> "t.rack = ?";
                    case "room" -> "r.room = ?";
                    default -> "";
                };
        if (!whose.isEmpty()) {
            touchedAnimals.addAll(
                    prepared.list(row -> row.number("id"), IN_PLACE + whose, List.of(id)));
        }
    }

    private static Optional<Long> animalOf(
            String table, long id, @Nullable Map<String, @Nullable Object> row) {
        if (table.equals("animal")) {
            return Optional.of(id);
        }
        return row != null && row.get("animal") instanceof Number animal
                ? Optional.of(animal.longValue())
                : Optional.empty();
    }
}
