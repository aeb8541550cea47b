package clutchwright.app.eggs;

import clutchwright.app.parts.Markup;
import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// What a box lets out, asked of a logger's file.
///
/// @param found what the file tells; empty before one was read, or where it tells nothing
public record MeasureView(Form form, Optional<Measured> found) implements View {

    /// @param told the figure with its interval
    /// @param takeOver the egg box page with that figure
    /// @param keep where it becomes the figure of the usual box
    public record Measured(
            String file,
            String told,
            List<String> notes,
            Markup drawing,
            String takeOver,
            String keep) {

        public Measured {
            notes = List.copyOf(notes);
        }
    }

    public List<Choice> probes() {
        return List.of(new Choice("BOX", "In the box's air"), new Choice("EGGS", "Among the eggs"));
    }

    public List<Choice> scales() {
        return List.of(new Choice("CELSIUS", "°C"), new Choice("FAHRENHEIT", "°F"));
    }

    @Override
    public String template() {
        return "eggs/measure.jte";
    }

    @Override
    public String title() {
        return "What a box lets out";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.EGGS);
    }
}
