/// Where it is kept. The front door is [clutchwright.records.store.Database].
///
/// The only package that sees database drivers. Every row that is added, changed or taken away
/// goes through a [clutchwright.records.store.Transaction], which keeps the row as it was and as
/// it became.
@NullMarked
package clutchwright.records.store;

import org.jspecify.annotations.NullMarked;
