package clutchwright.records.exchange;

import clutchwright.records.exchange.sheets.Sheet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/// What each column of a file is taken to hold.
///
/// @param headings as in the file
/// @param columns what each holds, in the same order
public record ColumnMatching(List<String> headings, List<Column> columns) {

    public ColumnMatching {
        headings = List.copyOf(headings);
        columns = List.copyOf(columns);
        if (headings.size() != columns.size()) {
            throw new IllegalArgumentException(
                    headings.size() + " headings, but " + columns.size() + " columns");
        }
        var met = EnumSet.noneOf(Column.class);
        for (var column : columns) {
            if (!met.add(column) && !column.mayRepeat()) {
                throw new IllegalArgumentException("two columns hold " + column.label());
            }
        }
    }

    /// What the headings say. A second column of a kind that may not repeat, and one whose heading
    /// says nothing, is kept among the notes. Where no column is headed as a tag but one as a
    /// name, the names serve as tags.
    public static ColumnMatching propose(Sheet sheet) {
        return propose(sheet.header());
    }

    static ColumnMatching propose(List<String> headings) {
        var met = EnumSet.noneOf(Column.class);
        var columns = new ArrayList<Column>();
        for (var heading : headings) {
            var column = Headings.KNOWN.find(heading).orElse(Column.AMONG_NOTES);
            columns.add(met.add(column) || column.mayRepeat() ? column : Column.AMONG_NOTES);
        }
        if (!met.contains(Column.TAG) && met.contains(Column.NAME)) {
            columns.set(columns.indexOf(Column.NAME), Column.TAG);
        }
        return new ColumnMatching(headings, columns);
    }

    /// The same with one column holding something else; a column that held it before and may not
    /// repeat is kept among the notes instead.
    public ColumnMatching with(int index, Column column) {
        var changed = new ArrayList<>(columns);
        if (!column.mayRepeat()) {
            Collections.replaceAll(changed, column, Column.AMONG_NOTES);
        }
        changed.set(index, column);
        return new ColumnMatching(headings, changed);
    }

    /// The position of the one column that holds this.
    public Optional<Integer> find(Column column) {
        int at = columns.indexOf(column);
        return at < 0 ? Optional.empty() : Optional.of(at);
    }

    /// Where a problem of that column stands: the cell, or the row if no column holds it.
    Problem.Where place(int row, Column column) {
        return find(column == Column.STATED ? firstOfGenes() : column)
                .<Problem.Where>map(at -> new Problem.Where.Cell(row, at, headings.get(at)))
                .orElseGet(() -> new Problem.Where.WholeRow(row));
    }

    private Column firstOfGenes() {
        return columns.stream()
                .filter(
                        column ->
                                column == Column.STATED
                                        || column == Column.HETS
                                        || column == Column.POSSIBLE_HETS)
                .findFirst()
                .orElse(Column.STATED);
    }

    /// The positions of all columns that hold this, in the file's order.
    public List<Integer> all(Column column) {
        return IntStream.range(0, columns.size())
                .filter(i -> columns.get(i) == column)
                .boxed()
                .toList();
    }

    /// By which a matching is remembered: files with the same headings are matched alike.
    public String signature() {
        return signature(headings);
    }

    static String signature(List<String> headings) {
        return String.join("|", Headings.keys(headings));
    }
}
