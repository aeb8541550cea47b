package clutchwright.app.collection;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.app.wording.AnimalWords;
import clutchwright.records.animals.Origin;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// The form of one animal, new or on record.
///
/// @param back where to go without saving
/// @param clashes where somebody else saved something different meanwhile
/// @param asks whether a question must be answered before it can be saved
public record AnimalFormView(
        String title,
        String action,
        String back,
        boolean isNew,
        List<Choice> species,
        List<AnimalClash> clashes,
        boolean asks,
        Form form)
        implements View {

    public AnimalFormView {
        species = List.copyOf(species);
        clashes = List.copyOf(clashes);
    }

    /// One field in two versions.
    public record AnimalClash(String label, String theirs, String yours) {}

    @Override
    public String template() {
        return "collection/form.jte";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.COLLECTION);
    }

    public List<Choice> sexes() {
        return List.of(
                new Choice("", "Not sexed"),
                new Choice("FEMALE", "Female"),
                new Choice("MALE", "Male"));
    }

    public List<Choice> statuses() {
        return StatusChoices.all();
    }

    public List<Choice> origins() {
        return Arrays.stream(Origin.How.values())
                .map(how -> Choice.of(how, AnimalWords.origin(how)))
                .toList();
    }

    /// The further males of whom one may be the sire.
    public List<String> moreSires() {
        return ParentNames.SIRES.subList(1, ParentNames.SIRES.size());
    }

    public String weightOf(String sire) {
        return ParentNames.weightOf(sire);
    }

    public boolean isSireInDoubt() {
        return moreSires().stream().anyMatch(field -> !form.text(field).isEmpty())
                || form.has("alone", "yes");
    }
}
