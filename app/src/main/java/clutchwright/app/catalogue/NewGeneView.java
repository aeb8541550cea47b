package clutchwright.app.catalogue;

import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// The form of a new gene.
///
/// @param refused animals that stand in its way
public record NewGeneView(String species, String speciesName, Form form, List<Link> refused)
        implements View {

    public NewGeneView {
        refused = List.copyOf(refused);
    }

    @Override
    public String template() {
        return "catalogue/new.jte";
    }

    @Override
    public String title() {
        return "A gene of your own";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.CATALOGUE);
    }
}
