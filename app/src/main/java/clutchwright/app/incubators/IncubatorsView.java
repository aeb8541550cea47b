package clutchwright.app.incubators;

import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// @param named incubators that boxes name and that are not set up yet
/// @param form of a new one
public record IncubatorsView(List<IncubatorCard> cards, List<String> named, Form form)
        implements View {

    public IncubatorsView {
        cards = List.copyOf(cards);
        named = List.copyOf(named);
    }

    @Override
    public String template() {
        return "incubators/incubators.jte";
    }

    @Override
    public String title() {
        return "Incubators";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.EGGS);
    }
}
