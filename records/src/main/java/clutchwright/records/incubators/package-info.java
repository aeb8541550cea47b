/// Incubators, the sensors in them and what these say. The front door is
/// [clutchwright.records.incubators.Incubators].
@NullMarked
package clutchwright.records.incubators;

import org.jspecify.annotations.NullMarked;
