package clutchwright.app.incubators;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// @param best the warmest that it may be set, where eggs stand in it
/// @param days how many are shown of each trace
/// @param form of the incubator
/// @param sensor form of a new sensor
/// @param boxes that a sensor can be in
public record IncubatorView(
        IncubatorCard card,
        Optional<BestSetting> best,
        int days,
        Form form,
        Form sensor,
        List<Choice> boxes)
        implements View {

    public IncubatorView {
        boxes = List.copyOf(boxes);
    }

    @Override
    public String template() {
        return "incubators/incubator.jte";
    }

    @Override
    public String title() {
        return card.incubator().name();
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.EGGS);
    }

    public List<Choice> scales() {
        return SensorForm.scales();
    }

    public List<Integer> choices() {
        return Days.CHOICES;
    }
}
