package clutchwright.records.exchange;

import clutchwright.records.exchange.Problem.Where;
import clutchwright.records.exchange.sheets.Sheet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/// A row of one of our own files, by its headings.
///
/// @param row counted from 1, as in the file
record RowByHeading(String file, int row, SequencedMap<String, String> cells) {

    static List<RowByHeading> all(Sheet sheet) {
        return sheet.rows().stream().map(row -> of(sheet, row)).toList();
    }

    private static RowByHeading of(Sheet sheet, Sheet.Row row) {
        var byHeading = new LinkedHashMap<String, String>();
        for (int i = 0; i < sheet.header().size(); i++) {
            byHeading.put(sheet.header().get(i), SpreadsheetSafety.reveal(row.cells().get(i)));
        }
        return new RowByHeading(sheet.file(), row.number(), byHeading);
    }

    /// Empty text where there is no such column.
    String get(String heading) {
        return cells.getOrDefault(heading, "");
    }

    Where where() {
        return new Where.OtherFile(file, row);
    }
}
