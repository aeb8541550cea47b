package clutchwright.records.clutches;

/// A box that eggs are kept in.
///
/// @param label     what stands on it; no two boxes have the same
/// @param incubator which one it stands in; may be blank
public record Box(BoxId id, long version, String label, String incubator, String notes) {}
