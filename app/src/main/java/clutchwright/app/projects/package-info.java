/// What takes generations. The front door is [clutchwright.app.projects.RouteCommand].
@NullMarked
package clutchwright.app.projects;

import org.jspecify.annotations.NullMarked;
