package clutchwright.records.places;

/// A room that animals are kept in.
public record Room(RoomId id, long version, String name, String notes) {}
