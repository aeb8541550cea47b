package clutchwright.app.settings;

import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.wording.Preferences;
import clutchwright.records.animals.TagPattern;
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
        var tags = tagPattern(fields, form);
        return fields.into(
                () ->
                        new Preferences(
                                weight.value(),
                                warmth.value(),
                                dates.value(),
                                look.value(),
                                tags.value()));
    }

    private static Fields.Read<String> tagPattern(Fields fields, Form form) {
        return switch (TagPattern.read(form.text("tags"))) {
            case TagPattern.Result.Sound _ -> fields.text("tags", "Write how tags are made.");
            case TagPattern.Result.Faulty(var problems) ->
                    fields.faulty(
                            "tags",
                            "A tag needs a number or a letter that runs, such as"
                                    + " {yy}-{clutch}{letter}, and only the signs named above.");
        };
    }
}
