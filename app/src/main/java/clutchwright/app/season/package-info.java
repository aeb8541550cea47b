/// The screen Season: pairings and what they give. The front door is
/// [clutchwright.app.season.PredictCommand].
@org.jspecify.annotations.NullMarked
package clutchwright.app.season;
