package clutchwright.app.wording;

import clutchwright.records.exchange.sheets.FileFault;
import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.exchange.sheets.SheetRemark;

/// Why a file is no table, or what was peculiar about it, as sentences.
public final class FileWords {

    private FileWords() {}

    public static String of(FileFault fault, Formats formats) {
        return switch (fault) {
            case FileFault.NotFound(var file) -> "There is no file “%s” to read.".formatted(file);
            case FileFault.TooLarge(var size, var limit) ->
                    "The file has %s MB: at most %s MB can be read."
                            .formatted(megabytes(size, formats), megabytes(limit, formats));
            case FileFault.UnpacksTooLarge(var limit) ->
                    "The file unpacks to more than %s MB, so it was not read further."
                            .formatted(megabytes(limit, formats));
            case FileFault.TooManyRows(var limit) ->
                    "There are more than %s rows.".formatted(formats.whole(limit));
            case FileFault.TooManyColumns(var row, var found, var limit) ->
                    "Row %d has %d cells: at most %d can be read.".formatted(row, found, limit);
            case FileFault.CellTooLong(var row, var column, var length, var limit) ->
                    "Cell %s%d has %s characters: at most %s can be read."
                            .formatted(
                                    Sheet.letterOf(column),
                                    row,
                                    formats.whole(length),
                                    formats.whole(limit));
            case FileFault.Empty() -> "There is nothing in the file.";
            case FileFault.OnlyHeader(var row) ->
                    "Nothing stands under the header in row %d.".formatted(row);
            case FileFault.OtherFormat(var format) -> of(format);
            case FileFault.Broken() ->
                    "The file is damaged. Open it in a spreadsheet program and save it anew.";
            case FileFault.BadQuote(var row) ->
                    "A quotation mark that begins in row %d does not end where it should."
                            .formatted(row);
            case FileFault.NoSuchSheet(var wanted, var present) ->
                    "There is no sheet “%s”; there are %s."
                            .formatted(wanted, formats.list(present));
        };
    }

    private static String of(FileFault.Format format) {
        var what =
                switch (format) {
                    case OLD_WORKBOOK -> "a workbook of the old kind (.xls); save it as .xlsx";
                    case LOCKED_WORKBOOK -> "a workbook with a password; save it without one";
                    case OPEN_DOCUMENT -> "an OpenDocument sheet (.ods); save it as .xlsx or .csv";
                    case PDF -> "a PDF; a table as .csv or .xlsx was expected";
                    case PICTURE -> "a picture; a table as .csv or .xlsx was expected";
                    case ARCHIVE -> "a packed folder without animals.csv or a workbook in it";
                    case WEB_PAGE -> "a web page; a table as .csv or .xlsx was expected";
                    case UNKNOWN -> "not text; a table as .csv or .xlsx was expected";
                };
        return "The file is " + what + ".";
    }

    public static String of(SheetRemark remark) {
        return switch (remark) {
            case SheetRemark.FormulaValue(_, _, var value) ->
                    "A formula stands here; its last value “%s” is taken.".formatted(value);
            case SheetRemark.FormulaWithoutValue _ ->
                    "A formula without a value stands here; taken as blank.";
            case SheetRemark.ErrorCell(_, _, var shown) ->
                    "The cell shows the error %s; taken as blank.".formatted(shown);
            case SheetRemark.ShortRow(_, var found, var expected) ->
                    "The row has %d cells under %d headings; the rest is taken as blank."
                            .formatted(found, expected);
            case SheetRemark.LongRow(_, var found, var expected, _) ->
                    "The row has %d cells under %d headings.".formatted(found, expected);
            case SheetRemark.EncodingTaken(var charset) ->
                    "The letters are read as %s.".formatted(charset);
            case SheetRemark.RowsAboveHeader(var count) ->
                    count == 1
                            ? "One row above the header is passed over."
                            : "%d rows above the header are passed over.".formatted(count);
        };
    }

    private static String megabytes(long bytes, Formats formats) {
        return formats.decimals(bytes / 1_048_576.0, 1);
    }
}
