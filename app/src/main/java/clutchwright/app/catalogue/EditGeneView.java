package clutchwright.app.catalogue;

import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// The form of a whole locus.
///
/// @param alleles how many alleles the form has places for; likewise forms and cautions
/// @param refused animals that stand in the way
public record EditGeneView(
        String path,
        String name,
        Form form,
        int alleles,
        int forms,
        int cautions,
        List<Link> refused)
        implements View {

    public EditGeneView {
        refused = List.copyOf(refused);
    }

    /// Whether the block begins unfolded: where something in it is wrong.
    public boolean isOpen(String prefix) {
        return form.faults().keySet().stream().anyMatch(field -> field.startsWith(prefix));
    }

    public boolean isPlaceOpen() {
        return form.faults().keySet().stream().anyMatch(field -> !field.contains("-"));
    }

    /// What a caution is about, and of which animals.
    public String about(String prefix) {
        var concern = form.text(prefix + LocusSheet.HEAD);
        return GeneChoices.concerns().stream()
                .filter(choice -> choice.value().equals(concern))
                .map(choice -> choice.label() + ": " + form.text(prefix + "when"))
                .findFirst()
                .orElse(concern);
    }

    @Override
    public String template() {
        return "catalogue/edit.jte";
    }

    @Override
    public String title() {
        return "Change " + name;
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.CATALOGUE);
    }
}
