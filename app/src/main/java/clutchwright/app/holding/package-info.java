/// The one collection that this process serves, and what follows from it. The front door is
/// [clutchwright.app.holding.Holding].
@NullMarked
package clutchwright.app.holding;

import org.jspecify.annotations.NullMarked;
