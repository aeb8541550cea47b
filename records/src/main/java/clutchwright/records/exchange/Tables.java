package clutchwright.records.exchange;

import clutchwright.records.exchange.sheets.Limits;
import clutchwright.records.exchange.sheets.SheetFile;
import clutchwright.records.exchange.sheets.SheetReading;
import java.nio.file.Path;

/// Reads a breeder's table, its header found by the names that columns of ours go by.
public final class Tables {

    private Tables() {}

    /// @param path where the bytes are
    /// @param name what the keeper calls the file
    /// @param sheet which sheet of a workbook, by name; its first that is not blank if empty text
    public static SheetReading read(Path path, String name, String sheet) {
        return new SheetFile(Headings.KNOWN, Limits.USUAL).read(path, name, sheet);
    }
}
