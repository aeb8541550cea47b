package clutchwright.app.catalogue;

import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.engine.catalogue.Remark;
import java.util.List;
import java.util.Optional;

/// Names that belong to no single locus.
///
/// @param speciesName within a heading
public record NamesView(
        String species,
        String speciesName,
        List<CombinationLine> combinations,
        List<Remark> remarks)
        implements View {

    public NamesView {
        combinations = List.copyOf(combinations);
        remarks = List.copyOf(remarks);
    }

    @Override
    public String template() {
        return "catalogue/names.jte";
    }

    @Override
    public String title() {
        return "Names of combinations";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.CATALOGUE);
    }
}
