package clutchwright.app.incubators;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.app.wording.SensorWords;
import clutchwright.records.incubators.LogFile;
import java.util.List;
import java.util.Optional;

/// @param form of the sensor
/// @param file form of a logger's file
/// @param files that were brought in, the newest first, in words
public record SensorView(
        Trace trace, int days, Form form, Form file, List<Choice> boxes, List<String> files)
        implements View {

    public SensorView {
        boxes = List.copyOf(boxes);
        files = List.copyOf(files);
    }

    static String words(LogFile file, SensorWords words, String readings) {
        return "%s: %s, %s to %s"
                .formatted(file.name(), readings, words.at(file.first()), words.at(file.last()));
    }

    @Override
    public String template() {
        return "incubators/sensor.jte";
    }

    @Override
    public String title() {
        return trace.watched().sensor().name();
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.EGGS);
    }

    public List<Integer> choices() {
        return Days.CHOICES;
    }

    public List<Choice> scales() {
        return SensorForm.scales();
    }
}
