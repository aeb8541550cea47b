package clutchwright.records.exchange;

import clutchwright.records.exchange.Problem.Where;
import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.store.Author;
import clutchwright.records.store.Database;
import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import java.util.concurrent.CancellationException;

/// What importing a file would do, and every problem that the whole file has.
///
/// Making a plan changes nothing. A plan without a problem that stops can be applied: all of it
/// or nothing, as one change of the journal.
///
/// @param rows what becomes of each row that could be understood, in the file's order
/// @param strangers parents that will be made since nothing else speaks of them
/// @param problems in the file's order, those of the whole file first
public record ImportPlan(
        Sheet sheet,
        ColumnMatching matching,
        Choices choices,
        SpeciesLines lines,
        List<PlannedRow> rows,
        List<AnimalEntry> strangers,
        List<Problem> problems) {

    public ImportPlan {
        rows = List.copyOf(rows);
        strangers = List.copyOf(strangers);
        problems = List.copyOf(problems);
    }

    /// One row of the file.
    ///
    /// @param row counted from 1, as in the file
    public record PlannedRow(int row, AnimalEntry entry, Fate fate) {}

    /// What becomes of a row.
    public enum Fate {
        ADDED,
        UPDATED,
        /// It says nothing that is not on record.
        SKIPPED,
        /// A problem stands against it.
        REFUSED
    }

    /// Reads every row, and finds what stands against it in the file and on record.
    ///
    /// @throws java.util.concurrent.CancellationException if the progress asks to stop
    public static ImportPlan of(
            Transaction tx,
            Sheet sheet,
            ColumnMatching matching,
            Choices choices,
            SpeciesLines lines,
            Progress progress) {
        return new Planner(tx, sheet, matching, choices, lines, false).plan(progress);
    }

    /// Carries the plan out.
    ///
    /// It is made afresh first, inside the same transaction, so that nothing that happened since
    /// can slip in between.
    ///
    /// @param what what the keeper did, for the journal
    /// @param progress told of twice as many rows as the file has: once read, once written
    public ImportOutcome apply(Database database, Author who, String what, Progress progress) {
        try {
            return database.write(who, what, tx -> applied(tx, progress));
        } catch (RefusedByRecords refused) {
            return new ImportOutcome.Refused(refused.problems());
        } catch (CancellationException stopped) {
            return new ImportOutcome.Cancelled();
        }
    }

    private ImportOutcome applied(Transaction tx, Progress progress) {
        var planner = new Planner(tx, sheet, matching, choices, lines, false);
        var fresh = planner.plan((done, total) -> progress.reached(done, 2 * total));
        return fresh.canBeApplied()
                ? Application.write(tx, fresh, planner.order(), progress)
                : new ImportOutcome.Refused(fresh.problems());
    }

    /// Whether nothing stands against it.
    public boolean canBeApplied() {
        return problems.stream().noneMatch(Problem::stops);
    }

    public List<Problem> stops() {
        return problems.stream().filter(Problem::stops).toList();
    }

    public List<Problem> notes() {
        return problems.stream().filter(problem -> !problem.stops()).toList();
    }

    public int count(Fate fate) {
        return Math.toIntExact(rows.stream().filter(row -> row.fate() == fate).count());
    }

    /// The problems under the heading they belong to; those of no column under empty text, first.
    public SequencedMap<String, List<Problem>> problemsByColumn() {
        var grouped = new LinkedHashMap<String, List<Problem>>();
        grouped.put("", new ArrayList<>());
        sheet.header().forEach(heading -> grouped.put(heading, new ArrayList<>()));
        for (var problem : problems) {
            grouped.computeIfAbsent(headingOf(problem.where()), _ -> new ArrayList<>())
                    .add(problem);
        }
        grouped.values().removeIf(List::isEmpty);
        return grouped;
    }

    /// What was understood of the first rows.
    public List<PlannedRow> preview(int most) {
        return rows.subList(0, Math.min(most, rows.size()));
    }

    private static String headingOf(Where where) {
        return switch (where) {
            case Where.Cell(_, _, var heading) -> heading;
            case Where.WholeColumn(_, var heading) -> heading;
            case Where.WholeRow _, Where.WholeFile _, Where.OtherFile _ -> "";
        };
    }
}
