package clutchwright.app.catalogue;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.engine.catalogue.Remark;
import java.util.List;
import java.util.Optional;

/// The guide to one species.
///
/// @param species the one that is shown
/// @param name what was typed to be found
/// @param combinations those that were found; empty where nothing was typed
/// @param remarks likewise
/// @param unread own genes that cannot be read, with why
public record GuideView(
        List<Choice> choices,
        String species,
        String latin,
        String name,
        List<GuideGroup> groups,
        List<CombinationLine> combinations,
        List<Remark> remarks,
        List<UnreadLine> unread,
        boolean hasOwn)
        implements View {

    public GuideView {
        choices = List.copyOf(choices);
        groups = List.copyOf(groups);
        combinations = List.copyOf(combinations);
        remarks = List.copyOf(remarks);
        unread = List.copyOf(unread);
    }

    public boolean isNothingFound() {
        return groups.isEmpty() && combinations.isEmpty() && remarks.isEmpty();
    }

    public String speciesName() {
        return choices.stream()
                .filter(choice -> choice.value().equals(species))
                .map(Choice::label)
                .findFirst()
                .orElse(species);
    }

    @Override
    public String template() {
        return "catalogue/guide.jte";
    }

    @Override
    public String title() {
        return "Catalogue";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.CATALOGUE);
    }
}
