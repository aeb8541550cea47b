package clutchwright.app.catalogue;

import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.app.wording.CatalogueFaultWords;
import clutchwright.engine.catalogue.CatalogueText;
import java.util.List;
import java.util.Optional;

/// A locus as text.
///
/// @param path where it is posted
/// @param back where it is read or begun without text
/// @param version of the keeper's entry; empty where there is none
/// @param current what somebody else wrote in the meantime; empty unless that is so
/// @param refused animals that stand in the way
public record GeneTextView(
        String path,
        String back,
        String name,
        String text,
        String version,
        List<FaultLine> faults,
        String current,
        List<Link> refused)
        implements View {

    public GeneTextView {
        faults = List.copyOf(faults);
        refused = List.copyOf(refused);
    }

    /// @param line from 1
    /// @param written what stands there
    public record FaultLine(int line, String written, String sentence) {

        static List<FaultLine> of(String text, List<CatalogueText.Fault> faults) {
            var lines = text.lines().toList();
            return faults.stream()
                    .map(
                            fault ->
                                    new FaultLine(
                                            fault.line(),
                                            fault.line() <= lines.size()
                                                    ? lines.get(fault.line() - 1)
                                                    : "",
                                            CatalogueFaultWords.of(fault)))
                    .toList();
        }
    }

    public int rows() {
        return Math.clamp(text.lines().count() + 3L, 14, 60);
    }

    @Override
    public String template() {
        return "catalogue/text.jte";
    }

    @Override
    public String title() {
        return name.isEmpty() ? "A gene of your own, as text" : name + ", as text";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.CATALOGUE);
    }
}
