/// What was seen, said and done. The front door is [clutchwright.records.Snapshot].
@NullMarked
package clutchwright.records;

import org.jspecify.annotations.NullMarked;
