package clutchwright.records.journal;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.store.Image;
import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/// Takes one change back, the last row first.
final class Undoing {

    private final Transaction tx;
    private final Journal journal;
    private final Change change;

    Undoing(Transaction tx, Journal journal, Change change) {
        this.tx = tx;
        this.journal = journal;
        this.change = change;
    }

    Undo result() {
        var steps = steps();
        var blocking = changedSince(steps);
        if (!blocking.isEmpty()) {
            return new Undo.Blocked(journal.laterThan(change.id(), blocking));
        }
        var hanging = pointingAtWhatWouldGo(steps);
        if (!hanging.isEmpty()) {
            return new Undo.Blocked(journal.laterThan(change.id(), hanging));
        }
        return tx.attempt(() -> takeBack(steps))
                // A tag that another animal has by now, or a dam that would be male again.
                .orElseGet(() -> new Undo.Blocked(laterInTheSameTables(steps)));
    }

    private Optional<Undo> takeBack(List<Step> steps) {
        var by = tx.openedChange();
        var lost = lostGenes(steps);
        for (var step : steps) {
            if (step.before().isPresent()) {
                tx.restore(step.table(), step.row(), step.before().get());
            } else {
                tx.delete(step.table(), step.row());
            }
        }
        if (!new Soundness(tx).holds(restoredAnimals(steps))
                || !lost.containsAll(lostGenes(steps))) {
            return Optional.empty();
        }
        tx.markUndone(change.id(), by, change.undoes());
        return Optional.of(new Undo.Undone(by));
    }

    private static Set<AnimalId> restoredAnimals(List<Step> steps) {
        return steps.stream()
                .filter(step -> step.before().isPresent() && step.table().equals("animal"))
                .map(step -> new AnimalId(step.row()))
                .collect(Collectors.toSet());
    }

    /// Genes of animals that no catalogue has; only where the keeper's own genes are put back.
    private Set<LostGenes.Gene> lostGenes(List<Step> steps) {
        return steps.stream().anyMatch(step -> step.table().equals("overlay_entry"))
                ? LostGenes.of(tx)
                : Set.of();
    }

    /// The rows that are no longer as the change left them. A row that the change wrote more than
    /// once is compared with what it wrote last.
    private List<Journal.Touched> changedSince(List<Step> steps) {
        var seen = new HashSet<Journal.Touched>();
        var found = new ArrayList<Journal.Touched>();
        for (var step : steps) {
            var touched = step.touched();
            if (seen.add(touched)) {
                var asLeft =
                        step.after().isPresent()
                                ? tx.isAs(step.table(), step.row(), step.after().get())
                                : tx.row(step.table(), step.row()).isEmpty();
                if (!asLeft) {
                    found.add(touched);
                }
            }
        }
        return found;
    }

    private List<Journal.Touched> pointingAtWhatWouldGo(List<Step> steps) {
        var written = steps.stream().map(Step::touched).collect(Collectors.toSet());
        Set<Journal.Touched> going = new HashSet<>();
        for (var step : steps) {
            if (step.before().isEmpty()) {
                going.add(step.touched());
            }
        }
        return going.stream()
                .flatMap(row -> tx.pointingAt(row.table(), row.row()).stream())
                .flatMap(
                        pointing ->
                                pointing.rows().stream()
                                        .map(row -> new Journal.Touched(pointing.table(), row)))
                .filter(row -> !written.contains(row))
                .distinct()
                .toList();
    }

    private List<Change> laterInTheSameTables(List<Step> steps) {
        var tables = steps.stream().map(Step::table).distinct().toList();
        return tx.list(
                Journal::change,
                "select distinct c.* from change c join entry e on e.change = c.id"
                        + " where c.id > ? and c.undone_by is null"
                        + " and e.table_name in ("
                        + "?, ".repeat(tables.size() - 1)
                        + "?) order by c.id desc limit 50",
                parameters(tables));
    }

    private Object[] parameters(List<String> tables) {
        var all = new ArrayList<Object>();
        all.add(change.id().value());
        all.addAll(tables);
        return all.toArray();
    }

    private List<Step> steps() {
        return tx.list(
                row ->
                        new Step(
                                row.text("table_name"),
                                row.number("row_id"),
                                row.findText("before_image").map(Image::read),
                                row.findText("after_image").map(Image::read)),
                "select * from entry where change = ? order by id desc",
                change.id().value());
    }

    private record Step(String table, long row, Optional<Image> before, Optional<Image> after) {

        Journal.Touched touched() {
            return new Journal.Touched(table, row);
        }
    }
}
