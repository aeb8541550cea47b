/// The genes that the keeper wrote into the catalogue. The front door is
/// [clutchwright.records.overlay.Overlay].
@NullMarked
package clutchwright.records.overlay;

import org.jspecify.annotations.NullMarked;
