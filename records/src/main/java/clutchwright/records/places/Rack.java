package clutchwright.records.places;

/// A rack in a room.
public record Rack(RackId id, long version, RoomId room, String name, String notes) {}
