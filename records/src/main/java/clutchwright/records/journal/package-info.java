/// Every change with who, when, before and after. The front door is
/// [clutchwright.records.journal.Journal].
@NullMarked
package clutchwright.records.journal;

import org.jspecify.annotations.NullMarked;
