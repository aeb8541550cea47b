package clutchwright.records.places;

/// A tub in a rack: one place.
public record Tub(TubId id, long version, RackId rack, String name, String notes) {}
