/// The screen Eggs: clutches from laying to the last egg. The front door is
/// [clutchwright.app.eggs.EggsPage].
@NullMarked
package clutchwright.app.eggs;

import org.jspecify.annotations.NullMarked;
