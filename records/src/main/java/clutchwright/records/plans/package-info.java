/// What the house means to do with a season: its price list, what was said of single pairs, and
/// plans. The front doors are [clutchwright.records.plans.Plans],
/// [clutchwright.records.plans.Prices] and [clutchwright.records.plans.PlanWords].
@NullMarked
package clutchwright.records.plans;

import org.jspecify.annotations.NullMarked;
