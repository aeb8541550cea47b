package clutchwright.records.clutches;

/// A box that eggs are kept in.
public record BoxId(long value) {}
