package clutchwright.app.eggs;

import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.records.clutches.Clutch;
import java.util.Optional;

/// One egg before the light.
///
/// @param egg  the one at hand
/// @param left how many are still to be looked at, this one among them
/// @param form its day and notes
public record CandleView(
        Clutch clutch, Couple couple, EggLine egg, int left, Incubation incubation, Form form)
        implements View {

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
}
