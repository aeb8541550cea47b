package clutchwright.records.animals;

/// What an animal is to the collection.
public enum Status {
    KEPT,
    HOLD_BACK,
    FOR_SALE,
    SOLD,
    LOANED,
    DEAD,
    UNKNOWN
}
