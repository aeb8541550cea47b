/// What comes back from an edit. The front door is [clutchwright.records.checks.Edit].
///
/// ```
/// Edit    = Saved(value) | Stale(current) | Refused(Problem+)
/// Problem = a fault, or a question that the keeper may answer with "all the same"
/// ```
@NullMarked
package clutchwright.records.checks;

import org.jspecify.annotations.NullMarked;
