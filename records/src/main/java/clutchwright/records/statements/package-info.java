/// What was said of an animal and what was seen. The front door is
/// [clutchwright.records.statements.Statements].
///
/// ```
/// Statement = Claim(what a seller or breeder states) | Sighting(what a keeper sees)
/// ```
@NullMarked
package clutchwright.records.statements;

import org.jspecify.annotations.NullMarked;
