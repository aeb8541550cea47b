/// The screen Today. The front door is [clutchwright.app.today.TodayPage].
///
/// What is on record is read at once ([clutchwright.app.today.Found]); clutches, pairings and
/// meals each say what they ask for ([clutchwright.app.today.Due]), by rules of thumb.
@org.jspecify.annotations.NullMarked
package clutchwright.app.today;
