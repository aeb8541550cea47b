/// Who was put to whom, and the signs that followed. The front door is
/// [clutchwright.records.pairings.Pairings].
@NullMarked
package clutchwright.records.pairings;

import org.jspecify.annotations.NullMarked;
