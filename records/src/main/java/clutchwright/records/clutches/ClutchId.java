package clutchwright.records.clutches;

/// Eggs that one female laid together.
public record ClutchId(long value) {}
