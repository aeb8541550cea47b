package clutchwright.records.exchange.sheets;

import java.util.List;

/// Why a file cannot be read as a table at all.
///
/// Rows are counted from 1, columns from 0.
public sealed interface FileFault {

    /// No such file, or it may not be read.
    record NotFound(String file) implements FileFault {}

    /// Sizes in bytes.
    record TooLarge(long size, long limit) implements FileFault {}

    /// A packed file that unpacks to more than any real table: perhaps made to do harm.
    ///
    /// @param limit in bytes, unpacked
    record UnpacksTooLarge(long limit) implements FileFault {}

    record TooManyRows(int limit) implements FileFault {}

    record TooManyColumns(int row, int found, int limit) implements FileFault {}

    /// @param length in characters
    record CellTooLong(int row, int column, int length, int limit) implements FileFault {}

    /// Nothing but blank cells.
    record Empty() implements FileFault {}

    /// A header and no rows under it.
    record OnlyHeader(int headerRow) implements FileFault {}

    /// The bytes are of something else than a table this program reads.
    record OtherFormat(Format format) implements FileFault {}

    /// The file is damaged: it begins like a workbook and cannot be read to its end.
    record Broken() implements FileFault {}

    /// A quoted cell of this row does not end, or goes on after its closing quote.
    record BadQuote(int row) implements FileFault {}

    record NoSuchSheet(String wanted, List<String> present) implements FileFault {

        public NoSuchSheet {
            present = List.copyOf(present);
        }
    }

    enum Format {
        /// A workbook of before 2007, `.xls`.
        OLD_WORKBOOK,
        /// A workbook locked with a password.
        LOCKED_WORKBOOK,
        /// A workbook in the OpenDocument format, `.ods`.
        OPEN_DOCUMENT,
        PDF,
        PICTURE,
        /// A packed folder without a workbook in it.
        ARCHIVE,
        WEB_PAGE,
        /// Bytes that are no text.
        UNKNOWN
    }
}
