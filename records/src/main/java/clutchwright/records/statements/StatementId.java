package clutchwright.records.statements;

/// One claim or sighting.
public record StatementId(long value) {}
