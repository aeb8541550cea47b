package clutchwright.records.exchange.sheets;

import clutchwright.records.exchange.sheets.Sheet.Row;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/// Reads text with a separator between cells: comma, semicolon, tab or bar.
final class TextTable {

    private static final char[] SEPARATORS = {',', ';', '\t', '|'};

    private static final int ROWS_FOR_GUESS = 60;

    /// The first line by which some spreadsheets announce the separator.
    private static final Pattern ANNOUNCED = Pattern.compile("sep=(.)(\\R).*", Pattern.DOTALL);

    private TextTable() {}

    static Grid read(String file, TextDecoding decoded, HeaderSense sense, Limits limits)
            throws Rejected {
        var remarks = new ArrayList<SheetRemark>();
        decoded.guessed().ifPresent(name -> remarks.add(new SheetRemark.EncodingTaken(name)));
        var announced = ANNOUNCED.matcher(decoded.text());
        boolean says = announced.matches();
        var text = says ? decoded.text().substring(announced.end(2)) : decoded.text();
        char separator = says ? announced.group(1).charAt(0) : guessSeparator(text, sense);
        return new Grid(file, file, List.of(file), rows(text, separator, limits), remarks, false);
    }

    private static List<Row> rows(String text, char separator, Limits limits) throws Rejected {
        var rows = new ArrayList<Row>();
        try (var reader = open(text, separator)) {
            for (var csv : reader) {
                int number = rows.size() + 1;
                if (number > limits.rows() + 1) {
                    throw new Rejected(new FileFault.TooManyRows(limits.rows()));
                }
                rows.add(checked(number, csv.getFields(), limits));
            }
        } catch (CsvParseException badQuote) {
            throw new Rejected(new FileFault.BadQuote(rows.size() + 1));
        } catch (IOException impossible) {
            throw new IllegalStateException("text in memory cannot fail to be read", impossible);
        }
        return rows;
    }

    static Row checked(int number, List<String> cells, Limits limits) throws Rejected {
        if (cells.size() > limits.columns()) {
            throw new Rejected(
                    new FileFault.TooManyColumns(number, cells.size(), limits.columns()));
        }
        for (int column = 0; column < cells.size(); column++) {
            int length = cells.get(column).length();
            if (length > limits.cellCharacters()) {
                throw new Rejected(
                        new FileFault.CellTooLong(number, column, length, limits.cellCharacters()));
            }
        }
        return new Row(number, cells);
    }

    private static CsvReader<CsvRecord> open(String text, char separator) {
        return CsvReader.builder()
                .fieldSeparator(separator)
                .skipEmptyLines(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .trimWhitespacesAroundQuotes(true)
                .maxBufferSize(64 << 20)
                .ofCsvRecord(text);
    }

    /// The separator whose best row names most columns; then the one that divides most rows into
    /// the same number of cells.
    private static char guessSeparator(String text, HeaderSense sense) {
        char best = SEPARATORS[0];
        double most = -1;
        for (char separator : SEPARATORS) {
            double fit = fit(text, separator, sense);
            if (fit > most) {
                most = fit;
                best = separator;
            }
        }
        return best;
    }

    private static double fit(String text, char separator, HeaderSense sense) {
        long names = 0;
        var widths = new HashMap<Integer, Integer>();
        int rows = 0;
        try (var reader = open(text, separator)) {
            for (var csv : reader) {
                var row = new Row(rows + 1, csv.getFields());
                if (!row.isBlank()) {
                    names = Math.max(names, Grid.knownNames(row, sense));
                    widths.merge(row.cells().size(), 1, Integer::sum);
                }
                if (++rows >= ROWS_FOR_GUESS) {
                    break;
                }
            }
        } catch (CsvParseException | IOException notThisOne) {
            // With a wrong separator quotes may stand anywhere; what was read so far still counts.
            rows = Math.max(rows, 1);
        }
        int alike =
                widths.entrySet().stream()
                        .filter(entry -> entry.getKey() > 1)
                        .mapToInt(Map.Entry::getValue)
                        .max()
                        .orElse(0);
        return names + (rows == 0 ? 0 : 0.9 * alike / rows);
    }

    static Optional<FileFault.Format> webPage(String text) {
        var start = text.substring(0, Math.min(text.length(), 200)).strip();
        return start.regionMatches(true, 0, "<!doctype html", 0, 14)
                        || start.regionMatches(true, 0, "<html", 0, 5)
                ? Optional.of(FileFault.Format.WEB_PAGE)
                : Optional.empty();
    }
}
