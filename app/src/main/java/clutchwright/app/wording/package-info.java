/// Findings become sentences; dates, units and numbers become text. The front door is
/// [clutchwright.app.wording.Formats].
@org.jspecify.annotations.NullMarked
package clutchwright.app.wording;
