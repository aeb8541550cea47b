/// Heat, moisture and time in an egg box. The front door is
/// [clutchwright.engine.incubation.EggBox].
///
/// ```
/// EggBox     = (EmbryoHeat, Conductance, Pile)    -> Warmth, BoxCourse
/// HatchModel = (DevelopmentRate, spread)          -> HatchForecast
/// ```
package clutchwright.engine.incubation;
