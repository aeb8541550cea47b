/// Weights, meals, sheds and notes on health. The front door is
/// [clutchwright.records.husbandry.Husbandry].
@NullMarked
package clutchwright.records.husbandry;

import org.jspecify.annotations.NullMarked;
