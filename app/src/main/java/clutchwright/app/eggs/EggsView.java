package clutchwright.app.eggs;

import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// The clutches of a season, by what is to do.
///
/// @param seasons all that can be chosen, the last first
public record EggsView(int season, List<Integer> seasons, List<ClutchCard> clutches)
        implements View {

    public EggsView {
        seasons = List.copyOf(seasons);
        clutches = List.copyOf(clutches);
    }

    @Override
    public String template() {
        return "eggs/eggs.jte";
    }

    @Override
    public String title() {
        return "Eggs";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.EGGS);
    }

    public List<ClutchCard> at(ClutchCard.Stage stage) {
        return clutches.stream().filter(card -> card.stage() == stage).toList();
    }

    /// Whether none of another season stands among them.
    public boolean isOneSeason() {
        return clutches.stream().allMatch(card -> card.clutch().number().season() == season);
    }

    public int waiting() {
        return clutches.stream().mapToInt(ClutchCard::waiting).sum();
    }
}
