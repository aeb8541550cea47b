package clutchwright.records.exchange.sheets;

import java.util.List;

/// One table of a file: a header and the rows under it.
///
/// @param file as the keeper named it
/// @param name of the chosen sheet; the file's name where a file is one table
/// @param sheets every sheet of the file, in its order; one where a file is one table
/// @param headerRow counted from 1, as a spreadsheet counts
/// @param header the column names as written; a column without one is called by its letter
/// @param rows without those that are blank; each has as many cells as the header
public record Sheet(
        String file,
        String name,
        List<String> sheets,
        int headerRow,
        List<String> header,
        List<Row> rows,
        List<SheetRemark> remarks) {

    public Sheet {
        sheets = List.copyOf(sheets);
        header = List.copyOf(header);
        rows = List.copyOf(rows);
        remarks = List.copyOf(remarks);
        for (var row : rows) {
            if (row.cells().size() != header.size()) {
                throw new IllegalArgumentException(
                        "row %d has %d cells under a header of %d"
                                .formatted(row.number(), row.cells().size(), header.size()));
            }
        }
    }

    /// @param number counted from 1 over all rows of the file, as a spreadsheet counts
    /// @param cells as written, not trimmed; empty where nothing stands
    public record Row(int number, List<String> cells) {

        public Row {
            cells = List.copyOf(cells);
        }

        public boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    /// The letter or letters by which a spreadsheet calls a column: `A` for 0, `AA` for 26.
    public static String letterOf(int column) {
        var letters = new StringBuilder();
        for (int rest = column; rest >= 0; rest = rest / 26 - 1) {
            letters.insert(0, (char) ('A' + rest % 26));
        }
        return letters.toString();
    }
}
