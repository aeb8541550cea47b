package clutchwright.records.places;

/// A tub, or any one place that an animal can live in.
public record TubId(long value) {}
