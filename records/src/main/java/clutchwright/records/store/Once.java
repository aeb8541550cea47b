package clutchwright.records.store;

/// What comes of writing something under a key.
public sealed interface Once<R> {

    /// It was written now, or there was nothing to write.
    record Now<R>(R result) implements Once<R> {}

    /// It was written before, and nothing is written now.
    record Before<R>(Entered entered) implements Once<R> {}
}
