package clutchwright.app.incubators;

import clutchwright.app.parts.Markup;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// @param full empty where nothing is or is expected in them
/// @param named incubators that boxes name and that are not set up yet
/// @param form of a new one
public record IncubatorsView(
        List<IncubatorCard> cards, Optional<Full> full, List<String> named, Form form)
        implements View {

    /// How full the incubators are and get.
    ///
    /// @param months the same in words, month by month
    public record Full(String words, Markup drawing, List<Month> months) {

        public Full {
            months = List.copyOf(months);
        }
    }

    public record Month(String day, String clutches, String range) {}

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
