package clutchwright.records.places;

/// A rack, or a row of vivaria.
public record RackId(long value) {}
