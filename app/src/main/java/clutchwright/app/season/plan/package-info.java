/// This season's pairings, chosen together: what each may bring, the house's own prices and
/// limits, and the plan that is worth most. The front door is
/// [clutchwright.app.season.plan.PlanPage].
@NullMarked
package clutchwright.app.season.plan;

import org.jspecify.annotations.NullMarked;
