package clutchwright.app.labels;

import clutchwright.app.parts.Markup;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// Labels to print: which, on which sheet, from which label on.
///
/// @param job what would be printed; empty until something is chosen that can be
/// @param none why nothing would be printed; blank where something would or nothing is chosen
/// @param sheet the sheet in words
/// @param address with which the codes begin
/// @param onlyHere whether a phone cannot open that address
public record LabelsView(
        Form form,
        List<ChoiceGroup> groups,
        Optional<PrintJob> job,
        String none,
        String sheet,
        int perSheet,
        String address,
        boolean onlyHere)
        implements View {

    public LabelsView {
        groups = List.copyOf(groups);
    }

    @Override
    public String template() {
        return "labels/labels.jte";
    }

    @Override
    public String title() {
        return "Labels";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.COLLECTION);
    }

    public Markup drawing() {
        return job.map(it -> SheetDrawing.of(it.sheet(), it.labels(), it.first()))
                .orElseGet(Markup::new);
    }
}
