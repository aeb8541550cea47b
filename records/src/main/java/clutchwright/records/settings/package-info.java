/// How the keeper wants it. The front door is [clutchwright.records.settings.Settings].
@NullMarked
package clutchwright.records.settings;

import org.jspecify.annotations.NullMarked;
