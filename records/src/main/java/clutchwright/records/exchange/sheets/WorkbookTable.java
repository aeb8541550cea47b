package clutchwright.records.exchange.sheets;

import clutchwright.records.exchange.sheets.Sheet.Row;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.jspecify.annotations.Nullable;

/// Reads one sheet of a workbook as its cells show it.
final class WorkbookTable {

    private final String file;
    private final Limits limits;
    private final List<SheetRemark> remarks = new ArrayList<>();

    private WorkbookTable(String file, Limits limits) {
        this.file = file;
        this.limits = limits;
    }

    /// @param formatted whether the workbook has formats; the library fails to look for them else
    /// @param wanted the sheet's name; the first that is not blank if none is named
    static Grid read(
            Path path, String file, boolean formatted, Optional<String> wanted, Limits limits)
            throws Rejected, IOException {
        return new WorkbookTable(file, limits)
                .read(path, new ReadingOptions(formatted, true), wanted);
    }

    private Grid read(Path path, ReadingOptions options, Optional<String> wanted)
            throws Rejected, IOException {
        try (var workbook = new ReadableWorkbook(path.toFile(), options)) {
            var names =
                    workbook.getSheets().map(org.dhatim.fastexcel.reader.Sheet::getName).toList();
            for (var name : wanted.map(List::of).orElse(names)) {
                var sheet = workbook.findSheet(name);
                if (sheet.isEmpty()) {
                    throw new Rejected(new FileFault.NoSuchSheet(name, names));
                }
                remarks.clear();
                var rows = rows(sheet.get(), workbook.isDate1904());
                if (!rows.isEmpty()) {
                    return new Grid(file, name, names, rows, remarks, true);
                }
            }
            throw new Rejected(new FileFault.Empty());
        }
    }

    private List<Row> rows(org.dhatim.fastexcel.reader.Sheet sheet, boolean from1904)
            throws Rejected, IOException {
        var rows = new ArrayList<Row>();
        try (var stream = sheet.openStream()) {
            Iterator<org.dhatim.fastexcel.reader.Row> every = stream.iterator();
            while (every.hasNext()) {
                var source = every.next();
                var cells = new ArrayList<String>();
                int filled = 0;
                for (int column = 0; column < source.getCellCount(); column++) {
                    var text = text(source.getCell(column), source.getRowNum(), column, from1904);
                    cells.add(text);
                    filled = text.isBlank() ? filled : column + 1;
                }
                if (filled > 0) {
                    rows.add(
                            TextTable.checked(
                                    source.getRowNum(), cells.subList(0, filled), limits));
                }
                if (rows.size() > limits.rows() + 1) {
                    throw new Rejected(new FileFault.TooManyRows(limits.rows()));
                }
            }
        }
        return rows;
    }

    private String text(@Nullable Cell cell, int row, int column, boolean from1904) {
        if (cell == null || cell.getType() == CellType.EMPTY) {
            return "";
        }
        if (cell.getType() == CellType.ERROR) {
            remarks.add(new SheetRemark.ErrorCell(row, column, rawOf(cell)));
            return "";
        }
        if (cell.getType() == CellType.FORMULA) {
            return formulaValue(cell, row, column, from1904);
        }
        if (cell.getType() == CellType.NUMBER) {
            return number(cell, from1904);
        }
        var text = cell.getText();
        return text == null ? "" : text;
    }

    private String formulaValue(Cell cell, int row, int column, boolean from1904) {
        var raw = rawOf(cell);
        if (raw.isEmpty()) {
            remarks.add(new SheetRemark.FormulaWithoutValue(row, column));
            return "";
        }
        if (raw.startsWith("#")) {
            remarks.add(new SheetRemark.ErrorCell(row, column, raw));
            return "";
        }
        var shown = raw;
        if (raw.matches("-?[0-9]+(\\.[0-9]+)?([eE][+-]?[0-9]+)?")) {
            shown = shown(new BigDecimal(raw), cell, from1904);
        }
        remarks.add(new SheetRemark.FormulaValue(row, column, shown));
        return shown;
    }

    private static String number(Cell cell, boolean from1904) {
        try {
            return shown(new BigDecimal(rawOf(cell)), cell, from1904);
        } catch (NumberFormatException noNumber) {
            return rawOf(cell);
        }
    }

    private static String shown(BigDecimal value, Cell cell, boolean from1904) {
        var format = cell.getDataFormatString();
        var id = cell.getDataFormatId();
        return Shown.number(value, format == null ? "" : format, id == null ? 0 : id, from1904);
    }

    private static String rawOf(Cell cell) {
        var raw = cell.getRawValue();
        return raw == null ? "" : raw;
    }
}
