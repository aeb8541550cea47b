/// What a house breeds towards. The front door is [clutchwright.records.projects.Projects].
@NullMarked
package clutchwright.records.projects;

import org.jspecify.annotations.NullMarked;
