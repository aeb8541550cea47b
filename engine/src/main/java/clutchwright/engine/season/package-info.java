/// When a female will lay. The front door is [clutchwright.engine.season.LayModel].
///
/// ```
/// LayForecast = (Forecast, Basis...)
/// Sign        = Ovulation(after, by) | PreLayShed(day)
/// ```
package clutchwright.engine.season;
