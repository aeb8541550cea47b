package clutchwright.records.places;

/// A room that animals are kept in.
public record RoomId(long value) {}
