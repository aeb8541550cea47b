package clutchwright.records.clutches;

/// One egg.
public record EggId(long value) {}
