package clutchwright.records.incubators;

import java.time.Instant;

/// A logger's file that was brought in.
public record LogFile(
        long id, SensorId sensor, String name, long readings, Instant first, Instant last) {}
