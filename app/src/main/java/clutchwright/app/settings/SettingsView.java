package clutchwright.app.settings;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.app.wording.Preferences.DateStyle;
import clutchwright.app.wording.Preferences.Look;
import clutchwright.app.wording.Preferences.Warmth;
import clutchwright.app.wording.Preferences.Weight;
import java.util.List;
import java.util.Optional;

/// @param preferences the form of units, dates and looks
/// @param assumed the form of what is assumed where the records say nothing
/// @param password the form of the owner's password
/// @param passwordSet whether other devices may sign in
/// @param canBackUp whether the records lie in one file; other databases have tools of their own
public record SettingsView(
        Form preferences, Form assumed, Form password, boolean passwordSet, boolean canBackUp)
        implements View {

    @Override
    public String template() {
        return "settings/settings.jte";
    }

    @Override
    public String title() {
        return "Settings";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SETTINGS);
    }

    public List<Choice> weights() {
        return List.of(Choice.of(Weight.GRAMS, "Grams"), Choice.of(Weight.OUNCES, "Ounces"));
    }

    public List<Choice> warmths() {
        return List.of(Choice.of(Warmth.CELSIUS, "°C"), Choice.of(Warmth.FAHRENHEIT, "°F"));
    }

    public List<Choice> dateStyles() {
        return List.of(
                Choice.of(DateStyle.WORDS, "9 August 2021"),
                Choice.of(DateStyle.WORDS_MONTH_FIRST, "August 9, 2021"),
                Choice.of(DateStyle.FIGURES, "2021-08-09"));
    }

    public List<Choice> looks() {
        return List.of(
                Choice.of(Look.AS_THE_DEVICE, "As the device"),
                Choice.of(Look.LIGHT, "Light"),
                Choice.of(Look.DARK, "Dark"));
    }
}
