package clutchwright.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/// Columns of text, as wide as what stands in them.
///
/// @param heads one a column
/// @param toTheRight whether the column is set to the right, as figures are
/// @param rows each with one text a column
public record TextTable(List<String> heads, List<Boolean> toTheRight, List<List<String>> rows) {

    private static final String BETWEEN = "   ";

    public TextTable {
        heads = List.copyOf(heads);
        toTheRight = List.copyOf(toTheRight);
        rows = rows.stream().map(List::copyOf).toList();
        for (var row : rows) {
            if (row.size() != heads.size() || heads.size() != toTheRight.size()) {
                throw new IllegalArgumentException(
                        "a row of %d in a table of %d columns".formatted(row.size(), heads.size()));
            }
        }
    }

    /// The head, then the rows, without blanks at their ends.
    public List<String> lines() {
        var all = new ArrayList<List<String>>();
        all.add(heads);
        all.addAll(rows);
        var widths = IntStream.range(0, heads.size()).mapToObj(c -> width(all, c)).toList();
        return all.stream().map(cells -> line(cells, widths)).toList();
    }

    private String line(List<String> cells, List<Integer> widths) {
        var line = new StringBuilder();
        for (int column = 0; column < cells.size(); column++) {
            line.append(column == 0 ? "" : BETWEEN);
            var blanks = " ".repeat(widths.get(column) - lengthOf(cells.get(column)));
            line.append(toTheRight.get(column) ? blanks : "")
                    .append(cells.get(column))
                    .append(toTheRight.get(column) ? "" : blanks);
        }
        return line.toString().stripTrailing();
    }

    private static int width(List<List<String>> rows, int column) {
        return rows.stream().mapToInt(row -> lengthOf(row.get(column))).max().orElse(0);
    }

    private static int lengthOf(String text) {
        return text.codePointCount(0, text.length());
    }
}
