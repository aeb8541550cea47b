package clutchwright.records.incubators;

/// A sensor of temperature.
public record SensorId(long value) {}
