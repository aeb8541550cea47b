package clutchwright.app.settings;

import clutchwright.app.wording.ImportWords;
import clutchwright.records.exchange.ImportOutcome;
import clutchwright.records.exchange.Problem;
import java.util.List;
import java.util.Locale;

/// What an import came to, as other programs read it.
///
/// @param applied whether the collection was changed
/// @param stops   how many problems stand against it
record ImportReport(
        String file,
        boolean dryRun,
        boolean applied,
        int added,
        int updated,
        int skipped,
        long stops,
        long notes,
        List<Found> problems) {

    ImportReport {
        problems = List.copyOf(problems);
    }

    /// @param row   counted from 1; 0 where it is not of one row
    /// @param column its heading; blank where it is not of one column
    /// @param table  the file of a package; blank for a single table
    /// @param kind   a short word for the kind of finding
    record Found(
            String severity,
            String table,
            int row,
            String column,
            String kind,
            String text,
            List<String> remedies) {}

    static ImportReport of(
            String file,
            boolean dryRun,
            ImportOutcome outcome,
            List<Problem> problems,
            ImportWords words) {
        var done =
                outcome instanceof ImportOutcome.Applied counts
                        ? counts
                        : new ImportOutcome.Applied(0, 0, 0);
        long stops = problems.stream().filter(Problem::stops).count();
        return new ImportReport(
                file,
                dryRun,
                outcome instanceof ImportOutcome.Applied && !dryRun,
                done.added(),
                done.updated(),
                done.skipped(),
                stops,
                problems.size() - stops,
                problems.stream().map(problem -> found(problem, words)).toList());
    }

    private static Found found(Problem problem, ImportWords words) {
        var place = place(problem.where());
        return new Found(
                word(problem.severity().name()),
                place.table(),
                place.row(),
                place.column(),
                problem.finding().getClass().getSimpleName(),
                words.of(problem.finding()),
                problem.remedies().stream().map(remedy -> word(remedy.name())).toList());
    }

    private record Place(String table, int row, String column) {}

    private static Place place(Problem.Where where) {
        return switch (where) {
            case Problem.Where.Cell(var row, _, var heading) -> new Place("", row, heading);
            case Problem.Where.WholeRow(var row) -> new Place("", row, "");
            case Problem.Where.WholeColumn(_, var heading) -> new Place("", 0, heading);
            case Problem.Where.WholeFile() -> new Place("", 0, "");
            case Problem.Where.OtherFile(var file, var row) -> new Place(file, row, "");
        };
    }

    private static String word(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
