package clutchwright.app.collection;

import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.records.animals.Animal;
import clutchwright.records.statements.Statement;
import java.util.Optional;

/// The form of one statement.
///
/// @param action where the form posts to
/// @param isNew whether it is still to be written down; then the form asks whether it was said or
///     seen
/// @param seen whether it is something seen
public record StatementView(
        String tag,
        String path,
        String action,
        String species,
        String sex,
        boolean isNew,
        boolean seen,
        Form form)
        implements View {

    /// Of something that is still to be written down.
    static StatementView ofNew(Animal animal, Form form) {
        return of(animal, "", true, false, form);
    }

    static StatementView of(Animal animal, Statement statement, Form form) {
        return of(
                animal,
                "/" + statement.id().value(),
                false,
                statement instanceof Statement.Sighting,
                form);
    }

    private static StatementView of(
            Animal animal, String end, boolean isNew, boolean seen, Form form) {
        var path = AnimalHead.path(animal);
        return new StatementView(
                animal.tag().value(),
                path,
                path + "/statements" + end,
                animal.species(),
                animal.sex().map(Enum::name).orElse(""),
                isNew,
                seen,
                form);
    }

    @Override
    public String template() {
        return "collection/statement.jte";
    }

    @Override
    public String title() {
        return tag + ": " + (isNew ? "said or seen" : seen ? "seen" : "said");
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.COLLECTION);
    }
}
