/// What sensors say: their files and messages. The front door is
/// [clutchwright.app.loggers.LogSheet].
@NullMarked
package clutchwright.app.loggers;

import org.jspecify.annotations.NullMarked;
