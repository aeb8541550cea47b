package clutchwright.app.season.plan;

import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// The house's own price list.
///
/// @param faults line by line
public record PricesView(Form form, List<String> faults) implements View {

    public PricesView {
        faults = List.copyOf(faults);
    }

    @Override
    public String template() {
        return "season/plan/prices.jte";
    }

    @Override
    public String title() {
        return "Price list";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SEASON);
    }
}
