package clutchwright.records.incubators;

/// A cabinet that eggs are kept warm in.
///
/// @param name what stands on it, and on the boxes in it; no two have the same
/// @param setPointCelsius what its thermostat is set to, in °C, 20 to 40
public record Incubator(
        IncubatorId id, long version, String name, double setPointCelsius, String notes) {}
