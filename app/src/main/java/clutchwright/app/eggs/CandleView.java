package clutchwright.app.eggs;

import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.records.clutches.Clutch;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/// One egg before the light.
///
/// @param egg  the one at hand
/// @param left the numbers of those still to be looked at, this one first
/// @param form its day and notes
public record CandleView(
        Clutch clutch,
        Couple couple,
        EggLine egg,
        List<Integer> left,
        Incubation incubation,
        Form form)
        implements View {

    public CandleView {
        left = List.copyOf(left);
    }

    @Override
    public String template() {
        return "eggs/candle.jte";
    }

    @Override
    public String title() {
        return "Candling " + clutch.number();
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.EGGS);
    }

    public String path() {
        return "/eggs/" + clutch.id().value();
    }

    /// The eggs after this one, for a phone that has no signal to ask for the next.
    public String then() {
        return left.stream().skip(1).map(Object::toString).collect(Collectors.joining(" "));
    }
}
