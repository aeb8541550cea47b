package clutchwright.records.incubators;

import java.time.Instant;

/// A sensor's readings of a stretch of time, summed up.
///
/// @param from where the stretch begins; it has at least one reading
/// @param low the lowest of them, in °C
/// @param mean their mean, in °C
/// @param high the highest of them, in °C
public record Stretch(Instant from, double low, double mean, double high) {}
