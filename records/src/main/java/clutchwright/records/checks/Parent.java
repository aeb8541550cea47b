package clutchwright.records.checks;

/// In which part an animal is named.
public enum Parent {
    DAM,
    SIRE
}
