package clutchwright.app.collection;

import clutchwright.app.holding.ChangeLine;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// One animal, whole.
///
/// @param said newest first
/// @param seen newest first
/// @param form what the short forms hold
public record AnimalView(
        AnimalHead head,
        String species,
        GenesPart genes,
        List<CautionLine> cautions,
        PedigreePart pedigree,
        KinPart kin,
        List<StatementLine> said,
        List<StatementLine> seen,
        YoungPart young,
        KeepingPart keeping,
        List<PhotoLine> photos,
        List<ChangeLine> history,
        Form form)
        implements View {

    private static final int RECENT = 8;

    public AnimalView {
        cautions = List.copyOf(cautions);
        said = List.copyOf(said);
        seen = List.copyOf(seen);
        photos = List.copyOf(photos);
        history = List.copyOf(history);
    }

    /// The newest changes.
    public List<ChangeLine> recent() {
        return history.subList(0, Math.min(RECENT, history.size()));
    }

    /// All changes before those.
    public List<ChangeLine> earlier() {
        return history.subList(Math.min(RECENT, history.size()), history.size());
    }

    @Override
    public String template() {
        return "collection/animal.jte";
    }

    @Override
    public String title() {
        return head.tag();
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.COLLECTION);
    }
}
