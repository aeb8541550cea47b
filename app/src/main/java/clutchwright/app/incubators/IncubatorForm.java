package clutchwright.app.incubators;

import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.wording.Formats;
import clutchwright.records.incubators.Incubator;
import java.util.Map;

/// What is asked of an incubator.
///
/// @param setPoint in °C
record IncubatorForm(String name, double setPoint, String notes) {

    private static final double COOLEST = 20;
    private static final double WARMEST = 38;
    private static final double USUAL = 31.7;

    static Form empty(Formats formats) {
        return Form.of(Map.of("set", formats.decimals(formats.ofCelsius(USUAL), 1)));
    }

    static Form of(Incubator incubator, Formats formats) {
        return Form.of(
                Map.of(
                        "name", incubator.name(),
                        "set", formats.decimals(formats.ofCelsius(incubator.setPointCelsius()), 2),
                        "notes", incubator.notes(),
                        "version", Long.toString(incubator.version())));
    }

    static Entry<IncubatorForm> read(Form form, Formats formats) {
        var fields = new Fields(form);
        var name = fields.text("name", "Write what stands on the incubator.");
        var set =
                fields.number("set", formats.ofCelsius(COOLEST), formats.ofCelsius(WARMEST))
                        .map(formats::celsiusOf);
        var notes = fields.text("notes");
        return fields.into(() -> new IncubatorForm(name.value(), set.value(), notes.value()));
    }
}
