package clutchwright.records.incubators;

/// An incubator.
public record IncubatorId(long value) {}
