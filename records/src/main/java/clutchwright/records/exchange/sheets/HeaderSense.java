package clutchwright.records.exchange.sheets;

/// Tells which words are names of columns.
///
/// It finds the header under title rows, and the separator of a text file.
@FunctionalInterface
public interface HeaderSense {

    /// Whether a cell with this text looks like the name of a column.
    boolean isColumnName(String text);
}
