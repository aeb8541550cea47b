/// Rooms, racks and tubs. The front door is [clutchwright.records.places.Places].
@NullMarked
package clutchwright.records.places;

import org.jspecify.annotations.NullMarked;
