/// What the screens for this season's pairings and for projects share: long work that can be
/// stopped, the house's stock, and the routes of its projects. The front doors are
/// [clutchwright.app.steering.WorkDesk] and [clutchwright.app.steering.ProjectRoutes].
@NullMarked
package clutchwright.app.steering;

import org.jspecify.annotations.NullMarked;
