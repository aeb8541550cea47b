package clutchwright.records.exchange.sheets;

import clutchwright.records.exchange.sheets.Sheet.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/// Every row of a table as it stands in the file, before a header is found in it.
///
/// @param shortRowsAreUsual whether the format leaves out trailing blank cells by itself
record Grid(
        String file,
        String name,
        List<String> sheets,
        List<Row> rows,
        List<SheetRemark> remarks,
        boolean shortRowsAreUsual) {

    /// A title, an address, a legend: more rows than this above a header were never seen.
    private static final int ROWS_SEARCHED = 40;

    Grid {
        sheets = List.copyOf(sheets);
        rows = List.copyOf(rows);
        remarks = List.copyOf(remarks);
    }

    Sheet under(HeaderSense sense) throws Rejected {
        int at = findHeader(sense);
        var head = rows.get(at);
        var header = headerOf(head, widestBelow(at));
        var notes = new ArrayList<SheetRemark>();
        int above = (int) rows.subList(0, at).stream().filter(row -> !row.isBlank()).count();
        if (above > 0) {
            notes.add(new SheetRemark.RowsAboveHeader(above));
        }
        // Peculiar cells above the header and in columns without a header concern nobody.
        notes.addAll(remarks);
        var body = new ArrayList<Row>();
        for (var row : rows.subList(at + 1, rows.size())) {
            if (!row.isBlank()) {
                body.add(fitted(row, header.size(), notes));
            }
        }
        if (body.isEmpty()) {
            throw new Rejected(new FileFault.OnlyHeader(head.number()));
        }
        return new Sheet(file, name, sheets, head.number(), header, body, notes);
    }

    private int findHeader(HeaderSense sense) throws Rejected {
        int best = -1;
        long most = 0;
        int first = -1;
        for (int i = 0; i < Math.min(rows.size(), ROWS_SEARCHED); i++) {
            if (rows.get(i).isBlank()) {
                continue;
            }
            first = first < 0 ? i : first;
            long known = knownNames(rows.get(i), sense);
            if (known > most) {
                most = known;
                best = i;
            }
        }
        if (first < 0) {
            throw new Rejected(new FileFault.Empty());
        }
        return best < 0 ? first : best;
    }

    static long knownNames(Row row, HeaderSense sense) {
        return row.cells().stream().distinct().filter(sense::isColumnName).count();
    }

    /// Columns under a header that ends early still count where a value stands in them.
    ///
    /// Only where most rows have them: one long row is a fault of that row.
    private int widestBelow(int at) {
        var widths = new int[Limits.USUAL.columns() + 1];
        int counted = 0;
        for (var row : rows.subList(at + 1, rows.size())) {
            int width = widthOf(row);
            if (width > 0 && width < widths.length) {
                widths[width]++;
                counted++;
            }
        }
        int reaching = 0;
        for (int width = widths.length - 1; width > 0; width--) {
            reaching += widths[width];
            if (reaching * 2 > counted) {
                return width;
            }
        }
        return 0;
    }

    private static List<String> headerOf(Row head, int widest) {
        int width = Math.max(widthOf(head), widest);
        return IntStream.range(0, width)
                .mapToObj(
                        i -> {
                            var text = i < head.cells().size() ? head.cells().get(i).strip() : "";
                            return text.isEmpty() ? Sheet.letterOf(i) : text;
                        })
                .toList();
    }

    private static int widthOf(Row row) {
        int width = row.cells().size();
        while (width > 0 && row.cells().get(width - 1).isBlank()) {
            width--;
        }
        return width;
    }

    private Row fitted(Row row, int width, List<SheetRemark> notes) {
        var cells = row.cells();
        int filled = widthOf(row);
        if (filled > width) {
            notes.add(
                    new SheetRemark.LongRow(
                            row.number(), filled, width, cells.subList(width, filled)));
        } else if (cells.size() < width && !shortRowsAreUsual) {
            notes.add(new SheetRemark.ShortRow(row.number(), cells.size(), width));
        }
        if (cells.size() == width) {
            return row;
        }
        return new Row(
                row.number(),
                IntStream.range(0, width)
                        .mapToObj(i -> i < cells.size() ? cells.get(i) : "")
                        .toList());
    }
}
