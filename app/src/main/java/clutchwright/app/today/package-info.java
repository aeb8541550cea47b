/// The screen Today. The front door is [clutchwright.app.today.TodayPage].
@org.jspecify.annotations.NullMarked
package clutchwright.app.today;
