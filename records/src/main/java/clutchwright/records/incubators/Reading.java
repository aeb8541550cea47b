package clutchwright.records.incubators;

import java.time.Instant;

/// What a sensor said.
///
/// @param at to the second
public record Reading(Instant at, double celsius) {}
