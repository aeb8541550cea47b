package clutchwright.app.today;

import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// A rack that is fed, except for some.
///
/// @param name of the rack, with its room
/// @param animals in the order of their tubs
/// @param form what is fed, and to whom
public record RackFeedingView(long rack, String name, List<Fed> animals, Form form)
        implements View {

    public RackFeedingView {
        animals = List.copyOf(animals);
    }

    /// @param last when it last took a meal, and which; blank where none is on record
    public record Fed(long id, String tag, String name, String tub, String last) {}

    @Override
    public String template() {
        return "today/rack.jte";
    }

    @Override
    public String title() {
        return "Feed " + name;
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.TODAY);
    }

    public boolean isFed(Fed animal) {
        return form.has("fed", Long.toString(animal.id()));
    }
}
