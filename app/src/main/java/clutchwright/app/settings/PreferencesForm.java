package clutchwright.app.settings;

import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.wording.Preferences;
import java.util.Map;

/// The form of units, dates, looks and tags.
final class PreferencesForm {

    private PreferencesForm() {}

    static Form of(Preferences preferences) {
        return Form.of(
                Map.of(
                        "weight", preferences.weight().name(),
                        "warmth", preferences.warmth().name(),
                        "dates", preferences.dates().name(),
                        "look", preferences.look().name(),
                        "tags", preferences.tagPattern()));
    }

    static Entry<Preferences> read(Form form) {
        var fields = new Fields(form);
        var weight = fields.choice("weight", Preferences.Weight.class);
        var warmth = fields.choice("warmth", Preferences.Warmth.class);
        var dates = fields.choice("dates", Preferences.DateStyle.class);
        var look = fields.choice("look", Preferences.Look.class);
        var tags =
                form.text("tags").contains("{n}")
                        ? fields.text("tags")
                        : fields.<String>faulty(
                                "tags",
                                "Write {n} where the hatchling's number goes, such as {clutch}-{n}.");
        return fields.into(
                () ->
                        new Preferences(
                                weight.value(),
                                warmth.value(),
                                dates.value(),
                                look.value(),
                                tags.value()));
    }
}
