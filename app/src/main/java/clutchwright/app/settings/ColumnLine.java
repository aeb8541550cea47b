package clutchwright.app.settings;

import clutchwright.records.exchange.Column;
import clutchwright.records.exchange.ImportPlan;
import clutchwright.records.exchange.sheets.Sheet;
import java.util.List;
import java.util.stream.IntStream;

/// One column of a file and what it is taken to hold.
///
/// @param field of the form
/// @param letter as a spreadsheet calls it
/// @param samples its first cells that are not blank
public record ColumnLine(
        String field, String letter, String heading, String samples, Column column, int problems) {

    private static final int SAMPLES = 3;
    private static final int LONGEST = 44;

    static List<ColumnLine> all(ImportPlan plan) {
        var byColumn = plan.problemsByColumn();
        return IntStream.range(0, plan.matching().columns().size())
                .mapToObj(
                        index -> {
                            var heading = plan.matching().headings().get(index);
                            var found = byColumn.getOrDefault(heading, List.of());
                            return new ColumnLine(
                                    ImportForm.column(index),
                                    Sheet.letterOf(index),
                                    heading,
                                    samples(plan, index),
                                    plan.matching().columns().get(index),
                                    (int) found.stream().filter(p -> p.stops()).count());
                        })
                .toList();
    }

    private static String samples(ImportPlan plan, int index) {
        return String.join(
                " · ",
                plan.sheet().rows().stream()
                        .map(row -> row.cells().get(index).strip())
                        .filter(cell -> !cell.isEmpty())
                        .distinct()
                        .limit(SAMPLES)
                        .map(cell -> ProblemGroup.shortened(cell, LONGEST))
                        .toList());
    }
}
