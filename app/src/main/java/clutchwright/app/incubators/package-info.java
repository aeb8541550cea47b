/// Incubators, their sensors, and the traces of these. The front door is
/// [clutchwright.app.incubators.IncubatorsPage].
@NullMarked
package clutchwright.app.incubators;

import org.jspecify.annotations.NullMarked;
