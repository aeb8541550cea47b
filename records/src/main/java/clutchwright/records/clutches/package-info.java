/// Eggs from laying to hatching. The front door is [clutchwright.records.clutches.Clutches].
///
/// ```
/// Clutch = number, Parentage, Egg+
/// Egg    = number, box?, Fate, Candling*
/// Fate   = Incubating | Slug | Lost(noticed, finding) | Hatched(pipped, hatchling*)
/// ```
@NullMarked
package clutchwright.records.clutches;

import org.jspecify.annotations.NullMarked;
