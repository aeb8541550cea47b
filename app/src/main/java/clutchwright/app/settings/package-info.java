/// The screen Settings. The front door is [clutchwright.app.settings.SettingsPage].
@org.jspecify.annotations.NullMarked
package clutchwright.app.settings;
