package clutchwright.records.exchange.sheets;

/// How large a table may be.
///
/// @param bytes of the file as it is stored
/// @param unpackedBytes of a packed file, all its parts together
/// @param cellCharacters of the longest cell
public record Limits(long bytes, long unpackedBytes, int rows, int columns, int cellCharacters) {

    /// Far above any collection; chosen so that reading stays within a small machine's memory.
    public static final Limits USUAL = new Limits(50L << 20, 300L << 20, 200_000, 200, 10_000);
}
