package clutchwright.records.store;

/// What is to be done in one transaction: all of it or nothing.
///
/// @param <R> what it finds or makes
@FunctionalInterface
public interface Work<R> {

    R in(Transaction tx);
}
