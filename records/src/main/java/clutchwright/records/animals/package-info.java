/// The animals on record. The front door is [clutchwright.records.animals.Animals].
///
/// ```
/// Animal      = AnimalId, version, Particulars
/// Particulars = Tag, name, Sex?, Hatched, Parentage, Origin, Line, Status, place?, species, notes
/// Hatched     = OnDay | InYear | Unknown
/// ```
@NullMarked
package clutchwright.records.animals;

import org.jspecify.annotations.NullMarked;
