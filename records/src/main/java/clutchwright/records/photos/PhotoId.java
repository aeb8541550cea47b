package clutchwright.records.photos;

/// One photo of one animal.
public record PhotoId(long value) {}
