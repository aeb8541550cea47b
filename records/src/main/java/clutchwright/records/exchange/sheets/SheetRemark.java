package clutchwright.records.exchange.sheets;

import java.util.List;

/// Something peculiar in a file that could still be read.
///
/// Rows are counted from 1, columns from 0.
public sealed interface SheetRemark {

    /// A formula stands in the cell; the value that the spreadsheet last computed was taken.
    record FormulaValue(int row, int column, String value) implements SheetRemark {}

    /// A formula stands in the cell and no computed value was saved with it: taken as blank.
    record FormulaWithoutValue(int row, int column) implements SheetRemark {}

    /// The cell shows an error such as `#REF!`: taken as blank.
    record ErrorCell(int row, int column, String shown) implements SheetRemark {}

    /// The row ends early: the missing cells were taken as blank.
    record ShortRow(int row, int found, int expected) implements SheetRemark {}

    /// The row has cells beyond the header, so its values may stand in the wrong columns.
    ///
    /// @param surplus what stands in the cells that no column has
    record LongRow(int row, int found, int expected, List<String> surplus) implements SheetRemark {

        public LongRow {
            surplus = List.copyOf(surplus);
        }
    }

    /// The file does not say how its letters are encoded; this reading fits its bytes.
    record EncodingTaken(String charset) implements SheetRemark {}

    /// Rows above the header that were passed over.
    record RowsAboveHeader(int count) implements SheetRemark {}
}
