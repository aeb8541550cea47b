package clutchwright.records.pairings;

/// One female with one male in one season.
public record PairingId(long value) {}
