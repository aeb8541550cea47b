/// The screen Season: pairings and what they give. The front door is
/// [clutchwright.app.season.SeasonPage].
@org.jspecify.annotations.NullMarked
package clutchwright.app.season;
